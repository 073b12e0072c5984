import { err, ok, type Result } from '../../core/result.ts'
import { dayLogOf, locateTicketOf } from '../../formats/entry/day-entries.ts'
import { freeFindingKinds } from '../../formats/entry/free-findings.ts'
import { bareRuns } from '../../formats/entry/run-versions.ts'
import { schemaVersions, signOffOf } from '../../formats/entry/sign-off.ts'
import type { SummarisedRun } from '../../operations/summarise-run.ts'
import { summaryRule } from '../../operations/summary-rule.ts'
import { hasServer } from '../has-server.ts'
import { newId, nextId, now, randomBytes } from './device.ts'
import type { DeviceStore, FreshEntry, PhotoFile, StoreTrouble } from './device-store.ts'
import type { HeldRow, SummaryRow } from './device-tables.ts'
import { freeablePhotos, freePhotos, sumOf } from './free-photos.ts'
import { heldSummaries } from './held-summaries.ts'
import { later } from './later.ts'
import { clearLoosePieces } from './loose-pieces.ts'
import type { DeviceEntry } from './merge-entries.ts'
import { rivalsAmong } from './merge-entries.ts'
import { d } from './messages.ts'
import { ownProject } from './own-project.ts'
import { hasRoomFor, roomHere } from './room.ts'
import type {
  Answer,
  Change,
  DeviceStatus,
  Imported,
  KeptEntry,
  KeptRun,
  NewSideBodies,
  RunSource,
  SideKind,
  Trouble,
} from './run-source.ts'
import { fetchPacket, fetchPhoto, fetchRecord, fetchSheetList, hasPhoto } from './server-peer.ts'
import { sha256Of } from './sha256.ts'
import { shownList } from './shown-list.ts'
import { fromStore } from './store-trouble.ts'
import { noSync, startSyncLoop } from './sync-loop.ts'

const keptRuns = () => later(() => import('./kept-run.ts'))
const drawnRuns = () => later(() => import('./drawn-run.ts'))

/** What is asked of the page, which alone can tell all that show something and ask the browser for a promise. */
export interface PageEnd {
  changed(change: Change): void
  /** Asks the browser to keep what is here, and says whether it promised. */
  keepStorage(): Promise<boolean>
}

export interface LocalSource extends Omit<RunSource, 'onChange' | 'speak'> {
  /** The page is in front again: a good time to send and fetch. */
  cameToFront(): void
}

