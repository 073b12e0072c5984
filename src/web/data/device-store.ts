import type { Reading } from '../../core/measurement/reading.ts'
import { err, ok, type Result } from '../../core/result.ts'
import type { Entry } from '../../formats/entry/entry-kinds.ts'
import { inLogOrder } from '../../formats/entry/log-order.ts'
import { type Begun, isSavedBy } from './begun.ts'
import { type DeviceTables, type EntryRow, type Kept, openTables, type PhotoRow } from './device-tables.ts'
import {
  cursorAfter,
  type DeviceEntry,
  type HeardAnswer,
  type Page,
  start,
  withAnswer,
  withArrived,
} from './merge-entries.ts'

/** Why the store of this device did not do what it was asked. Nothing of what was asked is then kept. */
export interface StoreTrouble {
  readonly kind: 'no room' | 'cannot use'
  readonly reason: string
}

type Answered<T> = Promise<Result<T, StoreTrouble>>

/** A new entry, and the project that this device thinks its run belongs to. */
export interface FreshEntry extends Entry {
  readonly project: string
}

export interface PhotoFile {
  readonly sha256: string
  readonly type: string
  readonly content: ArrayBuffer
}

export interface DeviceCounts {
  readonly unsent: number
  readonly unsentPhotos: number
  readonly refused: readonly DeviceEntry[]
}

/** Everything that this device keeps. A promise that resolves with a value means: it is on the disk. */
export interface DeviceStore {
  /** Keeps the entries, with a photo's bytes: all of it or nothing. What is here already stays as it is. */
  add(entries: readonly FreshEntry[], photo?: PhotoFile): Answered<readonly ('stored' | 'already')[]>
  /** The same of readings; what was begun of them and is saved by them is then no longer kept as begun. */
  addReadings(entries: readonly FreshEntry[], readings: readonly Reading[]): Answered<readonly ('stored' | 'already')[]>
  /** What was begun at a run and not saved. */
  begun(run: string): Answered<readonly Begun[]>
  keepBegun(begun: Begun): Answered<void>
  dropBegun(run: string, of: string): Answered<void>
  /** All of one kind, of one run or of every run, in the order that counts: the same wherever they are kept. */
  entries(kind: string, run?: string): Answered<readonly DeviceEntry[]>
  /** How many there are of one kind at a run. Entries are only ever added, so the same number means the same entries. */
  count(kind: string, run: string): Answered<number>
  /** Everything, in the order of keeping: nothing before what it needs. */
  everything(): Answered<readonly DeviceEntry[]>
  /** The first of what has to be sent, in the order of keeping. */
  unsent(limit: number): Answered<readonly DeviceEntry[]>
  takeAnswers(answers: readonly HeardAnswer[]): Answered<void>
  /** Takes in what the server stored, moves the cursor, and says which runs have something new. */
  takePage(page: Page): Answered<readonly string[]>
  /** Another server, or one put back to an earlier state, is there: all is to be fetched and sent anew. */
  startOver(): Answered<void>
  /** Lets the server look again at what it refused. */
  retryRefused(): Answered<void>
  photo(sha256: string): Answered<PhotoFile | undefined>
  unsentPhotos(): Answered<readonly PhotoRow[]>
  notePhoto(sha256: string, changes: Partial<Pick<PhotoRow, 'state' | 'uploadUrl'>>): Answered<void>
  /** Lets go of the bytes of a photo that was sent; false, and nothing done, when it was not. */
  freePhoto(sha256: string): Answered<boolean>
  photos(): Answered<readonly PhotoRow[]>
  counts(): Answered<DeviceCounts>
  get<N extends keyof Kept>(name: N): Answered<Kept[N] | undefined>
  set<N extends keyof Kept>(name: N, value: Kept[N]): Answered<void>
  /** The name of this device among those that write entries: `fresh` on first use, and that one ever after. */
  device(fresh: string): Answered<string>
  close(): void
}

