import { spawn, spawnSync } from 'node:child_process'
import { once } from 'node:events'
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { beforeAll, describe, expect, it } from 'vitest'
import { optionForms } from '../../src/cli/command.ts'
import { commands } from '../../src/cli/commands.ts'
import { checkShape } from '../../src/formats/read-json.ts'
import { recordFileShape } from '../../src/formats/record/record-file-shape.ts'
import { demoProject } from '../../src/operations/demo-project.ts'
import { runAllowing } from '../fixtures/roadside.ts'
import { lapwise as call, program, startLapwise } from './lapwise.ts'

const folder = mkdtempSync(join(tmpdir(), 'lapwise-cli-'))
const file = (name: string) => join(folder, name)

const lapwise = (words: readonly string[], input = '') => call(folder, words, input)

beforeAll(() => {
  const demo = demoProject()
  writeFileSync(file('run.json'), demo.run)
  writeFileSync(file('readings.json'), demo.readings)
})

describe('the program as a process', () => {
  it('hands on what the command line says: text, messages and how it ended', async () => {
    const judged = ['judge', 'run.json', '-', '--json']
    const input = readFileSync(file('readings.json'), 'utf8')
    const ended = await startLapwise(folder, judged, input)
    expect(ended.code).toBe(1)
    expect(JSON.parse(ended.out).findings).toHaveLength(4)
    expect(ended).toEqual(await lapwise(judged, input))
    const refused = await startLapwise(folder, ['layout', 'absent.json'])
    expect(refused).toMatchObject({ code: 2, out: '', said: expect.stringContaining('found no such file') })
  })

  it('ends in silence when whoever reads has seen enough', async () => {
    const child = spawn(process.execPath, [program, 'layout', 'run.json', '--json', '--limit', '200'], { cwd: folder })
    let said = ''
    child.stderr.on('data', (chunk) => {
      said += chunk
    })
    // More than a pipe holds, so that the program still writes when it is closed.
    await once(child.stdout, 'data')
    child.stdout.destroy()
    const [code] = await once(child, 'close')
    expect([code, said]).toEqual([0, ''])
  })

  it('tells the verdict by how it ends, also to whoever read one line of it', async () => {
    const child = spawn(process.execPath, [program, 'judge', 'run.json', 'readings.json', '--json'], { cwd: folder })
    child.stdout.destroy()
    expect(await once(child, 'close')).toEqual([1, null])
  })

  it('ends with 3, which is no verdict, where it cannot start', () => {
    mkdirSync(file('cut/bin'), { recursive: true })
    cpSync(program, file('cut/bin/lapwise.mjs'))
    const ended = spawnSync(process.execPath, [file('cut/bin/lapwise.mjs'), 'judge', 'run.json', 'readings.json'])
    expect([ended.status, ended.stderr.toString()]).toEqual([3, expect.stringContaining('Lapwise could not start')])
  })
})

