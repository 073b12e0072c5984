import { execFileSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { strToU8, zipSync } from 'fflate'
import { describe, expect, test } from 'vitest'
import { pngOf } from '../../../test/cases/documents/png-of.ts'
import { brokenManifests } from '../../../test/fixtures/handover-manifests.ts'
import { english } from '../../words/english.ts'
import type { Entry } from '../entry/entry-kinds.ts'
import { printProblem } from '../input-problem.ts'
import { checkShape } from '../read-json.ts'
import type { BytesSource } from '../zip/read-zip.ts'
import { type HandoverManifest, type HandoverPhoto, manifestShape } from './handover-shape.ts'
import { readHandover } from './read-handover.ts'
import { type HandoverInput, writeHandover } from './write-handover.ts'

const sha256 = (bytes: Uint8Array | string): string => createHash('sha256').update(bytes).digest('hex')
const at = '2026-05-04T15:30:00.000Z'
const run = '0190a1b2-0000-7000-8000-000000000000'
const entry = (n: number, changes: Partial<Entry> = {}): Entry => ({
  ...{ id: `0190a1b2-000${n}-7000-8000-000000000000`, run, kind: 'reading', schemaVersion: 3, author: 'R. Quist' },
  ...{ device: 'phone', capturedAt: at, supersedes: null, body: { of: 'post-1/stub-height', note: 'ñ\n½' } },
  ...changes,
})
const pictures = [pngOf(2, 2), pngOf(3, 1)]
const photos = pictures.map(
  (bytes): HandoverPhoto => ({ sha256: sha256(bytes), type: 'image/png', bytes: bytes.length }),
)
const input: HandoverInput = {
  ...{ device: 'phone', writtenAt: at, runs: [{ id: run, name: 'Alder Creek' }] },
  ...{ entries: [entry(1), entry(2)], photos, elsewhere: ['e'.repeat(64)] },
}
const content = async ({ sha256: hash }: HandoverPhoto): Promise<Uint8Array> =>
  pictures[photos.findIndex((one) => one.sha256 === hash)]!

async function written(of: HandoverInput = input): Promise<Uint8Array> {
  const pieces: Uint8Array[] = []
  for await (const piece of writeHandover(of, content, sha256)) pieces.push(piece)
  return Buffer.concat(pieces)
}
const sourceOf = (bytes: Uint8Array): BytesSource => ({
  size: bytes.length,
  read: async (from, to) => bytes.subarray(from, to),
})
const read = (bytes: Uint8Array) => readHandover('h.zip', sourceOf(bytes), sha256)
async function carried(bytes: Uint8Array) {
  const answer = await read(bytes)
  if (!answer.ok) throw new Error('refused', { cause: answer.error })
  if (answer.value.kind !== 'handover') throw new Error('newer')
  return answer.value.carried
}

interface Made {
  readonly manifest?: object
  readonly lines?: string
  readonly more?: Readonly<Record<string, Uint8Array>>
  readonly level?: 0 | 6
}
/** Such a file made by another ZIP writer, changed where a case needs it. */
function made({ manifest = {}, lines = `${JSON.stringify(entry(1))}\n`, more = {}, level = 6 }: Made = {}): Uint8Array {
  const sound: HandoverManifest = {
    ...{ format: 'lapwise-handover/1', device: 'phone', writtenAt: at, runs: [{ id: run, name: 'Alder Creek' }] },
    ...{ entriesSha256: sha256(lines), photos: [], elsewhere: [] },
  }
  const parts = {
    'manifest.json': strToU8(JSON.stringify({ ...sound, ...manifest })),
    'entries.jsonl': strToU8(lines),
    ...more,
  }
  return zipSync(parts, { level })
}
const problemsOf = async (bytes: Uint8Array): Promise<readonly string[]> => {
  const answer = await read(bytes)
  return answer.ok
    ? ['none']
    : answer.error.map(({ place, expected }) => `${place}: ${(expected as { kind: string }).kind}`)
}

describe('a handover', () => {
  test('reads back as it was written, photos as they are', async () => {
    const { entries, photos: brought, left, device, writtenAt } = await carried(await written())
    expect([device, writtenAt, left]).toEqual(['phone', at, []])
    expect(entries.map((one) => one.entry)).toEqual(input.entries)
    expect(entries[1]!.at('body.of')).toBe('line 2, body.of')
    expect(brought.map(({ sha256, type }) => [sha256, type])).toEqual(photos.map(({ sha256, type }) => [sha256, type]))
    for (const [i, photo] of brought.entries()) {
      const read = await photo.content()
      expect(read.ok && sha256(read.value)).toBe(photos[i]!.sha256)
    }
  })

  test('is the same bytes for the same input, and a ZIP file to a program of others', async () => {
    const bytes = await written()
    expect(Buffer.compare(bytes, await written())).toBe(0)
    const folder = mkdtempSync(join(tmpdir(), 'handover-'))
    writeFileSync(join(folder, 'h.zip'), bytes)
    const names = execFileSync('python3', [
      '-c',
      "import sys,zipfile,hashlib; z=zipfile.ZipFile(sys.argv[1]); assert z.testzip() is None; print([(n, hashlib.sha256(z.read(n)).hexdigest()) for n in z.namelist() if n.startswith('photos/')])",
      join(folder, 'h.zip'),
    ]).toString()
    rmSync(folder, { recursive: true })
    for (const { sha256 } of photos) expect(names).toContain(`('photos/${sha256}.png', '${sha256}')`)
  })

  test('asks for a photo only once the one before was handed on', async () => {
    let handedOn = 0
    const before: number[] = []
    const asking = (photo: HandoverPhoto) => {
      before.push(handedOn)
      return content(photo)
    }
    for await (const piece of writeHandover(input, asking, sha256)) handedOn += piece.length
    expect(before).toHaveLength(2)
    expect(before[1]! - before[0]!).toBeGreaterThan(photos[0]!.bytes)
  })

  test('of a later version says which', async () => {
    const later = made({ manifest: { format: 'lapwise-handover/12', wholly: 'other' }, more: { 'x/y': strToU8('z') } })
    expect(await read(later)).toEqual({ ok: true, value: { kind: 'newer', version: 12 } })
    expect(await problemsOf(made({ manifest: { format: 'lapwise-handover/0' } }))).toEqual(['format: one of values'])
  })

  test('has what is not sound beside what is: lines, other runs, photos that lack', async () => {
    const other = entry(4, { run: '0190a1b2-ffff-7000-8000-000000000000' })
    const lines = [entry(1), '{"id": ', { ...entry(3), kind: 'hologram' }, other, entry(2)]
    const text = lines.map((line) => (typeof line === 'string' ? line : JSON.stringify(line))).join('\n')
    const [lacking, shortened] = photos as [HandoverPhoto, HandoverPhoto]
    const brought = await carried(
      made({
        lines: text,
        manifest: { photos: [lacking, { ...shortened, bytes: 10 }] },
        more: { [`photos/${shortened.sha256}.png`]: pictures[1]! },
      }),
    )
    expect(brought.entries.map(({ entry: { id } }) => id)).toEqual([entry(1).id, entry(2).id])
    expect(brought.left.map(({ raw, problems: [one] }) => [raw, one!.file, one!.place])).toEqual([
      ['{"id": ', 'h.zip/entries.jsonl', 'line 2'],
      [{ ...entry(3), kind: 'hologram' }, 'h.zip/entries.jsonl', 'line 3, kind'],
      [other, 'h.zip/entries.jsonl', 'line 4, run'],
      [{ sha256: lacking.sha256, type: 'image/png' }, 'h.zip', `photos/${lacking.sha256}.png`],
    ])
    expect(await brought.photos[0]!.content()).toMatchObject({
      ok: false,
      error: [{ place: `photos/${shortened.sha256}.png`, expected: { kind: 'zip part at most', bytes: 10 } }],
    })
  })

  test.each<[string, () => Uint8Array | Promise<Uint8Array>, readonly string[]]>([
    ['nothing', () => new Uint8Array(0), [': whole zip']],
    ['text', () => strToU8('{"format":"lapwise-run/1"}'.padEnd(100)), [': whole zip']],
    ['a file cut short', async () => (await written()).subarray(0, -30), [': whole zip']],
    ['a beginning that is cut off', async () => (await written()).subarray(40), [': whole zip']],
    ['no manifest', () => zipSync({ 'entries.jsonl': strToU8('') }), ['manifest.json: part of handover']],
    [
      'other entries than were written',
      () => made({ manifest: { entriesSha256: 'a'.repeat(64) } }),
      ['entries.jsonl: bytes with hash'],
    ],
    [
      'names that lead elsewhere',
      () => made({ more: { '../../etc/passwd': strToU8('x'), 'photos/../a.png': strToU8('x') } }),
      ['../../etc/passwd: part that the manifest names', 'photos/../a.png: part that the manifest names'],
    ],
    [
      'a photo that the manifest does not name',
      () => made({ more: { [`photos/${photos[0]!.sha256}.png`]: pictures[0]! } }),
      [`photos/${photos[0]!.sha256}.png: part that the manifest names`],
    ],
    [
      'a manifest without end',
      () => made({ manifest: { device: 'x'.repeat(5_000_000) } }),
      ['manifest.json: zip part at most'],
    ],
    ['a field that is not known', () => made({ manifest: { trust: 'me' } }), ['trust: no field named']],
  ])('is refused as a whole with %s', async (_, bytes, problems) => {
    expect(await problemsOf(await bytes())).toEqual(problems)
  })

  test('is refused where a part is damaged, encrypted, twice there, or over another one', async () => {
    const sound = made()
    const list = Buffer.from(sound).indexOf('PK\x01\x02', 'latin1')
    const second = Buffer.from(sound).indexOf('PK\x01\x02', list + 4, 'latin1')
    const data = Buffer.from(sound).indexOf('manifest.json') + 13
    expect(await problemsOf(sound)).toEqual(['none'])
    expect(await problemsOf(sound.with(data + 5, sound[data + 5]! ^ 0xff))).toEqual([
      'manifest.json: undamaged zip part',
    ])
    // One letter of a name, where nothing is packed: still a manifest, and another.
    const plain = made({ level: 0 })
    const letter = Buffer.from(plain).indexOf('Alder Creek')
    expect(await problemsOf(plain)).toEqual(['none'])
    expect(await problemsOf(plain.with(letter, 0x45))).toEqual(['manifest.json: undamaged zip part'])
    expect(await problemsOf(sound.with(list + 8, 1))).toEqual(['manifest.json: readable zip part'])
    expect(await problemsOf(sound.with(list + 10, 14))).toEqual(['manifest.json: readable zip part'])
    // The second part said to begin where the first one does.
    expect(await problemsOf(new Uint8Array(sound).fill(0, second + 42, second + 46))).toContain(
      'manifest.json: zip part apart',
    )
    const twice = Buffer.from(sound)
    twice.write('manifest.json', second + 46, 'latin1')
    expect(await problemsOf(new Uint8Array(twice))).toContain('manifest.json: zip part once')
  })

  test('is refused where little unpacks to more than it says, and no more of that is unpacked', async () => {
    const bomb = zipSync({ 'manifest.json': new Uint8Array(40_000_000) }, { level: 9 })
    const list = Buffer.from(bomb).indexOf('PK\x01\x02', 'latin1')
    expect(await problemsOf(bomb)).toEqual(['manifest.json: zip part at most'])
    // It says that it is small.
    const lying = Buffer.from(bomb)
    lying.writeUInt32LE(1000, list + 24)
    const before = process.memoryUsage().arrayBuffers
    expect(await problemsOf(new Uint8Array(lying))).toEqual(['manifest.json: undamaged zip part'])
    expect(process.memoryUsage().arrayBuffers - before).toBeLessThan(20_000_000)
  })

  test('is not begun where its photos are more than one ZIP file holds', async () => {
    const many = Array.from({ length: 200 }, () => ({ ...photos[0]!, bytes: 25 * 1024 * 1024 }))
    await expect(written({ ...input, photos: many })).rejects.toThrow(RangeError)
  })

  test.each(brokenManifests.map((file) => [file.title, file] as const))(
    'is refused with a manifest that has %s',
    (_, { raw, problems }) => {
      const read = checkShape('m', raw, manifestShape)
      const said = read.ok ? [] : read.error.map((one) => printProblem(one, english(null)).replace('m: ', ''))
      expect(said).toEqual(problems)
    },
  )
})