export function openDeviceStore(open: () => DeviceTables = () => openTables('lapwise')): DeviceStore {
  let tables = open()

  /** Does `step`; once more on a fresh connection when the browser had dropped the one in use. */
  async function using<T>(step: (db: DeviceTables) => PromiseLike<T>): Answered<T> {
    try {
      return ok(await step(tables))
    } catch (first) {
      if (!isDeadHandle(first)) return err(troubleOf(first))
      tables.close()
      tables = open()
      try {
        return ok(await step(tables))
      } catch (second) {
        return err(troubleOf(second))
      }
    }
  }

  return {
    add: (entries, photo) =>
      using((db) =>
        db.transaction('rw', db.entries, db.photos, db.photoBytes, async () => {
          const outcomes = await addEntries(db, entries)
          if (photo !== undefined) await addPhoto(db, photo)
          return outcomes
        }),
      ),
    addReadings: (entries, readings) =>
      using((db) =>
        db.transaction('rw', db.entries, db.begun, async () => {
          const outcomes = await addEntries(db, entries)
          const kept = await db.begun.bulkGet(readings.map(({ of }, i) => [entries[i]!.run, of]))
          const saved = kept.filter((one, i) => one !== undefined && isSavedBy(one, readings[i]!))
          await db.begun.bulkDelete(saved.map((one) => [one!.run, one!.of]))
          return outcomes
        }),
      ),
    begun: (run) => using((db) => db.begun.where({ run }).toArray()),
    keepBegun: (begun) =>
      using(async (db) => {
        await db.begun.put(begun)
      }),
    dropBegun: (run, of) => using((db) => db.begun.delete([run, of])),
    entries: (kind, run) =>
      using(async (db) =>
        inLogOrder(
          run === undefined
            ? await db.entries.where({ kind }).toArray()
            : await db.entries.where('[run+kind]').equals([run, kind]).toArray(),
        ),
      ),
    count: (kind, run) => using((db) => db.entries.where('[run+kind]').equals([run, kind]).count()),
    everything: () => using((db) => db.entries.orderBy('local').toArray()),
    unsent: (limit) => using(async (db) => (await db.entries.where({ state: 'here' }).sortBy('local')).slice(0, limit)),
    takeAnswers: (answers) =>
      using((db) =>
        db.transaction('rw', db.entries, async () => {
          const known = await knownUnder(db, answers)
          const answered = answers.flatMap((answer) => {
            const entry = known.get(answer.id)
            return entry === undefined ? [] : [withAnswer(entry, answer)]
          })
          await db.entries.bulkPut(answered)
        }),
      ),
    takePage: (page) =>
      using((db) =>
        db.transaction('rw', db.entries, db.kept, async () => {
          const known = await knownUnder(db, page.entries)
          await db.entries.bulkPut(page.entries.map((one) => withArrived(known.get(one.id), one) as EntryRow))
          const cursor = await keptValue(db, 'cursor')
          await db.kept.put({ name: 'cursor', value: cursorAfter(cursor ?? start, page) })
          return [...new Set(page.entries.flatMap(({ id, run }) => (known.has(id) ? [] : [run])))]
        }),
      ),
    startOver: () =>
      using((db) =>
        db.transaction('rw', db.entries, db.photos, db.kept, async () => {
          await db.entries.toCollection().modify({ state: 'here', seq: null, reason: null })
          // What was let go of cannot be sent again.
          await db.photos.where('state').anyOf('here', 'sent').modify({ state: 'here', uploadUrl: null })
          await db.kept.put({ name: 'cursor', value: start })
        }),
      ),
    retryRefused: () =>
      using(async (db) => {
        await db.entries.where({ state: 'refused' }).modify({ state: 'here' })
      }),
    photo: (sha256) =>
      using((db) =>
        db.transaction('r', db.photos, db.photoBytes, async () => {
          const [row, bytes] = [await db.photos.get(sha256), await db.photoBytes.get(sha256)]
          return row && bytes && { sha256, type: row.type, content: bytes.content }
        }),
      ),
    unsentPhotos: () => using((db) => db.photos.where({ state: 'here' }).toArray()),
    notePhoto: (sha256, changes) =>
      using(async (db) => {
        await db.photos.update(sha256, changes)
      }),
    freePhoto: (sha256) =>
      using((db) =>
        db.transaction('rw', db.photos, db.photoBytes, async () => {
          if ((await db.photos.get(sha256))?.state !== 'sent') return false
          await db.photoBytes.delete(sha256)
          await db.photos.update(sha256, { state: 'freed' })
          return true
        }),
      ),
    photos: () => using((db) => db.photos.toArray()),
    counts: () =>
      using((db) =>
        db.transaction('r', db.entries, db.photos, async () => ({
          unsent: await db.entries.where('state').anyOf('here', 'refused').count(),
          unsentPhotos: await db.photos.where({ state: 'here' }).count(),
          refused: await db.entries.where({ state: 'refused' }).toArray(),
        })),
      ),
    get: (name) => using((db) => keptValue(db, name)),
    set: (name, value) =>
      using(async (db) => {
        await db.kept.put({ name, value })
      }),
    device: (fresh) =>
      using((db) =>
        db.transaction('rw', db.kept, async () => {
          const known = await keptValue(db, 'device')
          if (known === undefined) await db.kept.put({ name: 'device', value: fresh })
          return known ?? fresh
        }),
      ),
    close: () => tables.close(),
  }
}

