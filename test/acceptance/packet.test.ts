import { execFileSync, spawn, spawnSync } from 'node:child_process'
import { once } from 'node:events'
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as wait } from 'node:timers/promises'
import { afterAll, beforeEach, describe, expect, it } from 'vitest'
import { BadInput } from '../../src/cli/command.ts'
import { writeFolder } from '../../src/cli/write-folder.ts'
import { writeLandXml } from '../../src/formats/landxml/write-landxml.ts'
import { readReadings } from '../../src/formats/readings/readings-file.ts'
import { writeRun } from '../../src/formats/run/write-run.ts'
import { demoProject } from '../../src/operations/demo-project.ts'
import { pinned } from '../../src/operations/pin-run.ts'
import { exampleSite } from '../../src/web/site/example-site.ts'
import { deviceOf, onDevice } from '../cases/documents/device-of-demo.ts'
import { inventedRoad, judgedDemo } from '../cases/exports/export-project.ts'
import { sha256 } from '../fixtures/record-text-of.ts'
import { lapwise as call, program, startLapwise } from './lapwise.ts'

const top = mkdtempSync(join(tmpdir(), 'lapwise-packet-'))
afterAll(() => rmSync(top, { recursive: true, force: true }))

let folder = ''
const file = (name: string): string => join(folder, name)
const told = (name: string, ...words: readonly string[]): string =>
  execFileSync(name, words, { encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] })

function isThere(name: string): boolean {
  const found = spawnSync(name, ['--version']).error === undefined
  if (!found) console.warn(`${name} is not installed: the checks that it makes are skipped`)
  return found
}

/** The invented road as LandXML, in US survey feet. */
function writeRoad(): void {
  const { horizontal, equations } = inventedRoad
  const road = { unit: 'USSurveyFoot', alignments: [{ name: 'road', horizontal, equations }] } as const
  writeFileSync(file('road.xml'), writeLandXml(road, '2016-05-01', '08:00:00'))
}

/** What stands in the folder beside the input. */
const written = (): readonly string[] =>
  readdirSync(folder).filter((name) => !['run.json', 'readings.json', 'photos'].includes(name))

beforeEach(() => {
  folder = mkdtempSync(join(top, 'job-'))
  const demo = demoProject()
  writeFileSync(file('run.json'), demo.run)
  writeFileSync(file('readings.json'), demo.readings)
  mkdirSync(file('photos'))
})

const words = ['packet', 'run.json', 'readings.json', '-o', 'OUT/'] as const
const lapwise = (...more: readonly string[]) => call(folder, [...words, ...more])

const picture = readFileSync(new URL('web/fieldwork-sideways.jpg', import.meta.url))

/** A picture, filled up after its end to `size` bytes, as cameras append a film. */
function writePhoto(name: string, size: number): void {
  const bytes = Buffer.alloc(size, 7)
  picture.copy(bytes)
  writeFileSync(file(`photos/${name}`), bytes)
}

const writePhotos = (size: number): void => {
  for (const number of [1, 2, 20]) writePhoto(`covered-${number}.jpg`, size)
}

/** Faults that `sha256sum`, which nobody here wrote, finds against the manifest of OUT. */
function manifestFaults(): readonly string[] {
  const { files } = JSON.parse(readFileSync(file('OUT/manifest.json'), 'utf8')) as {
    files: { name: string; sha256: string }[]
  }
  const sums = execFileSync('sha256sum', ['--', ...files.map(({ name }) => name)], {
    cwd: file('OUT'),
    encoding: 'utf8',
  })
  const wanted = files.map(({ name, sha256 }) => `${sha256}  ${name}`)
  return sums
    .trim()
    .split('\n')
    .filter((line, i) => line !== wanted[i])
}

