import { err, ok } from '../../core/result.ts'
import { freeFindingKinds } from '../../formats/entry/free-findings.ts'
import { bareRuns } from '../../formats/entry/run-versions.ts'
import { schemaVersions } from '../../formats/entry/sign-off.ts'
import type { SummarisedRun } from '../../operations/summarise-run.ts'
import { summaryRule } from '../../operations/summary-rule.ts'
import { hasServer } from '../has-server.ts'
import { newId, now, randomBytes } from './device.ts'
import type { DeviceStore, FreshEntry } from './device-store.ts'
import type { SummaryRow } from './device-tables.ts'
import { documentsPart } from './documents-part.ts'
import { drillsOfDevice } from './drills-of-device.ts'
import { filesOfDevice } from './files-of-device.ts'
import { freeablePhotos, sumOf } from './free-photos.ts'
import { heldSummaries } from './held-summaries.ts'
import { later } from './later.ts'
import { clearLoosePieces } from './loose-pieces.ts'
import type { DeviceEntry } from './merge-entries.ts'
import { d } from './messages.ts'
import { ownProject } from './own-project.ts'
import type { PageEnd, StorePlace } from './page-end.ts'
import { roomHere } from './room.ts'
import type { Answer, DeviceStatus, KeptRun, RunSource, Trouble } from './run-source.ts'
import { fetchPacket, fetchPhoto, fetchRecord } from './server-peer.ts'
import { sheetsOfDevice } from './sheets-of-device.ts'
import { shownList } from './shown-list.ts'
import { sideEntries } from './side-entries.ts'
import { fromStore, orTrouble } from './store-trouble.ts'
import { noSync, startSyncLoop } from './sync-loop.ts'

const keptRuns = () => later(() => import('./kept-run.ts'))
const drawnRuns = () => later(() => import('./drawn-run.ts'))

export interface LocalSource extends Omit<RunSource, 'onChange' | 'speak'> {
  /** The page is in front again: a good time to send and fetch. */
  cameToFront(): void
}

/**
 * Runs and all that is recorded at them, as this device keeps them; it syncs with the server by itself.
 * @param place  whether the store is that of practice: then nothing of it is ever sent, and it can be emptied
 */
export function localSource(store: DeviceStore, page: PageEnd, place: StorePlace = 'runs'): LocalSource {
  // Whatever is shown first needs it; should it fail, what needs it asks again and says so.
  void keptRuns()
  const loop =
    hasServer && place === 'runs' ? startSyncLoop(store, (runs) => page.changed({ runs, isOwn: false })) : noSync

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
    ...sideEntries(store, page, { keep, photoElsewhere }),
    ...filesOfDevice(store, page, { photoElsewhere, taken: () => void askToKeep().then(loop.soon) }),
    ...sheetsOfDevice(store, page, { summaries: list.summaries, added: () => void askToKeep() }),
    ...drillsOfDevice(store, page, place, () => read.clear()),

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

    record: (id, wish) => fromServer(id, () => fetchRecord(id, wish)),
    async document(id, wish) {
      const [maker, kept, all] = await Promise.all([documentsPart(), readRun(id), store.everything()])
      if (!maker.ok) return maker
      if (!kept.ok) return kept
      if (kept.value === null) return err(noRun(id))
      if (!all.ok) return fromStore(all.error)
      const entries = all.value.filter(({ run }) => run === id)
      return maker.value.documentHere(kept.value, entries, wish)
    },
    packet: (id, wish, making) => fromServer(id, () => fetchPacket(id, wish, making)),

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
  }
  return source

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

const noRun = (id: string): Trouble => ({ kind: 'refused', message: d.trouble.noSuchRun(id), problems: [] })
