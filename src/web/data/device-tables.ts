import type { SummarisedRun } from '../../operations/summarise-run.ts'
import type { Begun, BegunSeen } from './begun.ts'
import type { RunList } from './choose-runs.ts'
import type { DrillRow } from './drill-row.ts'
import type { Cursor, DeviceEntry } from './merge-entries.ts'

/** What is known of a photo's bytes, apart from them, so that a change of state does not write them anew. */
export interface PhotoRow {
  readonly sha256: string
  readonly type: string
  readonly bytes: number
  /** `here`: to be sent. `sent`: the server has it too. `freed`: only the server has it, and its bytes are let go. */
  readonly state: 'here' | 'sent' | 'freed'
  /** Where its upload goes on; null before it began. */
  readonly uploadUrl: string | null
}

/** Bytes as ArrayBuffer: some browsers fail to store a Blob. */
interface PhotoBytes {
  readonly sha256: string
  readonly content: ArrayBuffer
}

/** Single values of this device. */
export interface Kept {
  device: string
  cursor: Cursor
  lastSync: string
  persisted: boolean
  /** The last entry, in the order of keeping, whose run's summary is known to be old. */
  summarisedUpTo: number
  /** Drills that were begun in the store of practice, the first begun first. */
  drills: readonly DrillRow[]
  /** The list as it was shown last, of the summaries made by that rule of entries up to that one. */
  listShown: { readonly upTo: number; readonly rule: number; readonly most: number; readonly list: RunList }
}

/** What the list shows of a run, as it was made last. */
export interface SummaryRow {
  readonly run: string
  /** The last entry of the run that was seen when it became old; a summary that was begun before that is made of less. */
  readonly upTo: number
  /** Null since then, until it is made anew. */
  readonly made: { readonly rule: number; readonly summary: SummarisedRun | null } | null
}

/** A file, or what is left of one, that could not be taken in and is kept until it can be. */
export interface HeldRow {
  readonly id: string
  readonly name: string
  /** ISO 8601, by the device's clock. */
  readonly heldAt: string
  readonly why: HeldReason
  readonly pieces: number
  readonly bytes: number
  /** Tells the same content held once more. */
  readonly fingerprint: string
}

export type HeldReason =
  /** Made by a newer program: its format is of this version. */
  | { readonly kind: 'newer format'; readonly version: number }
  /** What was not taken in of a file, as a device's file of its own. */
  | { readonly kind: 'left out'; readonly count: number }

/** An edition of a hardware sheet that was put on this device's shelf. One that is here is never changed, only taken off. */
export interface SheetRow {
  readonly id: string
  readonly version: string
  /** ISO 8601, by the device's clock. */
  readonly addedAt: string
  /** The sheet as its file has it. */
  readonly body: unknown
}

/** As ArrayBuffer, like photos. */
interface HeldBytes {
  readonly held: string
  readonly piece: number
  readonly content: ArrayBuffer
}

/** One table within a transaction: what is put and deleted is done, all or nothing, when that resolves. */
interface Table<Row, New = Row> {
  get(key: IDBValidKey): Promise<Row | undefined>
  /** In the order of their keys. */
  all(): Promise<Row[]>
  /** Those that have `value` at an index, in the order of their keys. */
  having(index: string, value: IDBValidKey, limit?: number): Promise<Row[]>
  /** Those whose keys come after `key`, at most `limit`. */
  after(key: IDBValidKey, limit: number): Promise<Row[]>
  count(index: string, value: IDBValidKey): Promise<number>
  /** Of all its rows, which are not read for it. */
  keys(): Promise<IDBValidKey[]>
  put(rows: readonly (Row | New)[]): void
  delete(key: IDBValidKey): void
}

export interface Tables {
  /** `local` is given by the table, in the order of keeping. */
  readonly entries: Table<DeviceEntry, Omit<DeviceEntry, 'local'>>
  readonly photos: Table<PhotoRow>
  readonly photoBytes: Table<PhotoBytes>
  readonly kept: Table<{ readonly name: string; readonly value: unknown }>
  readonly begun: Table<Begun | BegunSeen>
  readonly summaries: Table<SummaryRow>
  readonly held: Table<HeldRow>
  readonly heldBytes: Table<HeldBytes>
  readonly sheets: Table<SheetRow>
}

type Name = keyof Tables

/** The tables of this device. What fails within a step undoes all of it. */
export interface DeviceTables {
  read<T, N extends Name>(names: readonly N[], step: (tables: Pick<Tables, N>) => T | Promise<T>): Promise<T>
  /** Resolves when all of it is on the disk. */
  write<T, N extends Name>(names: readonly N[], step: (tables: Pick<Tables, N>) => T | Promise<T>): Promise<T>
  close(): void
}

/** By which mark a page knows its tables again; nothing before it has opened any, null where they were made without one. */
export interface KnownTables {
  mark?: string | null
}

/** The tables that a page had opened are no longer there: others of their name are, with nothing of what was kept. */
export class TablesGone extends Error {
  override readonly name = 'TablesGone'
}

/**
 * The tables, opened with the first use. A connection that was lost says so with every use (`InvalidStateError`): then
 * they are to be opened anew.
 *
 * @param known  what one page knows of its tables, the same object with each opening
 */
