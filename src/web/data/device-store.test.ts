import 'fake-indexeddb/auto'
import { afterEach, describe, expect, test, vi } from 'vitest'
import type { Reading } from '../../core/measurement/reading.ts'
import { emptyDraft } from '../entry/draft.ts'
import type { Begun } from './begun.ts'
import { type DeviceStore, type FreshEntry, openDeviceStore } from './device-store.ts'
import { type DeviceTables, openTables } from './device-tables.ts'
import { start } from './merge-entries.ts'

const reading: Reading = {
  ...{ id: 'a', of: 'post-3/rail-height', answer: { kind: 'cannot see' }, instrument: null, uncertainty: null },
  ...{ by: 'R. Quist', at: '', where: null, photos: [], corrects: null, rechecks: null, together: null },
}

let made = 0
const freshName = (): string => `device-${++made}`

const entry = (id: string, changes: Partial<FreshEntry> = {}): FreshEntry => ({
  ...{ id, run: 'run-1', project: 'own', kind: 'reading', schemaVersion: 1, author: 'R. Quist', device: 'phone' },
  ...{ capturedAt: '2026-05-04T13:20:00.000Z', supersedes: null, body: { of: 'post-3/rail-height' } },
  ...changes,
})

async function must<T>(answer: Promise<{ ok: true; value: T } | { ok: false; error: unknown }>): Promise<T> {
  const answered = await answer
  if (!answered.ok) throw new Error('the store did not answer', { cause: answered.error })
  return answered.value
}

const ids = async (store: DeviceStore): Promise<readonly string[]> =>
  (await must(store.entries('reading', 'run-1'))).map(({ id }) => id)

/** Tables whose next `failures` uses end with an error of this name, as a browser that lost its connection. */
function failing(name: string, errorName: string, failures: number): () => DeviceTables {
  let left = failures
  const use =
    (really: DeviceTables['read']): DeviceTables['read'] =>
    async (names, step) => {
      if (left === 0) return really(names, step)
      left -= 1
      throw new DOMException('the connection is closing', errorName)
    }
  return () => {
    const { read, write, close } = openTables(name)
    return { read: use(read), write: use(write), close }
  }
}

afterEach(() => vi.restoreAllMocks())

