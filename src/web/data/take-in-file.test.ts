import 'fake-indexeddb/auto'
import { strToU8, zipSync } from 'fflate'
import { beforeEach, describe, expect, test, vi } from 'vitest'
import { pngOf } from '../../../test/cases/documents/png-of.ts'
import { err, ok } from '../../core/result.ts'
import { demoProject } from '../../operations/demo-project.ts'
import { withoutPlace } from './device-entry.ts'
import { type DeviceStore, openDeviceStore } from './device-store.ts'
import { openTables } from './device-tables.ts'
import { handOver } from './device-transfer.ts'
import { heldFile } from './held-files.ts'
import { readKeptRun } from './kept-run.ts'
import { sha256Of } from './sha256.ts'
import { takeInFile, weighFile } from './take-in-file.ts'

const at = '2026-05-04T15:30:00.000Z'
const run = '0190a1b2-0000-7000-8000-000000000000'
const common = { run, schemaVersion: 1, author: 'R. Quist', device: 'phone', capturedAt: at }
const runEntry = { ...common, id: run, kind: 'run', supersedes: null, body: JSON.parse(demoProject().run) }

function reading(n: number, of: string, value: string, more: { corrects?: string; rechecks?: string } = {}) {
  const id = `0190a1b2-000${n}-7000-8000-000000000000`
  const body = { id, of, value, by: 'R. Quist', at, ...more }
  return { ...common, id, kind: 'reading', supersedes: more.corrects ?? null, body }
}

const file = (entries: readonly unknown[], photos: readonly unknown[] = []) =>
  new File([JSON.stringify({ format: 'lapwise-device/1', device: 'phone', writtenAt: at, entries, photos })], 'd.json')
const takeIn = (store: DeviceStore, ...entries: readonly unknown[]) => takeInFile(store, file(entries))

// A browser's own; one without locks.
beforeEach(() => void vi.stubGlobal('navigator', {}))

let made = 0
const freshStore = (): DeviceStore => openDeviceStore(() => openTables(`transfer-${++made}`))

async function idsIn(store: DeviceStore): Promise<readonly string[]> {
  const all = await store.everything()
  if (!all.ok) throw new Error(all.error.reason)
  return all.value.map(({ id }) => id)
}

const failed = reading(1, 'post-1/stub-height', '5 in')
const corrected = reading(2, 'post-1/stub-height', '4 3/4 in', { corrects: failed.id })
const rechecked = reading(3, 'post-1/stub-height', '3 in', { rechecks: 'post-1/stub-height' })
const wrongPlace = reading(4, 'post-2/stub-height', '3 in', { corrects: failed.id })
const wrongFinding = reading(5, 'post-1/stub-height', '3 in', { rechecks: 'splice-2/lap' })

const noServer = () => Promise.resolve(err({ kind: 'unreachable', message: 'no network', problems: [] } as const))

async function must<T>(answer: Promise<{ ok: true; value: T } | { ok: false; error: unknown }>): Promise<T> {
  const answered = await answer
  if (!answered.ok) throw new Error('not answered', { cause: answered.error })
  return answered.value
}

