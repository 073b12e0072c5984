import type { Reading } from '../../core/measurement/reading.ts'
import { err, ok, type Result } from '../../core/result.ts'
import type { Entry } from '../../formats/entry/entry-kinds.ts'
import { inLogOrder } from '../../formats/entry/log-order.ts'
import { type Begun, type BegunSeen, isSavedBy } from './begun.ts'
import {
  type DeviceTables,
  type HeldRow,
  type Kept,
  type KnownTables,
  openTables,
  type PhotoRow,
  type SheetRow,
  type SummaryRow,
  type Tables,
  TablesGone,
} from './device-tables.ts'
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
  /** `gone`: what was kept was deleted while the page was open. */
  readonly kind: 'no room' | 'cannot use' | 'gone'
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
  /** ISO 8601: the first moment of which something is only here, by the clock of the device that made it. */
  readonly unsentSince: string | null
  readonly refused: readonly DeviceEntry[]
}

/** Everything that this device keeps. A promise that resolves with a value means: it is on the disk. */
export interface DeviceStore {
  /** Keeps the entries, with a photo's bytes: all of it or nothing. What is here already stays as it is. */
  add(entries: readonly FreshEntry[], photo?: PhotoFile): Answered<readonly ('stored' | 'already')[]>
  /** The same of readings; what was begun of them and is saved by them is then no longer kept as begun. */
  addReadings(entries: readonly FreshEntry[], readings: readonly Reading[]): Answered<readonly ('stored' | 'already')[]>
  /** What was begun at a run and not saved. */
  begun(run: string): Answered<readonly (Begun | BegunSeen)[]>
  keepBegun(begun: Begun | BegunSeen): Answered<void>
  dropBegun(run: string, of: string): Answered<void>
  /** All of one kind, of one run or of every run, in the order that counts: the same wherever they are kept. */
  entries(kind: string, run?: string): Answered<readonly DeviceEntry[]>
  /**
   * What is kept of each run for the list, in the order in which the runs were made. What an entry makes old is found
   * here and not where entries are kept: a page of an earlier version, which knows of no list, keeps some too.
   * @param seen  `upTo` of an earlier answer; while nothing was kept since, the rows are the same and are not read
   */
  summaries(seen?: number): Answered<{ readonly upTo: number; readonly rows: readonly SummaryRow[] | null }>
  /** The list as it was shown last, where nothing was kept since. */
  listShown(): Answered<Kept['listShown'] | undefined>
  /** Keeps what was made, unless it became old since it was begun to be made. */
  keepSummary(row: SummaryRow): Answered<void>
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
  /** What this device keeps under the ids of `wanted`, by id. */
  known(wanted: readonly { readonly id: string }[]): Answered<ReadonlyMap<string, DeviceEntry>>
  /** Files that were not taken in, or not whole. */
  held(): Answered<readonly HeldRow[]>
  /** A piece of one; it counts once its row is kept. */
  keepHeldPiece(held: string, piece: number, content: ArrayBuffer): Answered<void>
  keepHeld(row: HeldRow): Answered<void>
  heldPiece(held: string, piece: number): Answered<ArrayBuffer | undefined>
  dropHeld(held: string, pieces: number): Answered<void>
  /** Drops the pieces of files whose row was never kept. */
  dropLoosePieces(): Answered<void>
  /** Hardware sheets that were put on the shelf here, in the order of their ids and editions. */
  sheets(): Answered<readonly SheetRow[]>
  /** Keeps an edition, unless one of that id and version is here: then that one, which stays as it is. */
  addSheet(row: SheetRow): Answered<SheetRow>
  dropSheet(id: string, version: string): Answered<void>
  counts(): Answered<DeviceCounts>
  get<N extends keyof Kept>(name: N): Answered<Kept[N] | undefined>
  set<N extends keyof Kept>(name: N, value: Kept[N]): Answered<void>
  /** Lets go of everything that is kept here, all of it or nothing. */
  empty(): Answered<void>
  /** The name of this device among those that write entries: `fresh` on first use, and that one ever after. */
  device(fresh: string): Answered<string>
  close(): void
}

