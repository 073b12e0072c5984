import { cpSync, mkdirSync, mkdtempSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { canonicalJson } from '../../src/formats/canonical-json.ts'
import { writeRun } from '../../src/formats/run/write-run.ts'
import { demoProject } from '../../src/operations/demo-project.ts'
import { pinned } from '../../src/operations/pin-run.ts'
import { deviceOf, onDevice } from '../cases/documents/device-of-demo.ts'
import { isInstalled, outputOf, textOf } from '../cases/documents/outside-programs.ts'
import { pngOf } from '../cases/documents/png-of.ts'
import { judgedDemo } from '../cases/exports/export-project.ts'
import { sha256 } from '../fixtures/record-text-of.ts'
import { lapwise } from './lapwise.ts'

const script = new URL('recompute-record-hash.py', import.meta.url).pathname
const top = mkdtempSync(join(tmpdir(), 'lapwise-recompute-'))
afterAll(() => rmSync(top, { recursive: true, force: true }))

/** What a script of the standard library alone, written from docs/record-hash.md, makes of a packet. */
const recomputed = (packet: string): string => outputOf('python3', script, packet).trim()

/** The demo's packet with a photo of each hold point, made by the command line. */
const packet = join(top, 'packet')
const printed = (): string => JSON.parse(readFileSync(join(packet, 'manifest.json'), 'utf8')).recordHash

beforeAll(async () => {
  const demo = demoProject()
  writeFileSync(join(top, 'run.json'), demo.run)
  writeFileSync(join(top, 'readings.json'), demo.readings)
  mkdirSync(join(top, 'photos'))
  for (const n of [1, 2, 20]) writeFileSync(join(top, `photos/covered-${n}.png`), pngOf(n, 2))
  const words = ['packet', 'run.json', 'readings.json', '--photos', 'photos', '-o', 'packet']
  expect((await lapwise(top, words)).code).toBe(0)
})

/** A copy of the packet in which `change` has changed something. */
function changedPacket(name: string, change: (folder: string) => void): string {
  const folder = join(top, name)
  cpSync(packet, folder, { recursive: true })
  change(folder)
  return folder
}

/** Puts `to` in the place of `from`, which stands in the file. */
function replaceIn(file: string, from: string | RegExp, to: string): void {
  const text = readFileSync(file, 'utf8')
  const changed = text.replace(from, to)
  expect(changed).not.toBe(text)
  writeFileSync(file, changed)
}

describe.skipIf(!isInstalled('python3'))('somebody with the packet and a page of instructions', () => {
  test.skipIf(!isInstalled('pdftotext'))('computes the hash that the record prints', () => {
    const record = textOf(join(packet, 'record.pdf')).replaceAll(' ', '')
    expect(record).toContain(recomputed(packet))
  })

  test('computes the hash that the manifest repeats, also where the files were written anew in another form', () => {
    expect(recomputed(packet)).toBe(printed())
    const backwards = (value: unknown): unknown =>
      Array.isArray(value)
        ? value.map(backwards)
        : typeof value === 'object' && value !== null
          ? Object.fromEntries(
              Object.entries(value)
                .map(([name, one]) => [name, backwards(one)])
                .reverse(),
            )
          : value
    const anew = changedPacket('anew', (folder) => {
      for (const name of ['run.json', 'readings.json', 'manifest.json']) {
        const value = backwards(JSON.parse(readFileSync(join(folder, name), 'utf8')))
        writeFileSync(join(folder, name), JSON.stringify(value, null, '\t').replaceAll('\n', '\r\n'))
      }
    })
    expect(recomputed(anew)).toBe(printed())
  })

  test.each([
    [
      'a digit of one reading',
      (folder: string) => replaceIn(join(folder, 'readings.json'), '"4 3/4 in"', '"4 1/4 in"'),
    ],
    ['who read it', (folder: string) => replaceIn(join(folder, 'readings.json'), '"T. Alvarez"', '"R. Quist"')],
    [
      'a limit in a sheet',
      (folder: string) =>
        replaceIn(join(folder, 'run.json'), /"high": 4,(?=\s+"unit": "in",\s+"role": "ceiling")/, '"high": 5,'),
    ],
    ['where a post stands', (folder: string) => replaceIn(join(folder, 'run.json'), '"along": 225,', '"along": 226,')],
    ['the decision rule', (folder: string) => replaceIn(join(folder, 'run.json'), '"multiple": 1', '"multiple": 0.5')],
    ['the order of two readings', swapReadings],
    ['one photo for another', swapPhotos],
    ['a byte of a photo', (folder: string) => writeFileSync(join(folder, 'photos/covered-2.png'), pngOf(3, 2))],
    ['a photo left out of the list', (folder: string) => dropPhoto(join(folder, 'manifest.json'))],
  ])('sees that %s was changed', (what, change) => {
    expect(recomputed(changedPacket(what, change))).not.toBe(printed())
  })

  test('computes the hash that a signature on a device names, whose photo the packet has or has not', async () => {
    const judged = pinned(onDevice(judgedDemo()), sha256)
    const run = writeRun(judged.run)
    writeFileSync(join(top, 'pinned.json'), run)
    const log = judged.log.map((one) => ({ ...one, photos: [] }))
    const device = deviceOf({ ...judged, readings: log, log }, run, [pngOf(7, 3)])
    const entries = device.entries.map((one) =>
      one.kind === 'photo' ? { ...one, body: { ...(one.body as object), type: 'image/png' } } : one,
    )
    const photos = device.photos.map((one) => ({ ...one, type: 'image/png' }))
    writeFileSync(join(top, 'device.json'), JSON.stringify({ ...device, entries, photos }))
    const signed = device.entries.find(({ kind }) => kind === 'sign-off')!.body as { recordHash: string }
    for (const [name, ...more] of [['with'], ['without', '--no-photos']] as const) {
      const words = ['packet', 'pinned.json', '--device', 'device.json', '-o', name, ...more]
      expect((await lapwise(top, words)).code).toBe(0)
      expect(recomputed(join(top, name))).toBe(signed.recordHash)
    }
    // What was drawn on the photo is in it too: its place, and that it was drawn.
    for (const [from, to] of [
      ['0.75', '0.85'],
      [/"photoStrokes": \[.*?\n {2}\]/s, '"photoStrokes": []'],
    ] as const) {
      const folder = join(top, `other marks ${to.length}`)
      cpSync(join(top, 'with'), folder, { recursive: true })
      replaceIn(join(folder, 'readings.json'), from, to)
      expect(recomputed(folder)).not.toBe(signed.recordHash)
    }
    // The command line makes the same record of the packet alone, marks and all.
    expect(
      await lapwise(top, ['packet', 'with/run.json', 'with/readings.json', '--no-photos', '-o', 'alone']),
    ).toMatchObject({ code: 0 })
    expect(readFileSync(join(top, 'alone/readings.json'), 'utf8')).toBe(
      readFileSync(join(top, 'with/readings.json'), 'utf8'),
    )
  })

  test('prints every number and text as this program does', () => {
    const powers = Array.from({ length: 60 }, (_, i) => 10 ** (i - 30))
    const values = {
      numbers: [0, -0, 1, -1, 0.1, 0.5, 27.75, 1 / 3, 5e-324, Number.MAX_VALUE, 2 ** 53, 123456789012345680000].concat(
        powers.flatMap((power) => [power, -power, power * 1.5, power * (1 + 2 ** -52)]),
      ),
      texts: ['', '"\\/\b\t\n\f\r\u0000\u001f\u007f\u2028', 'Ærø 漢字 😀', '\ud800'],
      names: { ﬀ: 1, '😀': 2, b: 3, a: 4, '': 5, '1': 6, '\n': 7 },
    }
    const folder = join(top, 'values')
    mkdirSync(folder)
    writeFileSync(join(folder, 'run.json'), JSON.stringify(values))
    writeFileSync(join(folder, 'readings.json'), '[]')
    writeFileSync(join(folder, 'manifest.json'), '{"photos": []}')
    const record = { format: 'lapwise-record/2', photos: {}, readings: [], run: values }
    expect(recomputed(folder)).toBe(sha256(canonicalJson(record)))
  })
})

function swapReadings(folder: string): void {
  const file = join(folder, 'readings.json')
  const { readings, ...rest } = JSON.parse(readFileSync(file, 'utf8'))
  const [first, second, ...others] = readings
  writeFileSync(file, JSON.stringify({ ...rest, readings: [second, first, ...others] }))
}

function swapPhotos(folder: string): void {
  const [one, other, aside] = ['covered-1.png', 'covered-2.png', 'aside'].map((name) => join(folder, 'photos', name))
  renameSync(one!, aside!)
  renameSync(other!, one!)
  renameSync(aside!, other!)
}

function dropPhoto(file: string): void {
  const { photos, ...rest } = JSON.parse(readFileSync(file, 'utf8'))
  writeFileSync(file, JSON.stringify({ ...rest, photos: photos.slice(1) }))
}