describe('a file from another device', () => {
  test('is taken in with its corrections and rechecks', async () => {
    const taken = await takeIn(freshStore(), runEntry, failed, corrected, rechecked)
    expect(taken).toMatchObject({ ok: true, value: { entries: 4, already: 0, left: [] } })
  })

  test('has its entries as they came, whatever they leave to a default', async () => {
    const store = freshStore()
    const { stock: _, obstructions: __, reduced: ___, ...body } = runEntry.body
    const sparse = { ...runEntry, body }
    const bare = { ...failed, body: { ...failed.body, value: 5 } }
    await must(takeIn(store, sparse, bare))
    expect((await must(store.everything())).map(({ body }) => body)).toEqual([sparse.body, bare.body])
    // So another who has them from where they came holds the same.
    expect(await takeIn(store, sparse, bare)).toMatchObject({ ok: true, value: { entries: 0, already: 2, left: [] } })
  })

  test('has its values without a unit read in those of its run, also where the run comes later', async () => {
    const metricRoad = { ...runEntry.body.road, datumStation: '1+208.400', speed: 90 }
    const metric = { ...runEntry, body: { ...runEntry.body, units: 'metric', road: metricRoad } }
    const bare = { ...failed, body: { ...failed.body, value: 100 } }
    const valueIn = async (...files: readonly (readonly object[])[]): Promise<unknown> => {
      const store = freshStore()
      // A run of its own each time: what was read of one is remembered.
      const run = `0190a1b2-0000-7000-8000-00000000000${++runs}`
      const ofRun = (entry: object) => JSON.parse(JSON.stringify({ ...entry, run }).replaceAll(runEntry.id, run))
      for (const entries of files) await must(takeIn(store, ...entries.map(ofRun)))
      const kept = readKeptRun(run, await must(store.entries('run', run)), await must(store.entries('reading', run)))
      if (!kept?.ok) throw new Error('the run cannot be read')
      const { answer } = kept.value.readings[0]!
      return 'value' in answer ? answer.value : answer.kind
    }
    let runs = 0
    const millimetres = 100 * 1_000_000
    const inches = 100 * 25_400_000
    expect(await valueIn([metric, bare])).toBe(millimetres)
    expect(await valueIn([bare], [metric])).toBe(millimetres)
    expect(await valueIn([runEntry, bare])).toBe(inches)
  })

  test('is taken in but for a reading that corrects or rechecks something else, and what follows from it', async () => {
    const store = freshStore()
    const onIt = reading(6, 'post-2/stub-height', '3 in', { corrects: wrongPlace.id })
    const taken = await must(takeIn(store, runEntry, failed, wrongPlace, wrongFinding, onIt))
    expect(taken.left).toMatchObject([
      { raw: wrongPlace, problems: [{ place: 'entries[2].body.corrects', expected: { kind: 'earlier reading' } }] },
      { raw: wrongFinding, problems: [{ place: 'entries[3].body.rechecks', found: { text: '"splice-2/lap"' } }] },
      { raw: onIt, problems: [{ place: 'entries[4].body.corrects' }] },
    ])
    expect(await idsIn(store)).toEqual([run, failed.id])
  })

  test('is taken in but for what is not whole, which is held beside and comes in once it is', async () => {
    const store = freshStore()
    const unknown = { ...failed, id: corrected.id, kind: 'hologram' }
    const torn = { ...rechecked, body: { ...rechecked.body, value: '3 furlongs' } }
    const noRun = { ...runEntry, id: wrongPlace.id, run: wrongPlace.id, body: { format: 'lapwise-run/1' } }
    const photo = { sha256: 'a'.repeat(64), type: 'image/png', base64: 'iVBORw0KGgo=' }
    const mixed = file([runEntry, unknown, failed, torn, noRun, 'nothing'], [photo, { ...photo, type: 'image/gif' }])
    const expected = [
      'entries[1].kind',
      'entries[5]',
      'photos[1].type',
      'entries[3].body.value',
      'entries[4].body.',
      'photos[0].base64',
    ]
    const weighed = await must(weighFile(store, mixed))
    expect(weighed).toMatchObject({ runs: [{ id: run, isNew: true }, { id: noRun.run }], photos: 1, already: 0 })
    expect(weighed.fresh).toEqual({ run: 1, reading: 1 })
    expect(await idsIn(store)).toEqual([])
    for (let time = 0; time < 2; time += 1) {
      const { left } = await must(takeInFile(store, mixed))
      expect(left).toHaveLength(expected.length)
      for (const [i, place] of expected.entries()) expect(left[i]!.problems[0]!.place).toContain(place)
    }
    expect(await idsIn(store)).toEqual([run, failed.id])
    const held = await must(store.held())
    expect(held).toMatchObject([{ name: 'rest-of-d.json', why: { kind: 'left out', count: 6 } }])
    const rest = await must(heldFile(store, held[0]!))
    expect(JSON.parse(await rest.text())).toMatchObject({
      format: 'lapwise-device/1',
      entries: [unknown, 'nothing', torn, noRun],
      photos: [{ type: 'image/gif' }, photo],
    })
  })

  test('leaves out what says something else under an id that is here', async () => {
    const store = freshStore()
    await must(takeIn(store, runEntry, failed))
    const other = { ...failed, body: { ...failed.body, value: '6 in' } }
    expect((await must(takeIn(store, other))).left).toMatchObject([
      { raw: other, problems: [{ place: 'entries[0].id', expected: { kind: 'same content under id' } }] },
    ])
    expect((await must(store.entries('reading')))[0]!.body).toEqual(failed.body)
  })

  test('is taken in but for a day log or a locate ticket that names a piece that its run never had', async () => {
    const log = { day: '2026-05-04', done: 'Posts', crew: ['R. Quist'], openEnds: 'none', openEndsNote: null }
    const day = (n: number, kind: string, body: object) =>
      ({
        ...common,
        id: `0190a1b2-001${n}-7000-8000-000000000000`,
        kind,
        schemaVersion: 2,
        supersedes: null,
        body,
      }) as const
    const dates = { calledOn: '2026-05-01', validFrom: '2026-05-04', validThrough: '2026-05-11' }
    const ticket = (from: string) => ({ number: 'A', ...dates, marks: [{ name: 'gas', from, alongInches: 3 }] })
    const sound = [
      day(1, 'day-log', { ...log, postsDriven: ['post-1'], panelsHung: ['panel-1'] }),
      day(2, 'locate-ticket', ticket('post-2')),
    ]
    const unfit = [
      day(3, 'day-log', { ...log, postsDriven: ['post-1', 'post-999'], panelsHung: [] }),
      day(4, 'locate-ticket', ticket('post-2~0a1b')),
      day(5, 'day-log', { ...log, version: 'v9', postsDriven: [], panelsHung: [] }),
    ]
    const store = freshStore()
    const { left } = await must(takeIn(store, runEntry, ...sound, ...unfit))
    expect(left.map(({ problems }) => problems[0])).toMatchObject([
      { file: 'd.json', place: 'entries[3].body.postsDriven[1]', expected: { kind: 'piece of run', piece: 'post' } },
      { place: 'entries[4].body.marks[0].from', found: { text: '"post-2~0a1b"' } },
      { place: 'entries[5].body.version', expected: { kind: 'version of run' } },
    ])
    expect(await idsIn(store)).toEqual([run, ...sound.map(({ id }) => id)])
    // Beside a run that is here, too; what came before its run is kept until that comes.
    expect((await must(takeIn(store, unfit[0]!))).left).toHaveLength(1)
    expect((await must(takeIn(freshStore(), unfit[0]!))).left).toEqual([])
  })

  test('is looked at with what is here already, and keeps what is here as it is', async () => {
    const store = freshStore()
    expect(await takeIn(store, runEntry, failed)).toMatchObject({ ok: true })
    expect(await takeIn(store, corrected)).toMatchObject({ ok: true, value: { entries: 1 } })
    expect((await must(takeIn(store, wrongPlace))).left).toHaveLength(1)
    // As a server that took it in earlier sends it, and as it then stands in a file of this device.
    const entry = { ...wrongPlace, seq: 9, project: 'own' } as never
    await store.takePage({ after: 0, cursor: { seq: 9, id: wrongPlace.id }, entries: [entry] })
    const written = new File([(await must(handOver(store, 'phone', null, noServer))).content], 'again.zip')
    expect(await must(takeInFile(store, written))).toMatchObject({ entries: 0, already: 4, left: [] })
    expect(await idsIn(store)).toHaveLength(4)
  })
})