export function openDeviceStore(
  open: (known: KnownTables) => DeviceTables = (known) => openTables('lapwise', known),
): DeviceStore {
  const known: KnownTables = {}
  let tables = open(known)

  /** Does `step`; once more on a fresh connection when the browser had dropped the one in use. */
  async function using<T>(step: (db: DeviceTables) => Promise<T>): Answered<T> {
    try {
      return ok(await step(tables))
    } catch (first) {
      if (!isDeadHandle(first)) return err(troubleOf(first))
      tables.close()
      tables = open(known)
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
        db.write(['entries', 'photos', 'photoBytes'], async (tables) => {
          const outcomes = await addEntries(tables, entries)
          if (photo !== undefined) await addPhoto(tables, photo)
          return outcomes
        }),
      ),
    addReadings: (entries, readings) =>
      using((db) =>
        db.write(['entries', 'begun'], async (tables) => {
          const outcomes = await addEntries(tables, entries)
          const kept = await Promise.all(readings.map(({ of }, i) => tables.begun.get([entries[i]!.run, of])))
          const saved = kept.flatMap((one, i) =>
            one !== undefined && 'draft' in one && isSavedBy(one, readings[i]!) ? [one] : [],
          )
          for (const { run, of } of saved) tables.begun.delete([run, of])
          return outcomes
        }),
      ),
    begun: (run) => using((db) => db.read(['begun'], ({ begun }) => begun.having('run', run))),
    keepBegun: (one) => using((db) => db.write(['begun'], ({ begun }) => begun.put([one]))),
    dropBegun: (run, of) => using((db) => db.write(['begun'], ({ begun }) => begun.delete([run, of]))),
    entries: (kind, run) =>
      using(async (db) =>
        inLogOrder(
          await db.read(['entries'], ({ entries }) =>
            run === undefined ? entries.having('kind', kind) : entries.having('[run+kind]', [run, kind]),
          ),
        ),
      ),
    summaries: (seen) =>
      using(async (db) => {
        while (await outdateSome(db));
        return db.read(['summaries', 'kept'], async (tables) => {
          const upTo = (await keptValue(tables, 'summarisedUpTo')) ?? 0
          return { upTo, rows: upTo === seen ? null : await tables.summaries.all() }
        })
      }),
    listShown: () =>
      using(async (db) => {
        while (await outdateSome(db));
        return db.read(['kept'], async (tables) => {
          const shown = await keptValue(tables, 'listShown')
          return shown?.upTo === (await keptValue(tables, 'summarisedUpTo')) ? shown : undefined
        })
      }),
    keepSummary: (row) =>
      using((db) =>
        db.write(['summaries'], async ({ summaries }) => {
          if ((await summaries.get(row.run))?.upTo === row.upTo) summaries.put([row])
        }),
      ),
    count: (kind, run) =>
      using((db) => db.read(['entries'], ({ entries }) => entries.count('[run+kind]', [run, kind]))),
    everything: () => using((db) => db.read(['entries'], ({ entries }) => entries.all())),
    unsent: (limit) => using((db) => db.read(['entries'], ({ entries }) => entries.having('state', 'here', limit))),
    takeAnswers: (answers) =>
      using((db) =>
        db.write(['entries'], async (tables) => {
          const known = await knownUnder(tables, answers)
          const answered = answers.flatMap((answer) => {
            const entry = known.get(answer.id)
            return entry === undefined ? [] : [withAnswer(entry, answer)]
          })
          tables.entries.put(answered)
        }),
      ),
    takePage: (page) =>
      using((db) =>
        db.write(['entries', 'kept'], async (tables) => {
          const known = await knownUnder(tables, page.entries)
          tables.entries.put(page.entries.map((one) => withArrived(known.get(one.id), one)))
          const cursor = await keptValue(tables, 'cursor')
          tables.kept.put([{ name: 'cursor', value: cursorAfter(cursor ?? start, page) }])
          return [...new Set(page.entries.flatMap(({ id, run }) => (known.has(id) ? [] : [run])))]
        }),
      ),
    startOver: () =>
      using((db) =>
        db.write(['entries', 'photos', 'kept'], async ({ entries, photos, kept }) => {
          entries.put((await entries.all()).map((one) => ({ ...one, state: 'here', seq: null, reason: null })))
          // What was let go of cannot be sent again.
          const here = (await photos.all()).filter(({ state }) => state !== 'freed')
          photos.put(here.map((one) => ({ ...one, state: 'here', uploadUrl: null })))
          kept.put([{ name: 'cursor', value: start }])
        }),
      ),
    retryRefused: () =>
      using((db) =>
        db.write(['entries'], async ({ entries }) =>
          entries.put((await entries.having('state', 'refused')).map((one) => ({ ...one, state: 'here' }))),
        ),
      ),
    photo: (sha256) =>
      using((db) =>
        db.read(['photos', 'photoBytes'], async ({ photos, photoBytes }) => {
          const [row, bytes] = [await photos.get(sha256), await photoBytes.get(sha256)]
          return row && bytes && { sha256, type: row.type, content: bytes.content }
        }),
      ),
    unsentPhotos: () => using((db) => db.read(['photos'], ({ photos }) => photos.having('state', 'here'))),
    notePhoto: (sha256, changes) =>
      using((db) => db.write(['photos'], (tables) => changePhoto(tables, sha256, changes))),
    freePhoto: (sha256) =>
      using((db) =>
        db.write(['photos', 'photoBytes'], async (tables) => {
          if ((await tables.photos.get(sha256))?.state !== 'sent') return false
          tables.photoBytes.delete(sha256)
          await changePhoto(tables, sha256, { state: 'freed' })
          return true
        }),
      ),
    photos: () => using((db) => db.read(['photos'], ({ photos }) => photos.all())),
    known: (wanted) => using((db) => db.read(['entries'], (tables) => knownUnder(tables, wanted))),
    held: () => using((db) => db.read(['held'], ({ held }) => held.all())),
    keepHeldPiece: (held, piece, content) =>
      using((db) => db.write(['heldBytes'], ({ heldBytes }) => heldBytes.put([{ held, piece, content }]))),
    keepHeld: (row) => using((db) => db.write(['held'], ({ held }) => held.put([row]))),
    heldPiece: (held, piece) =>
      using((db) => db.read(['heldBytes'], async ({ heldBytes }) => (await heldBytes.get([held, piece]))?.content)),
    dropHeld: (id, pieces) =>
      using((db) =>
        db.write(['held', 'heldBytes'], ({ held, heldBytes }) => {
          held.delete(id)
          for (let piece = 0; piece < pieces; piece += 1) heldBytes.delete([id, piece])
        }),
      ),
    dropLoosePieces: () =>
      using((db) =>
        db.write(['held', 'heldBytes'], async ({ held, heldBytes }) => {
          const whole = new Set((await held.all()).map(({ id }) => id))
          for (const key of await heldBytes.keys()) {
            const [id] = key as [held: string, piece: number]
            if (!whole.has(id)) heldBytes.delete(key)
          }
        }),
      ),
    sheets: () => using((db) => db.read(['sheets'], ({ sheets }) => sheets.all())),
    addSheet: (row) =>
      using((db) =>
        db.write(['sheets'], async ({ sheets }) => {
          const known = await sheets.get([row.id, row.version])
          if (known === undefined) sheets.put([row])
          return known ?? row
        }),
      ),
    dropSheet: (id, version) => using((db) => db.write(['sheets'], ({ sheets }) => sheets.delete([id, version]))),
    counts: () =>
      using((db) =>
        db.read(['entries', 'photos'], async ({ entries, photos }) => {
          const refused = await entries.having('state', 'refused')
          // The first that were kept: what came in later is seldom older, and there may be thousands.
          const first = await entries.having('state', 'here', 100)
          const times = [...first, ...refused].map(({ capturedAt }) => new Date(capturedAt).getTime())
          return {
            unsent: (await entries.count('state', 'here')) + refused.length,
            unsentPhotos: await photos.count('state', 'here'),
            unsentSince: times.length === 0 ? null : new Date(Math.min(...times)).toISOString(),
            refused,
          }
        }),
      ),
    get: (name) => using((db) => db.read(['kept'], (tables) => keptValue(tables, name))),
    set: (name, value) => using((db) => db.write(['kept'], ({ kept }) => kept.put([{ name, value }]))),
    device: (fresh) =>
      using((db) =>
        db.write(['kept'], async (tables) => {
          const known = await keptValue(tables, 'device')
          if (known === undefined) tables.kept.put([{ name: 'device', value: fresh }])
          return known ?? fresh
        }),
      ),
    empty: () =>
      using((db) =>
        db.write(everyTable, async (tables) => {
          for (const name of everyTable) for (const key of await tables[name].keys()) tables[name].delete(key)
        }),
      ),
    close: () => tables.close(),
  }
}