/** Runs and all that is recorded at them, as this device keeps them; it syncs with the server by itself. */
export function localSource(store: DeviceStore, page: PageEnd): LocalSource {
  // Whatever is shown first needs it; should it fail, what needs it asks again and says so.
  void keptRuns()
  const loop = hasServer ? startSyncLoop(store, (runs) => page.changed({ runs, isOwn: false })) : noSync

  /** Once for each opening of the page: an answer may change, as when the page is installed. */
  let isAsked = false
  async function askToKeep(): Promise<void> {
    if (isAsked) return
    isAsked = true
    await store.set('persisted', await page.keepStorage())
  }

  /** Once for each opening of the page. */
  let isCleared = false
  function clearOnce(): void {
    if (isCleared) return
    isCleared = true
    void clearLoosePieces(store)
  }

  /** What has to be on the disk before anything is answered, and who is told of it afterwards. */
  async function keep(
    fresh: Omit<FreshEntry, 'device' | 'schemaVersion' | 'project'>[],
    add: (entries: readonly FreshEntry[]) => ReturnType<DeviceStore['add']> = (entries) => store.add(entries),
  ) {
    const device = await store.device(newId())
    if (!device.ok) return fromStore(device.error)
    const entries = fresh.map((entry) => ({
      ...entry,
      ...{ device: device.value, schemaVersion: schemaVersions[entry.kind], project: ownProject },
    }))
    const added = await add(entries)
    if (!added.ok) return fromStore(added.error)
    page.changed({ runs: [...new Set(fresh.map(({ run }) => run))], isOwn: true })
    void askToKeep().then(loop.soon)
    return ok({ outcomes: added.value, entries })
  }

  /**
   * A device that never fetched anything does not know what there is; it asks before it says that there is nothing.
   * Whether it asked just now.
   */
  async function fetchFirst(): Answer<boolean> {
    if (!hasServer) return ok(false)
    const last = await store.get('lastSync')
    if (!last.ok) return fromStore(last.error)
    if (last.value !== undefined) return ok(false)
    await loop.once()
    const trouble = loop.trouble()
    if (trouble === null) return ok(true)
    return err(trouble.kind === 'unreachable' ? { ...trouble, message: d.trouble.neverSynced } : trouble)
  }

  /** The versions of a run; one that was recorded without a layout is pinned before anything is judged. */
  async function versionsOf(run: string): Answer<readonly DeviceEntry[]> {
    const kept = await store.entries('run', run)
    if (!kept.ok) return fromStore(kept.error)
    if (bareRuns(kept.value).length === 0) return kept
    const [model, means] = await Promise.all([keptRuns(), later(() => import('../../operations/means-of-today.ts'))])
    if (!model.ok) return model
    if (!means.ok) return means
    model.value.layOutBy(means.value.meansOfToday)
    // A page that came unencrypted can neither hash nor keep: it waits for the version that the server made.
    if (!isSecureContext) return kept
    const pinning = await later(() => import('./pinned-versions.ts'))
    if (!pinning.ok) return pinning
    const pinned = await pinning.value.pinnedVersions(store, run, kept.value)
    void loop.soon()
    return pinned
  }

  /** Runs as they were read last: from the list a run is opened at once. */
  const read = new Map<string, { readonly count: number; readonly kept: KeptRun }>()

  async function readRun(id: string): Answer<KeptRun | null> {
    const counting = ['run', 'reading', ...freeFindingKinds] as const
    const [model, ...counts] = await Promise.all([keptRuns(), ...counting.map((kind) => store.count(kind, id))])
    if (!model.ok) return model
    let counted = 0
    for (const count of counts) {
      if (!count.ok) return fromStore(count.error)
      counted += count.value
    }
    const known = read.get(id)
    if (known?.count === counted) return ok(known.kept)
    const runs = await versionsOf(id)
    if (!runs.ok) return runs
    const [readings, ...findings] = await Promise.all([
      store.entries('reading', id),
      ...freeFindingKinds.map((kind) => store.entries(kind, id)),
    ])
    if (!readings.ok) return fromStore(readings.error)
    const seen: DeviceEntry[] = []
    for (const found of findings) {
      if (!found.ok) return fromStore(found.error)
      seen.push(...found.value)
    }
    const kept = model.value.readKeptRun(id, runs.value, readings.value, seen)
    if (kept === null) return ok(null)
    const count = runs.value.length + readings.value.length + seen.length
    if (kept.ok) read.set(id, { count, kept: kept.value })
    return kept
  }

  /** Makes what the list shows of a run anew, and keeps it; null while its first version is not here. */
  async function summarise({ run, upTo }: SummaryRow): Answer<SummarisedRun | null> {
    const [model, kept] = await Promise.all([keptRuns(), readRun(run)])
    if (!model.ok) return model
    // What is wrong with one run is said of that run; what is wrong with the store or the line, of the list.
    if (!kept.ok && kept.error.kind !== 'fault') return kept
    const [versions, archive] = await Promise.all([store.entries('run', run), store.entries('archive', run)])
    if (!versions.ok) return fromStore(versions.error)
    if (!archive.ok) return fromStore(archive.error)
    const first = versions.value.find(({ id }) => id === run)
    const summary =
      first === undefined || (kept.ok && kept.value === null)
        ? null
        : model.value.summaryOf(first, archive.value, kept.ok ? ok(kept.value!) : kept)
    const keeping = await store.keepSummary({ run, upTo, made: { rule: summaryRule, summary } })
    return keeping.ok ? ok(summary) : fromStore(keeping.error)
  }

  /** Of a copy without a server nobody else has it. */
  const photoElsewhere = hasServer ? fetchPhoto : async () => ok(null)

  const list = heldSummaries(store, summarise)
  const shown = shownList(store)

  /** What the server makes of a run, once it has all that is recorded here. */
  async function fromServer(run: string, fetchMade: () => Answer<Blob>): Answer<Blob> {
    await loop.soon()
    const all = await store.everything()
    if (!all.ok) return fromStore(all.error)
    const trouble = loop.trouble()
    if (trouble?.kind === 'unreachable') return err({ ...trouble, message: d.trouble.madeByServer })
    // An entry that the server refused is named in the status line; a reading among them would change the verdict.
    const lacks = ({ kind, state }: DeviceEntry): boolean =>
      state === 'here' || (kind === 'reading' && state !== 'sent')
    if (all.value.some((entry) => entry.run === run && lacks(entry)))
      return err({ kind: 'refused', message: d.trouble.needsSending, problems: trouble?.problems ?? [] })
    const answer = await fetchMade()
    if (answer.ok || answer.error.kind !== 'unreachable') return answer
    return err({ ...answer.error, message: d.trouble.madeByServer })
  }

  const source: LocalSource = {
    async runs(wish, most) {
      const before = list.isHeld() ? null : await shown.before(wish, most)
      if (before !== null) {
        list.readAhead()
        return ok(before)
      }
      let held = await list.summaries()
      if (held.ok && held.value.runs.length === 0) {
        const fetched = await fetchFirst()
        if (!fetched.ok) return fetched
        held = await list.summaries()
      }
      return held.ok ? ok(shown.of(held.value, wish, most)) : held
    },

    async run(id) {
      const [drawing, kept] = await Promise.all([drawnRuns(), readRun(id)])
      if (!drawing.ok) return drawing
      if (!kept.ok) return kept
      if (kept.value !== null) return ok(drawing.value.openedRun(kept.value))
      const fetched = await fetchFirst()
      if (!fetched.ok) return fetched
      // Somebody may have added it elsewhere just now.
      if (!fetched.value) await loop.soon()
      const again = await readRun(id)
      if (!again.ok) return again
      return again.value === null ? err(noRun(id)) : ok(drawing.value.openedRun(again.value))
    },

    async addRun(id, file, run, author) {
      const model = await later(() => import('./new-run.ts'))
      if (!model.ok) return model
      const own = await source.ownSheets()
      if (!own.ok) return own
      const body = model.value.newRunBody(id, file, run, own.value)
      if (!body.ok) return body
      const entry = { id, run: id, kind: 'run', author, capturedAt: now(), supersedes: null, body: body.value } as const
      const kept = await keep([entry])
      return kept.ok ? ok(kept.value.outcomes[0]!) : kept
    },

    async addDemo() {
      const model = await later(() => import('../../operations/demo-entries.ts'))
      if (!model.ok) return model
      const entries = model.value.demoEntries(new Date(), randomBytes)
      const kept = await keep([...entries])
      return kept.ok ? ok(entries[0]!.run) : kept
    },

    async copyRun(from, id, name, author) {
      const [model, kept] = await Promise.all([keptRuns(), readRun(from)])
      if (!model.ok) return model
      if (!kept.ok) return kept
      if (kept.value === null) return err(noRun(from))
      const body = model.value.copiedRunBody(kept.value, id, name)
      const copied = await keep([{ id, run: id, kind: 'run', author, capturedAt: now(), supersedes: null, body }])
      return copied.ok ? ok(copied.value.outcomes[0]!) : copied
    },

    async layOut(draft) {
      const model = await later(() => import('./written-run.ts'))
      return model.ok ? ok(model.value.layOutWritten(draft)) : model
    },

    async saveVersion(run, from, id, body, author) {
      const [model, kept] = await Promise.all([later(() => import('./written-run.ts')), readRun(run)])
      if (!model.ok) return model
      if (!kept.ok) return kept
      if (kept.value === null) return err(noRun(run))
      if (kept.value.version === id) return ok('already')
      const sound = model.value.versionBody(kept.value, from, id, body)
      if (!sound.ok) return sound
      const entry = { id, run, kind: 'run', author, capturedAt: now(), supersedes: from, body: sound.value } as const
      const saved = await keep([entry])
      return saved.ok ? ok(saved.value.outcomes[0]!) : saved
    },

    async append(run, readings) {
      const [model, versions] = await Promise.all([keptRuns(), versionsOf(run)])
      if (!model.ok) return model
      if (!versions.ok) return versions
      const alone = model.value.readKeptRun(run, versions.value, [])
      if (alone === null) return err(noRun(run))
      if (!alone.ok) return alone
      const kept = alone.value
      const before = readings.some(({ corrects }) => corrects !== null) ? await store.entries('reading', run) : ok([])
      if (!before.ok) return fromStore(before.error)
      const faults = model.value.problemsOfReadings(run, versions.value, before.value, readings)
      const sound = readings.filter((_, i) => faults[i]!.length === 0)
      const added = await keep(
        sound.map((reading) => ({
          ...({ id: reading.id, run: kept.id, kind: 'reading', author: reading.by, capturedAt: reading.at } as const),
          supersedes: reading.corrects,
          body: model.value.readingToValue(reading),
        })),
        (entries) => store.addReadings(entries, sound),
      )
      if (!added.ok) return added
      const outcomes = added.value.outcomes[Symbol.iterator]()
      return ok(
        readings.map(({ id }, i) => {
          const problems = faults[i]!
          if (problems.length === 0) return { id, outcome: outcomes.next().value! }
          return { id, outcome: 'rejected', reason: { kind: 'no reading of run' }, problems }
        }),
      )
    },

    begun: async (run) => orTrouble(await store.begun(run)),
    keepBegun: async (begun) => orTrouble(await store.keepBegun(begun)),
    dropBegun: async (run, of) => orTrouble(await store.dropBegun(run, of)),

    record: (id, page, author) => fromServer(id, () => fetchRecord(id, page, author)),
    packet: (id, wish, making) => fromServer(id, () => fetchPacket(id, wish, making)),

    async entries(run, kind) {
      const [entries, photos] = await Promise.all([
        store.entries(kind, run),
        kind === 'photo' ? store.unsentPhotos() : ok([]),
      ])
      if (!entries.ok) return fromStore(entries.error)
      if (!photos.ok) return fromStore(photos.error)
      return ok(asKept(entries.value, kind, new Set(photos.value.map(({ sha256 }) => sha256))))
    },

    async appendEntry(run, kind, body, author, supersedes) {
      const kinds = await later(() => import('../../formats/entry/entry-kinds.ts'))
      if (!kinds.ok) return kinds
      kinds.value.entryBodies[kind].parse(body)
      return keepOne(run, kind, body, author, supersedes)
    },

    async savePhoto(run, bytes, body, author) {
      const kinds = await later(() => import('../../formats/entry/entry-kinds.ts'))
      if (!kinds.ok) return kinds
      kinds.value.entryBodies.photo.parse(body)
      if (body.bytes !== bytes.byteLength)
        throw new RangeError(`a photo of ${bytes.byteLength} bytes, said ${body.bytes}`)
      const sha256 = await sha256Of(bytes)
      if (body.sha256 !== sha256) throw new RangeError(`a photo with the sha256 ${sha256}, said ${body.sha256}`)
      const noRoom: Trouble = { kind: 'no room', message: d.trouble.noRoomForPhoto, problems: [] }
      if (!(await hasRoomFor(bytes.byteLength))) return err(noRoom)
      const kept = await keepOne(run, 'photo', body, author, null, { sha256, type: body.type, content: bytes })
      return !kept.ok && kept.error.kind === 'no room' ? err(noRoom) : kept
    },

    async photo(sha256) {
      const here = await store.photo(sha256)
      if (!here.ok) return fromStore(here.error)
      if (here.value !== undefined) return ok(new Blob([here.value.content], { type: here.value.type }))
      return photoElsewhere(sha256)
    },

    async freePhotos() {
      const photos = await freeablePhotos(store, new Date())
      if (!photos.ok) return photos
      const freed = await freePhotos(store, photos.value, hasPhoto)
      page.changed({ runs: [], isOwn: true })
      return freed
    },

    async status() {
      const now = await status()
      // It is asked for once the page shows what it was opened for.
      list.readAhead()
      clearOnce()
      return now
    },
    cameToFront: () => void loop.soon(),

    async syncNow() {
      const again = await store.retryRefused()
      if (!again.ok) return fromStore(again.error)
      await loop.soon()
      return status()
    },

    async handOver(run) {
      const [transfer, device] = await Promise.all([later(() => import('./device-transfer.ts')), store.device(newId())])
      if (!transfer.ok) return transfer
      return device.ok ? transfer.value.handOver(store, device.value, run, photoElsewhere) : fromStore(device.error)
    },

    async weighFile(file) {
      const transfer = await later(() => import('./take-in-file.ts'))
      return transfer.ok ? transfer.value.weighFile(store, file) : transfer
    },

    takeInFile: takeIn,

    async heldFile(id) {
      const [transfer, row] = await Promise.all([later(() => import('./held-files.ts')), heldRow(id)])
      if (!transfer.ok) return transfer
      return row.ok ? transfer.value.heldFile(store, row.value) : row
    },

    async takeInHeld(id) {
      const [row, file] = [await heldRow(id), await source.heldFile(id)]
      if (!row.ok) return row
      if (!file.ok) return file
      const taken = await takeIn(file.value)
      // What still does not fit is held once, as it was.
      return taken.ok && taken.value.left.length === 0 ? dropped(row.value, taken.value) : taken
    },

    async dropHeld(id) {
      const row = await heldRow(id)
      return row.ok ? dropped(row.value, undefined) : row
    },

    async ownSheets() {
      const sheets = await later(() => import('./own-sheets.ts'))
      return sheets.ok ? sheets.value.ownSheets(store) : sheets
    },

    async addSheet(file, sheet) {
      const sheets = await later(() => import('./own-sheets.ts'))
      if (!sheets.ok) return sheets
      const added = await sheets.value.addSheet(store, file, sheet)
      if (added.ok) page.changed({ runs: [], isOwn: true, isOfShelf: true })
      if (added.ok) void askToKeep()
      return added
    },

    async runsBySheet(id) {
      const [model, entries, summaries] = await Promise.all([
        later(() => import('./runs-by-sheet.ts')),
        store.everything(),
        list.summaries(),
      ])
      if (!model.ok) return model
      if (!entries.ok) return fromStore(entries.error)
      return summaries.ok ? ok(model.value.runsBySheet(id, entries.value, summaries.value.runs)) : summaries
    },

    async sheetList(wish) {
      const made = await fetchSheetList(wish)
      if (made.ok || made.error.kind !== 'unreachable') return made
      return err({ ...made.error, message: d.trouble.madeByServer })
    },

    async dropSheet(id, version) {
      const done = orTrouble(await store.dropSheet(id, version))
      if (done.ok) page.changed({ runs: [], isOwn: true, isOfShelf: true })
      return done
    },
  }
  return source

  async function takeIn(file: File): Answer<Imported> {
    const transfer = await later(() => import('./take-in-file.ts'))
    if (!transfer.ok) return transfer
    const imported = await transfer.value.takeInFile(store, file)
    const runs = await store.entries('run')
    page.changed({ runs: runs.ok ? runs.value.map(({ run }) => run) : [], isOwn: false })
    void askToKeep().then(loop.soon)
    return imported
  }

  async function heldRow(id: string): Answer<HeldRow> {
    const held = await store.held()
    if (!held.ok) return fromStore(held.error)
    const row = held.value.find((one) => one.id === id)
    return row === undefined ? err({ kind: 'refused', message: d.trouble.notHeld, problems: [] }) : ok(row)
  }

  async function dropped<T>({ id, pieces }: HeldRow, then: T): Answer<T> {
    const done = await store.dropHeld(id, pieces)
    page.changed({ runs: [], isOwn: true })
    return done.ok ? ok(then) : fromStore(done.error)
  }

  async function keepOne<K extends SideKind>(
    run: string,
    kind: K,
    body: NewSideBodies[K],
    author: string,
    supersedes: string | null,
    photo?: PhotoFile,
  ): Answer<KeptEntry<K>> {
    const seen = await store.entries(kind, run)
    if (!seen.ok) return fromStore(seen.error)
    const ids = seen.value.map(({ id }) => id)
    const fresh = { id: nextId(run, ids), run, kind, author, capturedAt: now(), supersedes, body }
    const kept = await keep([fresh], (entries) => store.add(entries, photo))
    if (!kept.ok) return kept
    const all = await source.entries(run, kind)
    return all.ok ? ok(all.value.find(({ id }) => id === fresh.id)!) : all
  }

  async function status(): Answer<DeviceStatus> {
    const [counts, lastSync, persisted, room, freeable, held] = await Promise.all([
      store.counts(),
      store.get('lastSync'),
      store.get('persisted'),
      roomHere(),
      freeablePhotos(store, new Date()),
      store.held(),
    ])
    if (!held.ok) return fromStore(held.error)
    if (!freeable.ok) return freeable
    if (!counts.ok) return fromStore(counts.error)
    if (!lastSync.ok) return fromStore(lastSync.error)
    if (!persisted.ok) return fromStore(persisted.error)
    const { unsent, unsentPhotos, unsentSince, refused } = counts.value
    return ok({
      ...room,
      ...{ unsent, unsentPhotos, unsentSince, freeable: sumOf(freeable.value), held: held.value },
      refused: refused.map(({ id, kind, reason }) => ({ id, kind, reason: reason ?? '' })),
      persisted: persisted.value ?? null,
      lastSync: lastSync.value ?? null,
      isSyncing: loop.isUnderWay(),
      trouble: loop.trouble(),
    })
  }
}