describe('a handover', () => {
  // What the browser alone can do: draw a picture.
  const shown = () => Promise.resolve({ close: () => {} })
  beforeEach(() => void vi.stubGlobal('createImageBitmap', shown))

  const pictures = [pngOf(2, 2), pngOf(3, 2), pngOf(4, 2)].map((bytes) => new Uint8Array(bytes))
  const hash = (bytes: Uint8Array<ArrayBuffer>) => sha256Of(bytes.buffer)
  async function filled(): Promise<DeviceStore> {
    const store = freshStore()
    await must(takeIn(store, runEntry, failed, corrected))
    for (const [i, content] of pictures.entries()) {
      const sha256 = await hash(content)
      const body = {
        ...{ sha256, type: 'image/png', bytes: content.length, width: 2, height: 2, takenAt: null, position: null },
        ...{ of: null, drawnOn: null, note: null },
      }
      const id = `0190a1b2-002${i}-7000-8000-000000000000`
      const entry = { ...common, id, kind: 'photo', supersedes: null, body, project: 'own' } as never
      await must(store.add([entry], { sha256, type: 'image/png', content: content.buffer.slice(0) }))
    }
    return store
  }
  const handed = async (store: DeviceStore) => {
    const { content, lacks } = await must(handOver(store, 'phone', run, noServer))
    expect(lacks).toEqual([])
    return new File([content], 'h.zip')
  }
  const photosIn = async (store: DeviceStore) => (await must(store.photos())).map(({ sha256 }) => sha256).sort()

  test('brings a run with its photos from one device to another, once', async () => {
    const [store, other] = [await filled(), freshStore()]
    const file = await handed(store)
    expect(await must(weighFile(other, file))).toMatchObject({
      runs: [{ id: run, isNew: true }],
      fresh: { run: 1, reading: 2, photo: 3 },
      photos: 3,
      left: [],
    })
    expect(await must(takeInFile(other, file))).toEqual({ entries: 6, photos: 3, already: 0, left: [] })
    expect((await must(other.everything())).map(withoutPlace)).toEqual(
      (await must(store.everything())).map(withoutPlace),
    )
    for (const sha256 of await photosIn(store)) {
      const photo = await must(other.photo(sha256))
      expect(photo && (await sha256Of(photo.content))).toBe(sha256)
    }
    // To be sent on, by whichever of the two comes to a server first.
    expect(await must(other.unsentPhotos())).toHaveLength(3)
    expect(await must(takeInFile(other, file))).toEqual({ entries: 0, photos: 0, already: 9, left: [] })
  })

  test('has the photos that only the server has, and names those that it could not get', async () => {
    const store = await filled()
    const [kept, freed, lost, forged] = [...(await photosIn(store)), 'f'.repeat(64)] as [string, string, string, string]
    for (const sha256 of [freed, lost]) {
      await store.notePhoto(sha256, { state: 'sent' })
      await store.freePhoto(sha256)
    }
    // Described by the server, as of another device, and never here.
    const [told] = (await must(store.entries('photo'))) as [{ readonly body: object }]
    const entry = { ...common, id: '0190a1b2-0029-7000-8000-000000000000', kind: 'photo', supersedes: null }
    await must(store.add([{ ...entry, body: { ...told.body, sha256: forged }, project: 'own' } as never]))
    const byHash = new Map(await Promise.all(pictures.map(async (one) => [await hash(one), one] as const)))
    const asked: string[] = []
    const server = (sha256: string) => {
      asked.push(sha256)
      // Lost there, or others than they say.
      return Promise.resolve(ok(sha256 === lost ? null : new Blob([byHash.get(sha256) ?? 'another'])))
    }
    const { content, lacks } = await must(handOver(store, 'phone', run, server))
    const missing = [lost, forged].map((sha256) => ({ sha256, author: 'R. Quist', capturedAt: at }))
    expect(lacks).toEqual(missing)
    expect(asked.sort()).toEqual([freed, lost, forged].sort())
    const other = freshStore()
    const file = new File([content], 'h.zip')
    expect(await must(weighFile(other, file))).toMatchObject({ photos: 2, lacks: missing, left: [] })
    expect(await must(takeInFile(other, file))).toMatchObject({ photos: 2, left: [] })
    expect(await photosIn(other)).toEqual([kept, freed].sort())
    // One who has the picture lacks nothing; without a network only what is here goes, and it is asked for once.
    expect((await must(weighFile(await filled(), file))).lacks).toEqual(missing.slice(1))
    asked.length = 0
    const away = (sha256: string) => {
      asked.push(sha256)
      return noServer()
    }
    expect((await must(handOver(store, 'phone', run, away))).lacks.map(({ sha256 }) => sha256).sort()).toEqual(
      [freed, lost, forged].sort(),
    )
    expect(asked).toHaveLength(1)
  })

  test('that is broken off where there is no more room is completed by taking it in once more', async () => {
    const file = await handed(await filled())
    const other = freshStore()
    let photos = 0
    const full: DeviceStore = {
      ...other,
      add: (entries, photo) =>
        photo !== undefined && ++photos > 1
          ? Promise.resolve({ ok: false, error: { kind: 'no room', reason: 'full' } })
          : other.add(entries, photo),
    }
    expect(await takeInFile(full, file)).toMatchObject({ ok: false, error: { kind: 'no room' } })
    expect(await idsIn(other)).toHaveLength(6)
    expect(await photosIn(other)).toHaveLength(1)
    expect(await must(takeInFile(other, file))).toEqual({ entries: 0, photos: 2, already: 7, left: [] })
  })

  test('has a photo with other bytes left out, and says so by its name', async () => {
    const bytes = new Uint8Array(await (await handed(await filled())).arrayBuffer())
    const at = Buffer.from(bytes).indexOf(Buffer.from(pictures[1]!))
    const spoilt = new File([bytes.with(at + 40, bytes[at + 40]! ^ 1)], 'h.zip')
    const other = freshStore()
    const { left, entries, photos } = await must(takeInFile(other, spoilt))
    expect([entries, photos]).toEqual([6, 2])
    expect(left).toMatchObject([{ table: 'photos', raw: { sha256: await hash(pictures[1]!) } }])
    expect(await must(other.held())).toMatchObject([{ name: 'rest-of-h.zip' }])
  })

  test('of a newer program is held as it is, once, and comes in when it can be read', async () => {
    const store = freshStore()
    const later = zipSync({ 'manifest.json': strToU8('{"format":"lapwise-handover/2"}') })
    const file = new File([later as Uint8Array<ArrayBuffer>], 'later.zip')
    for (let time = 0; time < 2; time += 1)
      expect(await weighFile(store, file)).toMatchObject({ ok: false, error: { kind: 'refused' } })
    const held = await must(store.held())
    expect(held).toMatchObject([{ name: 'later.zip', why: { kind: 'newer format', version: 2 } }])
    const kept = await must(heldFile(store, held[0]!))
    expect(Buffer.from(await kept.arrayBuffer()).equals(Buffer.from(later))).toBe(true)
  })
})
