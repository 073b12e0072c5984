import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, relative } from 'node:path'
import { unzipSync } from 'fflate'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { Entry } from '../../src/formats/entry/entry-kinds.ts'
import { writeRun } from '../../src/formats/run/write-run.ts'
import { entriesPath, packetOfRunPath, packetPath, runPath, runsPath, stripPath } from '../../src/protocol/addresses.ts'
import { openStore } from '../../src/store/store.ts'
import { demoVersions } from '../fixtures/three-versions.ts'
import { lapwise, lapwiseBy } from './lapwise.ts'
import { buildProgram, laterProgram, sheetChanged } from './later-program.ts'
import { copyEmpty, startServer, startServerProcess } from './web/serve.ts'

// The landed demo store, a file of a device and a packet are opened by this program, and then by later ones, in whose
// shelf or solver one thing is another. Each is a whole program of its own: its command line, its server, its store.
const landed = new URL('../cases/landed/demo/', import.meta.url)
const { entries } = JSON.parse(readFileSync(new URL('device.json', landed), 'utf8')) as { entries: readonly Entry[] }
const expected = JSON.parse(readFileSync(new URL('expected.json', landed), 'utf8'))
const run = entries[0]!.id

const system = 'w-beam-midspan-31'
interface Later {
  readonly changes: Parameters<typeof laterProgram>[0]
  /** Whether a run that was laid out today has other sheets than are on the later shelf. */
  readonly isListed: boolean
}
const each: Readonly<Record<string, Later>> = {
  'a limit on the shelf': {
    changes: [
      sheetChanged(system, ({ railHeight, ...sheet }) => ({
        ...sheet,
        railHeight: { ...(railHeight as object), low: 31.5, nominal: 32, high: 33 },
      })),
    ],
    isListed: true,
  },
  'the tie-break of the solver': {
    changes: [
      {
        file: 'src/core/layout/solve-layout.ts',
        make: (text) => text.replace('a.fromNeed < b.fromNeed', 'a.fromNeed <= b.fromNeed'),
      },
    ],
    isListed: false,
  },
  'the edition of a sheet': {
    changes: [sheetChanged(system, (sheet) => ({ ...sheet, version: '9.0.0' }))],
    isListed: true,
  },
}

/** Each by itself, so that none hides another, and all of them in one program. */
const later: Readonly<Record<string, Later>> = {
  ...each,
  'all of this together': { changes: Object.values(each).flatMap(({ changes }) => changes), isListed: true },
}

const top = mkdtempSync(join(tmpdir(), 'lapwise-nothing-moves-'))
const programs: string[] = []
afterAll(() => {
  for (const folder of [top, ...programs]) rmSync(folder, { recursive: true, force: true })
})

/** What starts the server of a later program as its own command does, but for the page, which is looked at elsewhere. */
function serverOf(program: string): string {
  const file = join(program, 'serve.mjs')
  const lines = [
    "import { serve } from './dist/program/server.js'",
    "await serve({ kind: 'start', isLan: false }, { print: console.log, say: console.error, note: console.error })",
  ]
  writeFileSync(file, lines.join('\n'))
  mkdirSync(join(program, 'dist/web/assets'), { recursive: true })
  return file
}

/** Every file of a folder by its path, with its bytes as text. */
const filesIn = (folder: string): Readonly<Record<string, string>> =>
  Object.fromEntries(
    readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter((one) => one.isFile())
      .map((one) => join(one.parentPath, one.name))
      .sort()
      .map((path) => [relative(folder, path), readFileSync(path, 'latin1')]),
  )

const wish = { page: 'letter', author: 'R. Quist', rounding: '0.1 ft', photos: false, zone: 'America/Denver' }

/** All that a server tells of a run of its store, but for when it was asked. */
async function toldBy(server: string | undefined, data: string) {
  const { address, stop } = server === undefined ? await startServer(data) : await startServerProcess(data, {}, server)
  const ask = async (path: string, body?: unknown): Promise<Response> => {
    const sent = { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) }
    const answer = await fetch(address + path, body === undefined ? {} : sent)
    if (!answer.ok) throw new Error(`${path}: ${await answer.text()}`)
    return answer
  }
  try {
    const made = await ask(packetOfRunPath(run), wish)
    const { packet } = JSON.parse((await made.text()).trim().split('\n').at(-1)!) as { packet: string }
    const files = unzipSync(new Uint8Array(await (await ask(packetPath(packet))).arrayBuffer()))
    const file = (name: string): string =>
      Buffer.from(Object.entries(files).find(([path]) => path.endsWith(`/${name}`))![1]).toString()
    return {
      list: ((await (await ask(runsPath)).json()) as { runs: { id: string }[] }).runs.find(({ id }) => id === run),
      held: await (await ask(runPath(run))).json(),
      entries: ((await (await ask(`${entriesPath}?after=0`)).json()) as { entries: Entry[] }).entries.filter(
        (entry) => entry.run === run,
      ),
      strip: await (await ask(stripPath(run))).text(),
      run: file('run.json'),
      readings: file('readings.json'),
      recordHash: JSON.parse(file('manifest.json')).recordHash as string,
    }
  } finally {
    await stop()
  }
}

/** An entry as the device exports it that fetched it. */
const asOnDevice = ({ id, run, kind, schemaVersion, author, device, capturedAt, supersedes, body }: Entry): Entry => ({
  ...{ id, run, kind, schemaVersion, author, device, capturedAt, supersedes, body },
})

type Main = typeof lapwise
const commandLineOf = async (program: string): Promise<Main> => {
  const built = join(program, 'dist/program/command-line.js')
  const { main } = (await import(built)) as { main: Parameters<typeof lapwiseBy>[0] }
  return (folder, words, input) => lapwiseBy(main, folder, words, input)
}