const everyTable = [
  ...(['entries', 'photos', 'photoBytes', 'kept', 'begun', 'summaries', 'held', 'heldBytes', 'sheets'] as const),
] satisfies readonly (keyof Tables)[]

/** Entries looked at in one go. */
const entriesAtOnce = 1000

/** Says of the runs of the next entries that were kept since that their summaries are old; false when there are none. */
async function outdateSome(db: DeviceTables): Promise<boolean> {
  const isAny = await db.read(['entries', 'kept'], async (tables) => (await newEntries(tables, 1)).length > 0)
  if (!isAny) return false
  await db.write(['entries', 'kept', 'summaries'], async (tables) => {
    const entries = await newEntries(tables, entriesAtOnce)
    const upTo = new Map(entries.map(({ run, local }) => [run, local]))
    tables.summaries.put([...upTo].map(([run, local]) => ({ run, upTo: local, made: null })))
    const last = entries.at(-1)
    if (last !== undefined) tables.kept.put([{ name: 'summarisedUpTo', value: last.local }])
  })
  return true
}

const newEntries = async (tables: Pick<Tables, 'entries' | 'kept'>, limit: number): Promise<readonly DeviceEntry[]> =>
  tables.entries.after((await keptValue(tables, 'summarisedUpTo')) ?? 0, limit)