export function openTables(name: string, known: KnownTables = {}): DeviceTables {
  let opening: Promise<IDBDatabase> | null = null
  const within = async <T, N extends Name>(
    mode: IDBTransactionMode,
    names: readonly N[],
    step: (tables: Pick<Tables, N>) => T | Promise<T>,
  ): Promise<T> => {
    opening ??= openKnown(name, known).catch((error) => {
      opening = null
      throw error
    })
    return transact(await opening, mode, names, step)
  }
  return {
    read: (names, step) => within('readonly', names, step),
    write: (names, step) => within('readwrite', names, step),
    close: () => void opening?.then((database) => database.close()).catch(() => {}),
  }
}

/** Not `randomUUID`, which a page that came unencrypted does not have. */
const freshMark = (): string => crypto.getRandomValues(new Uint32Array(4)).join('-')

/** Who deletes the tables under a page would else be given empty ones, and save into them without a word. */
async function openKnown(name: string, known: KnownTables): Promise<IDBDatabase> {
  const database = await openDatabase(name)
  const row = await done(database.transaction('kept').objectStore('kept').get('mark'))
  const mark = (row as { readonly value: string } | undefined)?.value ?? null
  known.mark ??= mark
  if (known.mark === mark) return database
  database.close()
  throw new TablesGone()
}

/**
 * The version is ten times what it counts, as the tables were numbered when they were first made.
 * A device that has a later one, by a page that is newer, is used as it is.
 */
async function openDatabase(name: string): Promise<IDBDatabase> {
  const opening = indexedDB.open(name, 50)
  opening.onupgradeneeded = ({ oldVersion }) => makeTables(opening.result, oldVersion)
  const database = await done(opening).catch((error: unknown) => {
    if (!(error instanceof DOMException) || error.name !== 'VersionError') throw error
    return done(indexedDB.open(name))
  })
  // A newer page in another tab waits for it.
  database.onversionchange = () => database.close()
  return database
}

function makeTables(database: IDBDatabase, version: number): void {
  if (version < 10) {
    const entries = database.createObjectStore('entries', { keyPath: 'local', autoIncrement: true })
    entries.createIndex('id', 'id', { unique: true })
    entries.createIndex('[run+kind]', ['run', 'kind'])
    entries.createIndex('kind', 'kind')
    entries.createIndex('state', 'state')
    database.createObjectStore('photos', { keyPath: 'sha256' }).createIndex('state', 'state')
    database.createObjectStore('photoBytes', { keyPath: 'sha256' })
    database.createObjectStore('kept', { keyPath: 'name' }).put({ name: 'mark', value: freshMark() })
  }
  if (version < 20) database.createObjectStore('begun', { keyPath: ['run', 'of'] }).createIndex('run', 'run')
  if (version < 30) database.createObjectStore('summaries', { keyPath: 'run' })
  if (version < 40) {
    database.createObjectStore('held', { keyPath: 'id' })
    database.createObjectStore('heldBytes', { keyPath: ['held', 'piece'] })
  }
  database.createObjectStore('sheets', { keyPath: ['id', 'version'] })
}

/**
 * A transaction is on the disk before it counts as complete: without `strict` the browsers built on Chromium report it
 * done as soon as the system has it, and a dead battery can take it back.
 */
async function transact<T, N extends Name>(
  database: IDBDatabase,
  mode: IDBTransactionMode,
  names: readonly N[],
  step: (tables: Pick<Tables, N>) => T | Promise<T>,
): Promise<T> {
  const transaction = database.transaction(names, mode, { durability: 'strict' })
  const ended = new Promise<void>((resolve, reject) => {
    transaction.oncomplete = () => resolve()
    transaction.onabort = () => reject(transaction.error)
  })
  // Awaited below, which can be after it failed.
  ended.catch(() => {})
  const tables = Object.fromEntries(names.map((name) => [name, tableOf(transaction.objectStore(name))]))
  try {
    const result = await step(tables as unknown as Pick<Tables, N>)
    await ended
    return result
  } catch (error) {
    abort(transaction)
    // Why the whole of it failed says more than what failed with it.
    await ended.catch((reason: unknown) => {
      if (reason !== null) throw reason
    })
    throw error
  }
}

/** Also one that has ended by itself. */
function abort(transaction: IDBTransaction): void {
  try {
    transaction.abort()
  } catch (error) {
    if (!(error instanceof DOMException) || error.name !== 'InvalidStateError') throw error
  }
}

const tableOf = <Row>(store: IDBObjectStore): Table<Row> => ({
  get: (key) => done(store.get(key)),
  all: () => done(store.getAll()),
  having: (index, value, limit) => done(store.index(index).getAll(value, limit)),
  after: (key, limit) => done(store.getAll(IDBKeyRange.lowerBound(key, true), limit)),
  count: (index, value) => done(store.index(index).count(value)),
  keys: () => done(store.getAllKeys()),
  put: (rows) => {
    for (const row of rows) store.put(row)
  },
  delete: (key) => {
    store.delete(key)
  },
})

const done = <T>(request: IDBRequest<T>): Promise<T> =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result)
    request.onerror = () => reject(request.error)
  })