const when = ['--date', '2026-11-27T10:05-07:00', '--zone', 'America/Denver']

/** What a command line makes of the packet and of the device's file, in a folder that it has for itself. */
async function madeBy(call: Main, name: string) {
  const at = join(top, 'made', name)
  mkdirSync(at, { recursive: true })
  const made = async (words: readonly string[]): Promise<string> => {
    const { code, out, said } = await call(top, words)
    if (code !== 0 && code !== 1) throw new Error(`${words[0]}: ${said}`)
    return out
  }
  await made(['packet', 'packet/run.json', '--device', 'device.json', '-o', join(at, 'device'), ...when])
  return {
    required: JSON.parse(await made(['requirements', 'packet/run.json', '--json'])),
    judged: JSON.parse(await made(['judge', 'packet/run.json', 'packet/readings.json', '--json'])),
    files: filesIn(at),
  }
}

let [today, made] = [{} as Awaited<ReturnType<typeof toldBy>>, {} as Awaited<ReturnType<typeof madeBy>>]

beforeAll(async () => {
  // The store as the program of then left it, before this one ever opened it.
  await copyEmpty(join(top, 'landed'))
  const opened = await openStore({ kind: 'embedded', folder: join(top, 'landed') })
  if (!opened.ok) throw new Error('the store cannot be opened', { cause: opened.error })
  await opened.value.createProject({ id: 'demo', name: 'Demo' })
  const appended = await opened.value.append(entries.map((entry) => ({ ...entry, project: 'demo' })))
  if (!appended.ok) throw new Error('the landed entries cannot be stored', { cause: appended.error })
  await opened.value.close()
  cpSync(join(top, 'landed'), join(top, 'data'), { recursive: true })

  today = await toldBy(undefined, join(top, 'data'))
  mkdirSync(join(top, 'packet'))
  writeFileSync(join(top, 'packet/run.json'), today.run)
  writeFileSync(join(top, 'packet/readings.json'), today.readings)
  const device = { format: 'lapwise-device/1', device: 'phone', writtenAt: '2026-11-27T14:00:00.000Z', photos: [] }
  writeFileSync(join(top, 'device.json'), JSON.stringify({ ...device, entries: today.entries.map(asOnDevice) }))
  made = await madeBy(lapwise, 'today')
  // A server is started and two packets are made, which takes minutes where much else runs on the machine.
}, 300_000)

interface Judged {
  readonly acceptance: string
  readonly verdicts: readonly Readonly<Record<'requirement' | 'verdict' | 'value' | 'margin' | 'readings', unknown>>[]
  readonly findings: readonly Readonly<Record<'id' | 'requirements', unknown>>[]
}

test('what landed is judged by this program as it was by the one that wrote it', () => {
  const { acceptance, verdicts, findings } = made.judged as Judged
  expect({ kind: acceptance }).toEqual(expected.acceptance)
  expect(verdicts.map((one) => [one.requirement, one.verdict, one.value, one.margin, one.readings])).toEqual(
    (expected as Judged).verdicts.map((one) => [one.requirement, one.verdict, one.value, one.margin, one.readings]),
  )
  expect(findings.map(({ id, requirements }) => [id, requirements])).toEqual(
    (expected as Judged).findings.map(({ id, requirements }) => [id, requirements]),
  )
  expect(JSON.parse(made.files['device/manifest.json']!).recordHash).toBe(today.recordHash)
})

describe.each(Object.entries(later))('a program in which %s is another', (name, { changes, isListed }) => {
  let program: string
  let server: string
  let call: Main
  beforeAll(async () => {
    program = laterProgram(changes)
    programs.push(program)
    buildProgram(program)
    server = serverOf(program)
    call = await commandLineOf(program)
  })

  test('would lay out or judge otherwise what is recorded now: what it could not move it could not show', async () => {
    writeFileSync(join(top, 'asked.json'), JSON.stringify(entries[0]!.body))
    const { code, out } = await call(top, ['pin', 'asked.json'])
    const of = JSON.parse(out)
    const now = JSON.parse((await lapwise(top, ['pin', 'asked.json'])).out)
    expect(code).toBe(0)
    expect([of.sheets, of.layout]).not.toEqual([now.sheets, now.layout])
  })

  test('tells of the store, its list, places, readings, strip and the hash of the record, what was told before', async () => {
    cpSync(join(top, 'data'), join(top, `data ${name}`), { recursive: true })
    expect(await toldBy(server, join(top, `data ${name}`))).toEqual(today)
  })

  test('makes the same requirements, verdicts and findings of a packet, and of the file of a device the same documents to the byte', async () => {
    const { files, ...told } = await madeBy(call, name)
    expect(told).toEqual({ required: made.required, judged: made.judged })
    expect(Object.keys(files)).toEqual(Object.keys(made.files))
    const moved = Object.keys(files).filter((file) => files[file] !== made.files[file])
    expect(moved).toEqual([])
  })

  test(`${isListed ? 'lists' : 'does not list'} a run of today as one whose sheets are others on the shelf`, async () => {
    mkdirSync(join(top, 'runs'), { recursive: true })
    writeFileSync(join(top, 'runs/today.json'), writeRun(demoVersions(['v1'])[0]!))
    const { out } = await call(top, ['shelf', 'runs', '--json'])
    expect(JSON.parse(out)).toMatchObject({
      ...{ looked: 1, differing: isListed ? [{ where: 'runs/today.json', sheets: [{ sheet: system }] }] : [] },
    })
  })
})