/** What is kept under the ids of `wanted`, by id. */
async function knownUnder(
  { entries }: Pick<Tables, 'entries'>,
  wanted: readonly { readonly id: string }[],
): Promise<ReadonlyMap<string, DeviceEntry>> {
  const rows = await Promise.all(wanted.map(({ id }) => entries.having('id', id)))
  return new Map(rows.flat().map((row) => [row.id, row]))
}

async function addEntries(
  tables: Pick<Tables, 'entries'>,
  entries: readonly FreshEntry[],
): Promise<readonly ('stored' | 'already')[]> {
  const known = await knownUnder(tables, entries)
  const fresh = [...new Map(entries.map((entry) => [entry.id, entry])).values()].filter(({ id }) => !known.has(id))
  tables.entries.put(fresh.map((entry) => ({ ...entry, seq: null, state: 'here', reason: null })))
  return entries.map(({ id }) => (known.has(id) ? 'already' : 'stored'))
}

async function addPhoto(
  { photos, photoBytes }: Pick<Tables, 'photos' | 'photoBytes'>,
  { sha256, type, content }: PhotoFile,
): Promise<void> {
  const known = await photos.get(sha256)
  if (known !== undefined && known.state !== 'freed') return
  photoBytes.put([{ sha256, content }])
  photos.put([{ sha256, type, bytes: content.byteLength, state: 'here', uploadUrl: null }])
}

async function changePhoto(
  { photos }: Pick<Tables, 'photos'>,
  sha256: string,
  changes: Partial<PhotoRow>,
): Promise<void> {
  const row = await photos.get(sha256)
  if (row !== undefined) photos.put([{ ...row, ...changes }])
}

async function keptValue<N extends keyof Kept>({ kept }: Pick<Tables, 'kept'>, name: N): Promise<Kept[N] | undefined> {
  return (await kept.get(name))?.value as Kept[N] | undefined
}

/**
 * Whether the connection to the disk was lost while the data is not. WebKit does so when the app comes back from the
 * background; every browser does when another tab brings the tables to a newer version.
 */
function isDeadHandle(error: unknown): boolean {
  return error instanceof DOMException && ['InvalidStateError', 'UnknownError'].includes(error.name)
}

/** What the browser refused; anything else is a mistake in the program. */
function troubleOf(error: unknown): StoreTrouble {
  if (error instanceof TablesGone) return { kind: 'gone', reason: '' }
  if (!(error instanceof DOMException)) throw error
  const reason = error.message.split('\n')[0]!
  return { kind: error.name === 'QuotaExceededError' ? 'no room' : 'cannot use', reason }
}