const orTrouble = <T>(answer: Result<T, StoreTrouble>): Result<T, Trouble> =>
  answer.ok ? answer : fromStore(answer.error)

const noRun = (id: string): Trouble => ({ kind: 'refused', message: d.trouble.noSuchRun(id), problems: [] })

/** The body of an entry of each kind, whichever version it was written in. */
const bodiesNow: { readonly [K in SideKind]: (schemaVersion: number, body: unknown) => unknown } = {
  photo: (_, body) => body,
  'photo-strokes': (_, body) => body,
  'sign-off': signOffOf,
  'day-log': dayLogOf,
  'locate-ticket': locateTicketOf,
  archive: (_, body) => body,
  'free-finding': (_, body) => body,
  'free-finding-end': (_, body) => body,
  assignment: (_, body) => body,
}

/**
 * Entries of one kind as the page shows them: which are superseded, and which were superseded twice.
 * @param unsent  hashes of photos whose bytes are here only: that one is described on the server is not to have it there
 */
function asKept<K extends SideKind>(
  entries: readonly DeviceEntry[],
  kind: K,
  unsent: ReadonlySet<string>,
): readonly KeptEntry<K>[] {
  const rivals = rivalsAmong(entries)
  const superseded = new Set(entries.map(({ supersedes }) => supersedes))
  return entries.map(({ id, run, author, device, capturedAt, supersedes, state, schemaVersion, body }) => ({
    ...{ id, run, kind, author, device, capturedAt, supersedes },
    rivals: (supersedes === null ? [] : (rivals.get(supersedes) ?? [])).filter((other) => other !== id),
    isSuperseded: superseded.has(id),
    state: state === 'sent' && !unsent.has((body as { readonly sha256?: string }).sha256 ?? '') ? 'sent' : 'here',
    body: bodiesNow[kind](schemaVersion, body) as KeptEntry<K>['body'],
  }))
}