describe('lapwise on the command line', () => {
  it('explains itself and every command', async () => {
    const { code, out } = await lapwise(['--help'])
    expect(code).toBe(0)
    for (const { name, options, examples } of commands) {
      expect(out).toContain(`\n  ${name} `)
      const own = await lapwise([name, '--help'])
      expect(own.code).toBe(0)
      expect(own.out).toContain(`Usage: lapwise ${name}`)
      for (const option of Object.keys(options)) expect(own.out).toContain(`--${option}`)
      expect(own.out).toContain(`  lapwise ${examples[0]}`)
    }
    const { version } = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8'))
    expect(await lapwise(['--version'])).toEqual({ code: 0, out: `${version}\n`, said: '' })
    const bare = await lapwise([])
    expect([bare.code, bare.out]).toEqual([2, out])
  })

  it('takes of each command the options that it says, and no other', async () => {
    for (const { name, options } of commands)
      for (const [option, { written }] of Object.entries(optionForms)) {
        // With a word too many nothing is done even where the option is one.
        const words = [name, '--', 'a', 'b', 'c', 'd']
        words.splice(1, 0, `--${option}`, ...(written.includes('<') ? ['x'] : []))
        const { code, said } = await lapwise(words)
        const isForeign =
          said.includes(`expected an option of ${name}`) && said.includes(`unknown option '--${option}'`)
        expect([name, option, code, isForeign]).toEqual([name, option, 2, !(option in options)])
      }
  })

  it('says what was perhaps meant', async () => {
    expect((await lapwise(['juge'])).said).toContain('Did you mean judge?')
    expect((await lapwise(['record', 'a', 'b', '--papge', 'A4'])).said).toContain('Did you mean --page?')
    const { out } = await lapwise(['record', 'a', 'b', '--papge', 'A4', '--json'])
    expect(JSON.parse(out).error.problems[0].found).toContain('--papge')
  })

  it('is quiet where that is wanted, but for problems', async () => {
    expect(await lapwise(['pin', 'run.json', '-o', 'quiet.json', '--quiet'])).toEqual({ code: 0, out: '', said: '' })
    expect((await lapwise(['pin', 'run.json', '-o', 'quiet.json'])).said).toBe('wrote quiet.json\n')
    expect((await lapwise(['--quiet', 'pin', 'absent.json'])).said).toContain('no such file')
  })

  it('lists, shows and validates sheets', async () => {
    const listed = JSON.parse((await lapwise(['sheets', 'list', '--json'])).out)
    expect(listed.sheets).toHaveLength(9)
    const shown = await lapwise(['sheets', 'show', 'flared-terminal-31'])
    writeFileSync(file('sheet.json'), shown.out)
    expect((await lapwise(['sheets', 'validate', 'sheet.json'])).code).toBe(0)
    writeFileSync(file('broken.json'), shown.out.replace('"number": 2', '"number": 7'))
    const broken = await lapwise(['sheets', 'validate', 'broken.json'])
    expect(broken.code).toBe(2)
    expect(broken.said).toMatch(/^broken\.json: posts\[1\]\.number: expected /)
  })

  it('writes the texts of a sheet as a table, and takes it back translated as the next edition', async () => {
    const sheet = {
      ...JSON.parse((await lapwise(['sheets', 'show', 'tangent-terminal-31'])).out),
      id: 'county-terminal',
    }
    const { [sheet.notice]: said, ...others } = sheet.translations.es
    writeFileSync(file('county.json'), JSON.stringify({ ...sheet, version: '4', translations: { es: others } }))
    expect((await lapwise(['sheets', 'texts', 'county.json', '-o', 'texts.csv'])).code).toBe(0)
    const table = readFileSync(file('texts.csv'), 'utf8')
    expect((await lapwise(['sheets', 'texts', 'county.json'])).out).toBe(table)
    const filled = table.replace(/^(notice,.*),,missing,/m, (_, before) => `${before},"${said}",missing,`)
    writeFileSync(file('texts.csv'), filled)
    const done = await lapwise(['sheets', 'translate', 'county.json', 'texts.csv', '-o', 'next.json'])
    expect(done).toEqual({ code: 0, out: 'next.json: county-terminal 5, 1 text translated\n', said: '' })
    const next = JSON.parse(readFileSync(file('next.json'), 'utf8'))
    expect(next.translations).toEqual(sheet.translations)
    writeFileSync(file('texts.csv'), filled.replace('{31 in}"', '{30 in}"'))
    const wrong = await lapwise(['sheets', 'translate', 'county.json', 'texts.csv', '-o', 'wrong.json'])
    expect([wrong.code, wrong.said]).toEqual([
      2,
      expect.stringMatching(/^texts\.csv: row 2, es: expected the same values/),
    ])
  })

  it('prints the layout in the agreed shape, and nothing else on standard output', async () => {
    const { code, out, said } = await lapwise(['layout', 'run.json', '--json', '--limit', '2'])
    expect([code, said]).toEqual([0, ''])
    const { runs, refused } = JSON.parse(out)
    expect(runs).toHaveLength(2)
    expect(runs[0].posts[0]).toMatchObject({ number: 1, alongInches: 0, kind: 'hinged breakaway post', block: false })
    expect(
      runs[0].panels
        .slice(0, 3)
        .map(({ inches, fromInches, toInches }: Record<string, number>) => [inches, fromInches, toInches]),
    ).toEqual([
      [150, 0, 150],
      [150, 150, 300],
      [112.5, 300, 412.5],
    ])
    expect(runs[0].splices[2]).toMatchObject({ alongInches: 412.5, position: 'midspan' })
    expect(runs[0].why.length).toBeGreaterThan(2)
    expect(refused[0].reason).toContain('splice would fall on post')
  })

  it('reads the run from standard input', async () => {
    const { code, out } = await lapwise(['requirements', '-', '--json'], readFileSync(file('run.json'), 'utf8'))
    expect(code).toBe(0)
    expect(JSON.parse(out).requirements.length).toBeGreaterThan(100)
  })

  it('pins a run, makes its next version, and names every reading that this no longer asks', async () => {
    const asked = { ...JSON.parse(readFileSync(file('run.json'), 'utf8')), need: { from: '-75 ft', to: '25 ft' } }
    writeFileSync(file('longer.json'), JSON.stringify(asked))
    expect((await lapwise(['pin', 'run.json', '-o', 'pinned.json'])).code).toBe(0)
    const revised = await lapwise(['revise', 'pinned.json', 'longer.json', '-o', 'next.json', '--because', 'a ditch'])
    expect(revised.code).toBe(0)
    expect(JSON.parse(readFileSync(file('next.json'), 'utf8')).earlier).toMatchObject([{ because: 'a ditch' }])
    const listed = (what: string): readonly string[] =>
      new RegExp(`^${what}: (.*)$`, 'm').exec(revised.out)![1]!.split(', ')
    const [gone, otherwise] = [listed('gone'), listed('keeps its place, asked otherwise')]
    const read: readonly { of: string }[] = JSON.parse(readFileSync(file('readings.json'), 'utf8')).readings
    const asks = JSON.parse((await lapwise(['requirements', 'next.json', '--json'])).out).requirements
    const required = new Set(asks.map(({ id }: { id: string }) => id))
    const isEarlier = (of: string): boolean =>
      gone.includes(of.split('/')[0]!) ||
      otherwise.includes(of) ||
      (!required.has(of) && !/\/(along|lateral-offset)$/.test(of))
    const earlier = read.map(({ of }) => of).filter(isEarlier)
    expect(earlier.length).toBeGreaterThan(20)
    const { out } = await lapwise(['judge', 'next.json', 'readings.json'])
    const named = [...out.matchAll(/^asked by an earlier version, kept and not judged, (\S+):/gm)].map(([, of]) => of)
    expect(named).toEqual(earlier)
    expect((await lapwise(['judge', 'pinned.json', 'readings.json'])).out).not.toContain('earlier version')
  })

  it('judges: 1 and four findings as read, 0 once every one is rechecked and right, in the agreed shape', async () => {
    const { code, out } = await lapwise(['judge', 'run.json', 'readings.json', '--json'])
    expect(code).toBe(1)
    const judged = JSON.parse(out)
    expect(judged.acceptance).toBe('not acceptable')
    expect(judged.findings).toHaveLength(4)
    for (const key of ['requirement', 'place', 'verdict', 'margin', 'reason', 'sheet', 'sheetVersion'])
      expect(judged.verdicts[0]).toHaveProperty(key)
    for (const key of ['place', 'what', 'remedy']) expect(judged.findings[0]).toHaveProperty(key)

    const { requirements } = JSON.parse((await lapwise(['requirements', 'run.json', '--json'])).out)
    const mended = JSON.parse(readFileSync(file('readings.json'), 'utf8'))
    for (const of of judged.findings.flatMap((finding: { requirements: string[] }) => finding.requirements)) {
      const { choices } = requirements.find((one: { id: string }) => one.id === of)
      mended.readings.push(
        choices === null
          ? { of, value: '3 1/4 in', rechecks: of }
          : { of, choice: choices.find((choice: { right: boolean }) => choice.right).id, rechecks: of },
      )
    }
    writeFileSync(file('mended.json'), JSON.stringify(mended))
    const again = await lapwise(['judge', 'run.json', 'mended.json', '--json'])
    expect([again.code, JSON.parse(again.out).acceptance]).toEqual([0, 'acceptable'])

    // Read again as right, but by a reading that names no finding: nobody says that the fault was put right.
    const { rechecks: _, ...unnamed } = mended.readings.at(-1)
    mended.readings.splice(-1, 1, unnamed)
    writeFileSync(file('unnamed.json'), JSON.stringify(mended))
    const open = await lapwise(['judge', 'run.json', 'unnamed.json', '--json'])
    expect([open.code, JSON.parse(open.out).acceptance]).toEqual([1, 'not acceptable'])
  })

  it('ends with 1 and says who set what aside, where that is all that keeps a run from being acceptable', async () => {
    writeFileSync(file('allowing.json'), runAllowing(readFileSync(file('run.json'), 'utf8'), ['block']))
    const readings = JSON.parse(readFileSync(file('mended.json'), 'utf8'))
    const aside = { of: 'post-9/block', doesNotApply: 'by order', by: 'M. Reyes' }
    readings.readings.push(aside)
    writeFileSync(file('aside.json'), JSON.stringify(readings))
    const [json, text, refused] = await Promise.all([
      lapwise(['judge', 'allowing.json', 'aside.json', '--json']),
      lapwise(['judge', 'allowing.json', 'aside.json']),
      lapwise(['judge', 'run.json', 'aside.json']),
    ])
    const acceptance = 'acceptable except for 1 set aside by M. Reyes'
    expect([json.code, text.code, refused.code]).toEqual([1, 1, 2])
    expect(JSON.parse(json.out)).toMatchObject({
      acceptance,
      setAside: [{ requirement: 'post-9/block', by: 'M. Reyes', because: 'by order' }],
    })
    expect(text.out).toContain(`: ${acceptance}\n`)
    expect(text.out).toContain('set aside, post-9/block: by M. Reyes: by order')
    expect(refused.said).toContain('.doesNotApply: expected another answer: no sheet says that this may be set aside')
  })

  it('writes the elevation as SVG or DXF, by the ending of the file', async () => {
    expect((await lapwise(['strip', 'run.json', '--view', 'elevation', '-o', 'e.svg'])).code).toBe(0)
    expect(readFileSync(file('e.svg'), 'utf8')).toContain('<title>Elevation of ')
    expect((await lapwise(['strip', 'run.json', '--view', 'elevation', '-o', 'e.dxf'])).code).toBe(0)
    expect(readFileSync(file('e.dxf'), 'utf8')).toMatch(/finish-grade[\s\S]*DIMENSION/)
  })

  it('writes the strip and the record whole, and leaves nothing aside', async () => {
    expect((await lapwise(['strip', 'run.json', '--readings', 'readings.json', '-o', 'x.svg'])).code).toBe(0)
    expect(readFileSync(file('x.svg'), 'utf8')).toMatch(/^<svg|^<\?xml/)
    expect((await lapwise(['record', 'run.json', 'readings.json', '-o', 'x.pdf'])).code).toBe(0)
    expect(readFileSync(file('x.pdf')).subarray(0, 5).toString()).toBe('%PDF-')
    expect(readdirSync(folder).filter((name) => name.startsWith('.'))).toEqual([])
  })

  it.each([
    [['judge', 'run.json'], /expected judge RUN\.json READINGS\.json/],
    [['layout', 'absent.json'], /^absent\.json: expected a file that can be read, found no such file/],
    [['layout', 'cut.json'], /^cut\.json: .*expected/],
    [
      ['layout', 'unknown-sheet.json'],
      /^unknown-sheet\.json: first\.sheet: expected the id of a sheet: .*flared-terminal-31/,
    ],
    [
      ['judge', 'run.json', 'stray.json'],
      /^stray\.json: readings\[0\]\.of: expected the id of a requirement of this run/,
    ],
    [['judge', 'run.json', 'other-run.json'], /^other-run\.json: run: expected /],
    [['sheets', 'show', 'nothing'], /expected a sheet's id/],
    [['draw'], /expected a command/],
    [['layout', 'run.json', '--wrong'], /expected an option/],
    [['strip', 'run.json', '-o', 'x.svg', '--view', 'side'], /expected --view strip, elevation, detail/],
    [['strip', 'run.json', '-o', 'x.dxf', '--page', 'A4'], /expected no --page for a DXF file/],
    [['strip', 'run.json', '-o', 'no/such/folder/x.svg'], /expected a place where a file can be written/],
  ])('ends with 2 and says what was expected: %j', async (words, message) => {
    const run = JSON.parse(readFileSync(file('run.json'), 'utf8'))
    writeFileSync(file('cut.json'), '{"format": "lapwise-run/1",')
    writeFileSync(file('unknown-sheet.json'), JSON.stringify({ ...run, first: { sheet: 'flared' } }))
    const visit = { by: 'x', at: '2026-01-01T10:00' }
    const stray = {
      format: 'lapwise-readings/1',
      run: run.name,
      visit,
      readings: [{ of: 'post-999/rail-height', value: '31 in' }],
    }
    writeFileSync(file('stray.json'), JSON.stringify(stray))
    writeFileSync(file('other-run.json'), JSON.stringify({ ...stray, run: 'another run', readings: [] }))
    const { code, out, said } = await lapwise(words)
    expect([code, out]).toEqual([2, ''])
    expect(said).toMatch(message)
  })
})

describe('options', () => {
  it('are held to what is plausible, and say what was expected', async () => {
    // Between two ends that stand there are few lawful runs, whatever the limit.
    const standing = { first: { standingSplice: { at: 0, position: 'midspan' } }, need: null, obstructions: [] }
    const second = { standingSplice: { at: 600, position: 'midspan' } }
    writeFileSync(file('short.json'), JSON.stringify({ ...JSON.parse(demoProject().run), ...standing, second }))
    const layout = async (limit: string) => (await lapwise(['layout', 'short.json', '--limit', limit])).code
    expect([await layout('10000'), await layout('10001'), await layout('0')]).toEqual([0, 2, 2])
    const record = ['record', 'run.json', 'readings.json', '-o', 'record.pdf', '--date']
    for (const date of ['0001-01-01', '9999-12-31', '2026-02-30'])
      expect(await lapwise([...record, date])).toMatchObject({ code: 2, said: expect.stringContaining(date) })
    const packet = ['packet', 'run.json', 'readings.json', '-o', 'far', '--alignment', 'none.xml', '--offset', '1001 m']
    expect((await lapwise(packet)).said).toContain('--offset: a length of 0 m to 1000 m')
  })

  it('give the record, or its summary, in the language and units that are asked for, under one hash', async () => {
    const record = ['record', 'run.json', 'readings.json', '--date', '2016-05-13', '-o']
    const full = await lapwise([...record, 'record.pdf'])
    const summary = await lapwise([...record, 'resumen.pdf', '--summary', '--language', 'es', '--units', 'metric'])
    expect([full.code, summary.code]).toEqual([0, 0])
    const hashOf = (said: string) => /record hash ([0-9a-f]{64})/.exec(said)?.[1]
    expect(hashOf(summary.said)).toBe(hashOf(full.said))
    expect(readFileSync(file('resumen.pdf')).toString('latin1')).toContain('/Lang (es)')
    expect(await lapwise([...record, 'x.pdf', '--language', 'xx'])).toMatchObject({ code: 2 })
    const contents = JSON.parse((await lapwise(['record', 'run.json', 'readings.json', '--json'])).out)
    expect(checkShape('record.json', contents, recordFileShape)).toMatchObject({ ok: true, value: { language: 'en' } })
    expect(contents.hash).toBe(hashOf(full.said))
  })

  it('do not keep what is unusual from being said, on standard error alone', async () => {
    const run = { ...JSON.parse(demoProject().run), decisionRule: { kind: 'guard band', multiple: 4 } }
    writeFileSync(file('wide.json'), JSON.stringify(run))
    const { out, said } = await lapwise(['judge', 'wide.json', 'readings.json', '--json'])
    expect(said).toBe('wide.json: "decisionRule.multiple": 4 is unusual, usual is 0.5 to 3\n')
    expect(JSON.parse(out).unusual).toMatchObject([{ place: 'decisionRule.multiple', value: 4, low: 0.5, high: 3 }])
  })
})

describe('lapwise completion', () => {
  /** What a shell offers for the last word. */
  async function offered(...words: readonly string[]): Promise<readonly string[]> {
    writeFileSync(file('completion.bash'), (await lapwise(['completion', 'bash'])).out)
    const script = [
      'source completion.bash',
      `COMP_WORDS=(${words.map((word) => `'${word}'`).join(' ')}); COMP_CWORD=${words.length - 1}`,
      `_lapwise; printf '%s\\n' "\${COMPREPLY[@]}"`,
    ]
    const { stdout } = spawnSync('bash', ['-c', script.join('\n')], { cwd: folder, encoding: 'utf8' })
    return stdout.split('\n').filter((line) => line !== '')
  }

  it('lets bash complete commands, words, options and values, and nothing that does not belong there', async () => {
    expect(await offered('lapwise', 're')).toEqual(['revise', 'requirements', 'record', 'restore'])
    expect(await offered('lapwise', 'sheets', 'v')).toEqual(['validate'])
    expect(await offered('lapwise', 'record', 'run.json', '--l')).toEqual(['--landscape', '--language'])
    expect(await offered('lapwise', 'judge', '--e')).toEqual([])
    expect(await offered('lapwise', 'record', '--page', 'A')).toEqual(['A4', 'A3'])
    expect(await offered('lapwise', 'record', '-o', 're')).toEqual([])
  })

  it.each(['zsh', 'fish'])('is a script that %s can read, with every command and option', async (shell) => {
    const { out } = await lapwise(['completion', shell])
    for (const { name, options } of commands) {
      expect(out).toContain(name)
      for (const option of Object.keys(options)) expect(out).toMatch(new RegExp(`(--|-l )${option}\\b`))
    }
    writeFileSync(file(`completion.${shell}`), out)
    const { status, error } = spawnSync(shell, ['-n', file(`completion.${shell}`)])
    // Where that shell is not on the machine, its grammar is not tried.
    if (error === undefined) expect(status).toBe(0)
  })

  it('lets fish and zsh complete where they are installed', async () => {
    for (const shell of ['fish', 'zsh'])
      writeFileSync(file(`completion.${shell}`), (await lapwise(['completion', shell])).out)
    const told = (shell: string, script: string) => {
      const { stdout, error } = spawnSync(shell, [shell === 'zsh' ? '-fc' : '-c', script], {
        cwd: folder,
        encoding: 'utf8',
      })
      return error === undefined ? stdout.split('\n').filter((line) => line !== '') : null
    }
    const byFish = (line: string) =>
      told('fish', `source completion.fish; complete -C '${line}'`)?.map((one) => one.split('\t')[0]) ?? null
    for (const [line, offers] of [
      ['lapwise re', ['record', 'requirements', 'revise']],
      ['lapwise sheets v', ['validate']],
      ['lapwise record run.json --l', ['--landscape']],
      ['lapwise record --page A', ['A3', 'A4']],
    ] as const)
      expect(byFish(line) ?? offers, line).toEqual(expect.arrayContaining([...offers]))
    expect([['_lapwise'], null]).toContainEqual(
      told('zsh', 'autoload -Uz compinit; compinit -u -D; source ./completion.zsh; print $_comps[lapwise]'),
    )
  })
})

describe('lapwise handover', () => {
  const landed = fileURLToPath(new URL('../cases/landed/handover-1/handover.zip', import.meta.url))

  it('tells what is in one, and writes it the other way round and back, byte for byte', async () => {
    const told = await lapwise(['handover', landed, '--json'])
    expect(JSON.parse(told.out)).toMatchObject({
      runs: [{ name: 'Alder Creek culvert, right side', entries: { run: 1, reading: 167, 'sign-off': 1, photo: 1 } }],
      photos: 1,
      lacks: [],
    })
    expect(await lapwise(['handover', landed, '-o', 'device.json'])).toMatchObject({ code: 0 })
    expect(await lapwise(['handover', 'device.json', '-o', 'again.zip'])).toMatchObject({ code: 0 })
    expect(readFileSync(file('again.zip')).equals(readFileSync(landed))).toBe(true)
    // Both are taken by what takes the file of a device.
    const [first] = JSON.parse(readFileSync(file('device.json'), 'utf8')).entries
    writeFileSync(file('landed-run.json'), JSON.stringify(first.body))
    const words = ['packet', 'landed-run.json', '--no-photos', '--date', '2026-05-12T10:05-06:00', '--device']
    for (const [device, out] of [
      [landed, 'of-zip'],
      ['device.json', 'of-json'],
    ] as const)
      expect(await lapwise([...words, device, '-o', out])).toMatchObject({ code: 0 })
    const record = (out: string) => JSON.parse(readFileSync(file(`${out}/manifest.json`), 'utf8')).recordHash
    expect(record('of-zip')).toBe(record('of-json'))
  })

  it('names the photos that it tells of and does not carry', async () => {
    const device = JSON.parse(readFileSync(file('device.json'), 'utf8'))
    writeFileSync(file('bare.json'), JSON.stringify({ ...device, photos: [] }))
    const told = await lapwise(['handover', 'bare.json'])
    expect(told).toMatchObject({ code: 0 })
    expect(told.out).toContain(`not in it: the picture of photo ${device.photos[0].sha256}`)
  })

  it('ends with 2 where part of it is not sound, and writes nothing', async () => {
    const device = JSON.parse(readFileSync(file('device.json'), 'utf8'))
    device.entries[3].kind = 'hologram'
    device.photos[0].base64 = 'iVBORw0KGgo='
    writeFileSync(file('torn.json'), JSON.stringify(device))
    const told = await lapwise(['handover', 'torn.json'])
    expect(told.code).toBe(2)
    expect(told.out).toContain('reading: 166')
    expect(told.said).toContain('torn.json: entries[3].kind')
    expect(told.said).toContain('torn.json: photos[0].base64: expected bytes with the sha256')
    expect(await lapwise(['handover', 'torn.json', '-o', 'torn.zip'])).toMatchObject({ code: 2 })
    expect(readdirSync(folder)).not.toContain('torn.zip')
    expect(await lapwise(['handover', 'device.json', '--run', 'none', '--json'])).toMatchObject({ code: 0 })
  })
})