describe('the store of a device', () => {
  test('says since when there is something that only it has, and nothing once the server has it', async () => {
    const store = openDeviceStore(() => openTables(freshName()))
    expect(await must(store.counts())).toMatchObject({ unsent: 0, unsentSince: null })
    await must(store.add([entry('a'), entry('b', { capturedAt: '2026-05-04T06:00:00.000-06:00' })]))
    expect(await must(store.counts())).toMatchObject({ unsent: 2, unsentSince: '2026-05-04T12:00:00.000Z' })
    await must(store.takeAnswers(['a', 'b'].map((id, i) => ({ id, outcome: 'stored', seq: i + 1 }))))
    expect(await must(store.counts())).toMatchObject({ unsent: 0, unsentSince: null })
  })

  test('has what it resolved with when it is opened again', async () => {
    const name = freshName()
    const before = openDeviceStore(() => openTables(name))
    expect(await must(before.add([entry('a')]))).toEqual(['stored'])
    expect(await must(before.add([entry('a'), entry('b')]))).toEqual(['already', 'stored'])
    before.close()
    expect(await ids(openDeviceStore(() => openTables(name)))).toEqual(['a', 'b'])
  })

  test('keeps what lies on a device since the first version of its tables, and what is begun from now on', async () => {
    const name = freshName()
    const opening = indexedDB.open(name, 10)
    opening.onupgradeneeded = () => {
      const entries = opening.result.createObjectStore('entries', { keyPath: 'local', autoIncrement: true })
      entries.createIndex('id', 'id', { unique: true })
      entries.createIndex('[run+kind]', ['run', 'kind'])
      for (const index of ['kind', 'state']) entries.createIndex(index, index)
      opening.result.createObjectStore('photos', { keyPath: 'sha256' }).createIndex('state', 'state')
      opening.result.createObjectStore('photoBytes', { keyPath: 'sha256' })
      opening.result.createObjectStore('kept', { keyPath: 'name' })
      entries.put({ ...entry('a'), seq: null, state: 'here', reason: null })
    }
    await new Promise((resolve) => opening.addEventListener('success', resolve))
    opening.result.close()
    const store = openDeviceStore(() => openTables(name))
    const begun = { run: 'run-1', of: 'post-3', requirement: 'post-3', version: 'version-1', at: '', draft: emptyDraft }
    await must(store.keepBegun(begun))
    expect(await must(store.begun('run-1'))).toEqual([begun])
    expect(await must(store.add([entry('b')]))).toEqual(['stored'])
    expect((await must(store.unsent(10))).map(({ id, local }) => [id, local])).toEqual([
      ['a', 1],
      ['b', 2],
    ])
  })

  test('keeps what was held before sheets could be put on the shelf, and takes sheets', async () => {
    const name = freshName()
    const opening = indexedDB.open(name, 40)
    opening.onupgradeneeded = () => {
      for (const [table, keyPath] of [
        ['kept', 'name'],
        ['held', 'id'],
        ['heldBytes', ['held', 'piece']],
      ] as const)
        opening.result.createObjectStore(table, { keyPath: keyPath as string })
      opening.transaction!.objectStore('held').put({ id: 'held-1' })
    }
    await new Promise((resolve) => opening.addEventListener('success', resolve))
    opening.result.close()
    const store = openDeviceStore(() => openTables(name))
    const row = { id: 'terminal', version: '1.0.0', addedAt: '', body: {} }
    expect(await must(store.addSheet(row))).toBe(row)
    expect(await must(store.sheets())).toEqual([row])
    expect(await must(store.held())).toEqual([{ id: 'held-1' }])
  })

  test('uses tables that a newer page made, and lets go of them for a newer page', async () => {
    const name = freshName()
    const store = openDeviceStore(() => openTables(name))
    await must(store.add([entry('a')]))
    const newer = indexedDB.open(name, 1000)
    await new Promise((resolve) => newer.addEventListener('success', resolve))
    newer.result.close()
    expect(await must(store.add([entry('b')]))).toEqual(['stored'])
    expect(await ids(store)).toEqual(['a', 'b'])
  })

  test('keeps all of what is added at once or nothing', async () => {
    const store = openDeviceStore(() => openTables(freshName()))
    const unstorable = { ...entry('b'), body: { of: () => {} } } as unknown as FreshEntry
    expect(await store.add([entry('a'), unstorable])).toMatchObject({ ok: false, error: { kind: 'cannot use' } })
    expect(await ids(store)).toEqual([])
  })

  test('keeps a summary until an entry of its run is kept, and none that was begun before that', async () => {
    const name = freshName()
    const store = openDeviceStore(() => openTables(name))
    const rows = async () => (await must(store.summaries())).rows!
    expect(await rows()).toEqual([])
    await must(store.add([entry('a'), entry('b', { run: 'run-2' })]))
    const [one, two] = await rows()
    expect([one, two].map((row) => [row?.run, row?.made])).toEqual([
      ['run-1', null],
      ['run-2', null],
    ])
    const made = { rule: 1, summary: null }
    await must(store.keepSummary({ ...one!, made }))
    expect((await rows()).map((row) => row.made)).toEqual([made, null])
    // As a page of an earlier version keeps entries: it knows of no summary.
    await must(store.add([entry('c')]))
    expect((await rows())[0]!.made).toBeNull()
    await must(store.keepSummary({ ...one!, made }))
    expect((await rows())[0]!.made).toBeNull()
    const arrived = { ...entry('d', { run: 'run-2' }), seq: 4 }
    await must(store.takePage({ after: 0, cursor: { seq: 4, id: 'd' }, entries: [arrived] }))
    await must(store.keepSummary({ ...two!, made }))
    expect((await rows())[1]!.made).toBeNull()
    // What is only confirmed makes nothing old.
    const [now] = await rows()
    await must(store.keepSummary({ ...now!, made }))
    await must(store.takeAnswers([{ id: 'c', outcome: 'stored', seq: 5 }]))
    expect((await rows())[0]!.made).toEqual(made)
    store.close()
    expect((await must(openDeviceStore(() => openTables(name)).summaries())).rows![0]!.made).toEqual(made)
  })

  test('keeps what was begun until it is saved or dropped, and what was typed while it was saved', async () => {
    const store = openDeviceStore(() => openTables(freshName()))
    const draft = { ...emptyDraft, text: '31 in' }
    const begun = (of: string, at: string, corrects: string | null = null): Begun => ({
      ...{ run: 'run-1', of, requirement: of, version: 'version-1', at },
      draft: { ...draft, corrects },
    })
    const keys: readonly Begun[] = [
      begun('post-3/rail-height', '2026-05-04T13:20:00.000Z'),
      begun('post-4/rail-height', '2026-05-04T13:20:00.001Z'),
      begun('post-5/rail-height', '2026-05-04T13:19:00.000Z', 'a'),
      begun('post-6/rail-height', '2026-05-04T13:19:00.000Z'),
    ]
    for (const one of keys) await must(store.keepBegun(one))
    const saved = keys.slice(0, 3).map(({ of }) => ({ ...reading, of, at: '2026-05-04T13:20:00.000Z' }))
    await must(store.addReadings([entry('a'), entry('b'), entry('c')], saved))
    expect(await ids(store)).toEqual(['a', 'b', 'c'])
    // One was typed on after Save was pressed, one corrects what the saved one does not, one was not saved at all.
    expect(await must(store.begun('run-1'))).toEqual(keys.slice(1))
    expect(await must(store.begun('run-2'))).toEqual([])
    await must(store.dropBegun('run-1', 'post-6/rail-height'))
    expect(await must(store.begun('run-1'))).toEqual(keys.slice(1, 3))
  })

  test('asks that a transaction is on the disk before it counts as complete', async () => {
    const asking = vi.spyOn(IDBDatabase.prototype, 'transaction')
    await must(openDeviceStore(() => openTables(freshName())).add([entry('a')]))
    const asked = asking.mock.calls
      .filter(([, mode]) => mode === 'readwrite')
      .map(([, , options]) => options?.durability)
    expect(asked).toEqual(['strict'])
  })

  test.each(['InvalidStateError', 'UnknownError'])('opens again and repeats once after %s', async (errorName) => {
    const name = freshName()
    await must(openDeviceStore(() => openTables(name)).add([entry('a')]))
    const store = openDeviceStore(failing(name, errorName, 1))
    expect(await ids(store)).toEqual(['a'])
    expect(await must(store.add([entry('b')]))).toEqual(['stored'])
  })

  test('says that it cannot be read when it fails twice: never that it is empty', async () => {
    const name = freshName()
    await must(openDeviceStore(() => openTables(name)).add([entry('a')]))
    const answer = await openDeviceStore(failing(name, 'UnknownError', 2)).entries('reading', 'run-1')
    expect(answer).toMatchObject({ ok: false, error: { kind: 'cannot use' } })
  })

  test('says that what it kept is gone, and saves into no other tables, once they were deleted under the page', async () => {
    const name = freshName()
    const store = openDeviceStore((known) => openTables(name, known))
    await must(store.add([entry('a')]))
    const deleted = indexedDB.deleteDatabase(name)
    await new Promise((resolve) => deleted.addEventListener('success', resolve))
    // Another part of the page may make new ones first.
    await must(openDeviceStore(() => openTables(name)).add([entry('of another')]))
    for (const id of ['b', 'c'])
      expect(await store.add([entry(id)])).toEqual({ ok: false, error: { kind: 'gone', reason: '' } })
    expect(await store.entries('reading', 'run-1')).toMatchObject({ ok: false, error: { kind: 'gone' } })
    // A page that is loaded afterwards begins with what is there.
    expect(await ids(openDeviceStore((known) => openTables(name, known)))).toEqual(['of another'])
  })

  test('refuses a photo for which there is no room, whole, and keeps every reading', async () => {
    const store = openDeviceStore(() => openTables(freshName()))
    const put = IDBObjectStore.prototype.put
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore, row) {
      if (this.name === 'photoBytes') throw new DOMException('the quota is used up', 'QuotaExceededError')
      return put.call(this, row)
    })
    await must(store.add([entry('a')]))
    const photo = { sha256: 'f'.repeat(64), type: 'image/jpeg', content: new ArrayBuffer(8) }
    const refused = await store.add([entry('p', { kind: 'photo' })], photo)
    expect(refused).toMatchObject({ ok: false, error: { kind: 'no room' } })
    expect(await must(store.entries('photo'))).toEqual([])
    expect(await must(store.photos())).toEqual([])
    expect(await ids(store)).toEqual(['a'])
  })

  test('gives photos back as they were', async () => {
    const store = openDeviceStore(() => openTables(freshName()))
    const photo = { sha256: 'e'.repeat(64), type: 'image/png', content: Uint8Array.of(1, 2, 3).buffer }
    await must(store.add([entry('p', { kind: 'photo' })], photo))
    const kept = await must(store.photo(photo.sha256))
    expect([...new Uint8Array(kept!.content)]).toEqual([1, 2, 3])
    expect(await must(store.photo('0'.repeat(64)))).toBeUndefined()
  })

  test('starts over with another server: all is unsent again, and nothing is gone', async () => {
    const store = openDeviceStore(() => openTables(freshName()))
    await must(store.add([entry('a'), entry('b')]))
    await must(
      store.takeAnswers([
        { id: 'a', outcome: 'stored', seq: 4 },
        { id: 'b', outcome: 'rejected', reason: 'no such run' },
      ]),
    )
    expect(await must(store.counts())).toMatchObject({ unsent: 1, refused: [{ id: 'b', reason: 'no such run' }] })
    await must(store.startOver())
    expect((await must(store.unsent(10))).map(({ id }) => id)).toEqual(['a', 'b'])
    expect(await must(store.get('cursor'))).toEqual(start)
  })

  test('lets go of the bytes of a photo only once it was sent, keeps its entry, and takes it in again', async () => {
    const store = openDeviceStore(() => openTables(freshName()))
    const photo = { sha256: 'd'.repeat(64), type: 'image/png', content: Uint8Array.of(1, 2, 3).buffer }
    await must(store.add([entry('p', { kind: 'photo' })], photo))
    expect(await must(store.freePhoto(photo.sha256))).toBe(false)
    expect(await must(store.photo(photo.sha256))).toBeDefined()
    await must(store.notePhoto(photo.sha256, { state: 'sent' }))
    expect(await must(store.freePhoto(photo.sha256))).toBe(true)
    expect(await must(store.photo(photo.sha256))).toBeUndefined()
    expect((await must(store.entries('photo'))).map(({ id }) => id)).toEqual(['p'])
    // Another server cannot be sent what is not here.
    await must(store.startOver())
    expect(await must(store.unsentPhotos())).toEqual([])
    await must(store.add([], photo))
    expect(await must(store.unsentPhotos())).toHaveLength(1)
    expect(await must(store.photo(photo.sha256))).toBeDefined()
  })
})

test('lets go of everything at once, and another store of the device keeps all of its own', async () => {
  const [practice, real] = [freshName(), freshName()].map((name) => openDeviceStore(() => openTables(name)))
  for (const store of [practice!, real!]) {
    await must(store.add([entry('run-1-a'), entry('run-1-b')]))
    await must(store.set('drills', []))
  }
  await must(practice!.empty())
  expect([await ids(practice!), await must(practice!.get('drills'))]).toEqual([[], undefined])
  expect([await ids(real!), await must(real!.get('drills'))]).toEqual([['run-1-a', 'run-1-b'], []])
})