describe('lapwise packet', () => {
  it('writes the folder whole, with photos, and sha256sum agrees with the manifest on every file', async () => {
    writePhotos(4096)
    const { code, said } = await lapwise('--photos', 'photos', '--ticket', 'ticket 7')
    expect([code, said.includes('wrote 24 files'), said.includes('making ')]).toEqual([0, true, false])
    expect(written()).toEqual(['OUT'])
    expect(readdirSync(file('OUT')).sort()).toEqual([
      ...['as-built.pdf', 'crew-sheet-es.pdf', 'crew-sheet.pdf'],
      ...['daily-report-2016-05-09.pdf', 'daily-report-2016-05-12.pdf'],
      ...['detail-1.dxf', 'detail-2.dxf', 'elevation.dxf'],
      ...['manifest.json', 'material-list.pdf', 'photos', 'quantities.pdf'],
      ...[
        'quantities.xlsx',
        'readings.json',
        'record.json',
        'record.pdf',
        'run.ifc',
        'run.json',
        'stakes.csv',
        'strip.dxf',
        'strip.svg',
        'summary.pdf',
      ],
    ])
    expect(readdirSync(file('OUT/photos')).sort()).toEqual(['covered-1.jpg', 'covered-2.jpg', 'covered-20.jpg'])
    expect(manifestFaults()).toEqual([])
    const readingsIn = (name: string) => readReadings(name, readFileSync(file(name), 'utf8'))
    expect(readingsIn('OUT/readings.json')).toEqual(readingsIn('readings.json'))
    writeFileSync(file('OUT/stakes.csv'), 'changed')
    expect(manifestFaults()).toEqual([`${sha256('changed')}  stakes.csv`])
  })

  it('takes logs, ticket, signatures, photos and readings from the file of a device', async () => {
    const judged = pinned(onDevice(judgedDemo()), sha256)
    const run = writeRun(judged.run)
    writeFileSync(file('run.json'), run)
    const readings = judged.readings.map((one) => ({ ...one, photos: [] }))
    const asShown = { ...judged, readings, log: readings }
    const device = deviceOf(asShown, run, [picture])
    writeFileSync(file('device.json'), JSON.stringify(device))
    const end = await call(folder, ['packet', 'run.json', '--device', 'device.json', '-o', 'OUT/'], '', true)
    expect([end.code, end.said]).toEqual([0, expect.stringContaining('making crew-sheet.pdf, 1 of 22')])
    expect(readFileSync(file(`OUT/photos/${sha256(picture)}.jpg`))).toEqual(picture)
    expect(manifestFaults()).toEqual([])
    const { recordHash } = JSON.parse(readFileSync(file('OUT/manifest.json'), 'utf8')) as { recordHash: string }
    expect(device.entries.find(({ kind }) => kind === 'sign-off')!.body).toMatchObject({ recordHash })
  })

  it('refuses a device whose photo is not the one that its hash names, and a zone that there is none of', async () => {
    const device = deviceOf(onDevice(judgedDemo()), demoProject().run, [Buffer.from('one')])
    const photos = device.photos.map((photo) => ({ ...photo, base64: Buffer.from('another').toString('base64') }))
    writeFileSync(file('device.json'), JSON.stringify({ ...device, photos }))
    const { code, said } = await lapwise('--device', 'device.json')
    expect([code, said]).toEqual([2, expect.stringContaining('photos[0].base64: expected bytes with the sha256')])
    expect((await lapwise('--zone', 'Denver')).said).toMatch(/expected --zone .*, found Denver/)
    expect(written()).toEqual(['device.json'])
  })

  it('takes an empty folder, and refuses one with anything in it or a file, which stay as they are', async () => {
    mkdirSync(file('OUT'))
    writeFileSync(file('OUT/mine.txt'), 'mine')
    const refused = await lapwise()
    expect(refused.code).toBe(2)
    expect(refused.said).toBe('OUT/: expected no such folder, or an empty one, found a folder with 1 files in it\n')
    expect(readdirSync(file('OUT'))).toEqual(['mine.txt'])
    rmSync(file('OUT/mine.txt'))
    expect((await lapwise()).code).toBe(0)
    expect(manifestFaults()).toEqual([])
    expect(written()).toEqual(['OUT'])
  })

  it('names each photo that is missing, twice there, cut short or no picture, and writes nothing', async () => {
    writeFileSync(file('photos/covered-1.jpg'), 'a text')
    writePhoto('covered-2.jpg', picture.length - 1)
    const { code, said } = await lapwise('--photos', 'photos')
    expect(code).toBe(2)
    expect(said.split('\n').filter((line) => line !== '')).toEqual([
      'covered-1.jpg: expected a whole picture (JPEG, PNG or WebP) of at most 64 million pixels, found a file that begins like none of them',
      'covered-2.jpg: expected a whole picture (JPEG, PNG or WebP) of at most 64 million pixels, found a picture that is cut short',
      'readings.json: photo "covered-20": expected a picture of that name, found no such file',
    ])
    writePhoto('covered-1.png', 4096)
    const twice = await lapwise('--photos', 'photos')
    expect([twice.code, twice.said]).toEqual([
      2,
      'photos: photo "covered-1": expected one picture of that name, found covered-1.jpg, covered-1.png\n',
    ])
    expect((await lapwise('--photos', 'nowhere')).said).toBe(
      'nowhere: expected a folder that can be read, found ENOENT\n',
    )
    expect(written()).toEqual([])
  })

  it('is the same to the byte for the same files, date and author, in text that lies, and another for another', async () => {
    const printed = ['--date', '2016-05-13T09:00:00-06:00', '--author', 'M. Reyes', '--landscape', '--page', 'A4']
    const manifests = []
    for (const [asked, run] of [
      [printed, call],
      // The same words to a process of its own.
      [printed, startLapwise],
      [['--date', '2016-05-14'], call],
    ] as const) {
      expect((await run(folder, [...words, ...asked, '--zone', 'America/Denver'])).code).toBe(0)
      expect(manifestFaults()).toEqual([])
      manifests.push(readFileSync(file('OUT/manifest.json'), 'utf8'))
      if (asked === printed)
        for (const name of ['record', 'crew-sheet', 'quantities', 'daily-report-2016-05-12'])
          expect(told('pdfinfo', file(`OUT/${name}.pdf`))).toMatch(/^Page size: +841.89 x 595.276 pts \(A4\)$/m)
      rmSync(file('OUT'), { recursive: true })
    }
    expect(manifests[1]).toBe(manifests[0])
    expect(manifests[2]).not.toBe(manifests[0])
    expect(JSON.parse(manifests[0]!)).toMatchObject({ author: 'M. Reyes', printedAt: '2016-05-13T09:00:00-06:00' })
  })

  it('pays by the rule given, and lists stakes in the order and under the head asked for', async () => {
    const words = [
      '--pay',
      '12.5 ft',
      '--boundaries',
      'post 3, listed length',
      '--stake-order',
      'easting',
      '--no-header',
    ]
    expect((await lapwise(...words)).code).toBe(0)
    const { pay } = JSON.parse(readFileSync(file('OUT/manifest.json'), 'utf8')) as {
      pay: { boundaries: string; rounding: string }
    }
    expect(pay.boundaries).toMatch(
      /begins at the centre of post 3 \(post 3 of the terminal\) and ends where the listed length/,
    )
    expect(pay.rounding).toContain('12.5 ft')
    // No road: easting is square to the line of the run, which leaves post 1 of a 48 in flare; northing runs along it.
    const [first] = readFileSync(file('OUT/stakes.csv'), 'utf8').split('\r\n')
    expect(first).toMatch(/^1,4\.0000,/)
  })

  it('is made for the crew before anything was read, without a file of readings', async () => {
    const { code, said } = await call(folder, ['packet', 'run.json', '--for', 'crew', '-o', 'OUT/'])
    expect([code, said]).toEqual([0, expect.stringContaining('wrote 10 files')])
    expect(readdirSync(file('OUT'))).toEqual(expect.arrayContaining(['crew-sheet.pdf', 'run.json', 'strip.svg']))
    expect(JSON.parse(readFileSync(file('OUT/manifest.json'), 'utf8'))).toMatchObject({ purpose: 'crew' })
    expect(manifestFaults()).toEqual([])
  })

  it.each([
    [['--for', 'lawyer'], /expected .*crew.*survey.*estimate.*record.*, found lawyer/],
    [['--pay', '2 ft'], /expected --pay 0.1 ft, 1 ft, 12.5 ft, found 2 ft/],
    [['--boundaries', 'middle'], /expected --boundaries with splice, listed length or post N, found middle/],
    [['--boundaries', 'post 99'], /expected a boundary at one of the \d+ posts of the first end, found post 99/],
    [['--stake-order', 'code'], /expected --stake-order northing or easting, found code/],
    [['--date', '12 May 2016'], /expected --date as 2026-05-12/],
    [['--date', '2016-02-31T10:00Z'], /expected --date as 2026-05-12/],
    [['--offset', '12 ft'], /expected --alignment FILE with --offset and --epsg/],
    [['--alignment', 'road.xml'], /expected --offset LENGTH/],
    [['--alignment', 'road.xml', '--offset', 'wide'], /expected --offset/],
    [['--alignment', 'road.xml#other', '--offset', '12 ft'], /road.xml: 4:\d+: expected one alignment.*found "road"/],
    [['--alignment', 'road.xml', '--offset', '12 ft', '--epsg', '4326'], /expected --epsg .* is not projected/],
    [
      ['--alignment', 'road.xml', '--offset', '12 ft', '--epsg', '26911'],
      /in the unit of the road, US survey foot, found .* in metre/,
    ],
    // New York's eastern zone of the other foot, and another zone of the same one.
    [['--alignment', 'road.xml', '--offset', '12 ft', '--epsg', '2227'], /run.json: road: expected coordinates in/],
    [
      ['--alignment', 'named.xml', '--offset', '12 ft', '--epsg', '2260'],
      /expected --epsg 2263, which the road's file names, found 2260/,
    ],
    [
      ['--alignment', 'broken.xml', '--offset', '12 ft'],
      /run.json: road.datumStation: expected a road that goes on .* found at station 201[+]00[.]00 it goes on 15[.]240 m away and turned 51[.]566° to the right/,
    ],
  ])('refuses %j and writes nothing', async (words, problem) => {
    writeRoad()
    const road = readFileSync(file('road.xml'), 'utf8')
    writeFileSync(file('named.xml'), road.replace('  <Alignments>', '<CoordinateSystem epsgCode="2263"/>$&'))
    // A tangent of 100 ft that ends 50 ft before the road begins, and in another direction.
    const before = '<Line><Start>789441.521 630128.2058</Start><End>789541.521 630128.2058</End></Line>'
    writeFileSync(file('broken.xml'), road.replace('<CoordGeom>', `$&${before}`))
    const { code, said } = await lapwise(...words)
    expect([code, said]).toEqual([2, expect.stringMatching(problem)])
    expect(written()).toEqual(['broken.xml', 'named.xml', 'road.xml'])
  })

  it.skipIf(!isThere('ogrinfo') || !isThere('xmllint'))(
    'places the run on the road of a LandXML file, where ogrinfo and xmllint find every stake',
    async () => {
      writeRoad()
      const place = ['--alignment', 'road.xml', '--offset', '12 ft', '--epsg', '2260']
      expect((await lapwise(...place)).code).toBe(0)
      expect(manifestFaults()).toEqual([])
      const stakes = judgedDemo().model.layout.posts.length
      const findings = judgedDemo().judgement.findings.length
      const points = 'count(//*[local-name()="CgPoint"])'
      expect(told('xmllint', '--xpath', points, file('OUT/stakes.xml')).trim()).toBe(`${stakes}`)
      const maps = told('ogrinfo', '-ro', '-al', '-so', file('OUT/run.gpkg'))
      expect(maps).toContain('ID["EPSG",2260]')
      const counts = [...maps.matchAll(/Feature Count: (\d+)/g)].map(([, count]) => Number(count))
      expect(counts).toEqual([1, stakes, findings])
      const json = told('ogrinfo', '-ro', '-al', '-so', file('OUT/run.geojson'))
      expect(json).toContain(`Feature Count: ${1 + stakes + findings}`)
      // cs2cs EPSG:4269 EPSG:2260 puts 41 N, 74 W at the road's beginning; the run lies 850 ft on from there.
      const [, west, south] = /Extent: \(([-\d.]+), ([-\d.]+)\)/.exec(json) ?? []
      expect(Math.abs(Number(west) + 74)).toBeLessThan(0.01)
      expect(Math.abs(Number(south) - 41)).toBeLessThan(0.01)
      // The placed run of the exports, by the same road, is checked against other programs there.
      const csv = readFileSync(file('OUT/stakes.csv'), 'utf8')
      expect(csv.split('\r\n')[0]).toBe(
        'point,northing (US survey foot),easting (US survey foot),elevation (US survey foot),code',
      )
      const [, minX = ''] =
        /Extent: \(([-\d.]+), /.exec(told('ogrinfo', '-ro', '-al', '-so', file('OUT/stakes.dxf'))) ?? []
      expect(Number(minX)).toBeGreaterThan(630_000)
      rmSync(file('OUT'), { recursive: true })
      expect((await lapwise(...place.slice(0, 4))).code).toBe(0)
      expect(existsSync(file('OUT/run.gpkg'))).toBe(false)
      expect(existsSync(file('OUT/stakes.xml'))).toBe(true)
    },
  )

  it('stakes the same points, in the same foot, from the short form of a road in a site file', async () => {
    writeRoad()
    const { out } = await call(folder, ['alignment', 'road.xml'])
    const [{ alignment }] = JSON.parse(out).alignments
    const [hazard] = exampleSite.hazards as object[]
    const hazards = [{ ...hazard, from: 20_900, to: 20_920 }]
    const site = { ...exampleSite, road: { ...(exampleSite.road as object), alignment }, hazards, driveways: [] }
    writeFileSync(file('site.json'), JSON.stringify(site))
    const stakesBy = async (road: string) => {
      expect(await lapwise('--alignment', road, '--offset', '12 ft', '--epsg', '2260')).toMatchObject({ code: 0 })
      const rows = readFileSync(file('OUT/stakes.csv'), 'utf8').trimEnd().split('\r\n')
      rmSync(file('OUT'), { recursive: true })
      return rows
    }
    const [head, ...stakes] = await stakesBy('road.xml')
    const [headAgain, ...again] = await stakesBy('site.json')
    expect(headAgain).toBe(head)
    expect(again.map((row) => row.split(',')[4])).toEqual(stakes.map((row) => row.split(',')[4]))
    for (const [i, row] of stakes.entries()) {
      const [there, here] = [row, again[i]!].map((one) => one.split(',').slice(1, 3).map(Number))
      // 1 mm in US survey feet; the two feet would lie 1.3 and 1.6 ft apart here.
      expect(Math.hypot(there![0]! - here![0]!, there![1]! - here![1]!)).toBeLessThan(0.0033)
    }
    // The other foot is refused by its name.
    const other = { ...site, road: { ...site.road, alignment: { ...alignment, foot: 'international' } } }
    writeFileSync(file('site.json'), JSON.stringify(other))
    const refused = await lapwise('--alignment', 'site.json', '--offset', '12 ft', '--epsg', '2260')
    expect(refused).toMatchObject({ code: 2, said: expect.stringContaining('"foot": "US survey"') })
  })

  it('leaves nothing of OUT when it is killed while it writes, and OUT whole when it is killed after', async () => {
    // Large photos make the writing long enough to be hit.
    writePhotos(96 * 2 ** 20)
    let hits = 0
    for (const delay of [0, 15, 40, 80]) {
      const child = spawn(process.execPath, [program, ...words, '--photos', 'photos'], { cwd: folder })
      const end = once(child, 'close')
      while (child.exitCode === null && !written().some((name) => name.endsWith('.partial'))) await wait(1)
      await wait(delay)
      child.kill('SIGKILL')
      await end
      const left = written()
      if (left.includes('OUT')) expect(manifestFaults()).toEqual([])
      else {
        hits++
        expect(left).toHaveLength(1)
        expect(left[0]).toMatch(/^OUT\.[0-9a-f-]+\.partial$/)
      }
      for (const name of left) rmSync(file(name), { recursive: true })
    }
    expect(hits).toBeGreaterThan(0)
  })

  it('cleans up and says so when the disk takes no more, after any number of files', async () => {
    const files = ['a.txt', 'photos/b.txt', 'c.txt'].map((name) => ({ name, bytes: Buffer.from(name) }))
    for (const most of [0, 1, 2]) {
      let count = 0
      const full = async (path: string, bytes: Uint8Array): Promise<void> => {
        writeFileSync(path, count < most ? bytes : bytes.subarray(0, 1))
        if (count++ >= most) throw Object.assign(new Error('no space left'), { code: 'ENOSPC' })
      }
      const refused = await writeFolder(file('OUT'), files, full).catch((cause: unknown) => cause)
      expect(refused).toBeInstanceOf(BadInput)
      expect((refused as BadInput).problems[0]!.found).toEqual({ kind: 'theirs', text: 'ENOSPC' })
      expect(written()).toEqual([])
    }
    await writeFolder(file('OUT'), files)
    expect(readFileSync(file('OUT/photos/b.txt'), 'utf8')).toBe('photos/b.txt')
  })

  it.skipIf(process.platform === 'win32')('cleans up when the system itself refuses a file as too large', async () => {
    writePhotos(8 * 2 ** 20)
    // Files of at most 4 MiB: the documents fit, the photos do not.
    const limited = ['-c', 'ulimit -f 4096; trap "" XFSZ; exec "$@"', 'bash', process.execPath, program, ...words]
    const { status, stderr } = spawnSync('bash', [...limited, '--photos', 'photos'], { cwd: folder, encoding: 'utf8' })
    expect(stderr).toMatch(/OUT\/: expected a place where a folder can be written, found EFBIG\n$/)
    expect(status).toBe(2)
    expect(existsSync(file('OUT'))).toBe(false)
    expect(written()).toEqual([])
  })

  it('takes a run from standard input, and refuses a page that it does not know', async () => {
    expect((await call(folder, ['packet', '-', 'readings.json', '-o', 'OUT'], demoProject().run)).code).toBe(0)
    expect(manifestFaults()).toEqual([])
    rmSync(file('OUT'), { recursive: true })
    expect((await lapwise('--page', 'A5')).said).toMatch(/expected --page letter, tabloid, A4, A3, found A5/)
    expect(written()).toEqual([])
  })
})