/** What is kept under the ids of `wanted`, by id. */
async function knownUnder(
  db: DeviceTables,
  wanted: readonly { readonly id: string }[],
): Promise<ReadonlyMap<string, EntryRow>> {
  const rows = await db.entries
    .where('id')
    .anyOf(wanted.map(({ id }) => id))
    .toArray()
  return new Map(rows.map((row) => [row.id, row]))
}

async function addEntries(
  db: DeviceTables,
  entries: readonly FreshEntry[],
): Promise<readonly ('stored' | 'already')[]> {
  const known = await knownUnder(db, entries)
  const fresh = [...new Map(entries.map((entry) => [entry.id, entry])).values()].filter(({ id }) => !known.has(id))
  await db.entries.bulkAdd(fresh.map((entry) => ({ ...entry, seq: null, state: 'here', reason: null })))
  return entries.map(({ id }) => (known.has(id) ? 'already' : 'stored'))
}

async function addPhoto(db: DeviceTables, { sha256, type, content }: PhotoFile): Promise<void> {
  const known = await db.photos.get(sha256)
  if (known !== undefined && known.state !== 'freed') return
  await db.photoBytes.put({ sha256, content })
  await db.photos.put({ sha256, type, bytes: content.byteLength, state: 'here', uploadUrl: null })
}

async function keptValue<N extends keyof Kept>(db: DeviceTables, name: N): Promise<Kept[N] | undefined> {
  return (await db.kept.get(name))?.value as Kept[N] | undefined
}

/**
 * Whether the connection to the disk was lost while the data is not. WebKit does so when the app comes back from the
 * background; every browser does when another tab brings the tables to a newer version.
 */
function isDeadHandle(error: unknown): boolean {
  return namesOf(error).some((name) => ['InvalidStateError', 'UnknownError', 'DatabaseClosedError'].includes(name))
}

function troubleOf(error: unknown): StoreTrouble {
  const names = namesOf(error)
  if (names.length === 0 || error instanceof RangeError || names.includes('TypeError')) throw error
  const reason = error instanceof Error ? error.message.split('\n')[0]! : String(error)
  return { kind: names.includes('QuotaExceededError') ? 'no room' : 'cannot use', reason }
}

/** Name of an error and of those within it. */
function namesOf(error: unknown): readonly string[] {
  if (typeof error !== 'object' || error === null || !('name' in error)) return []
  const inner = 'inner' in error && error.inner !== error ? namesOf(error.inner) : []
  return [String(error.name), ...inner]
}
