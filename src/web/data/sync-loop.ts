import { ok, type Result } from '../../core/result.ts'
import { now } from './device.ts'
import type { DeviceStore } from './device-store.ts'
import { recheckSentPhotos } from './free-photos.ts'
import { later } from './later.ts'
import type { Trouble } from './run-source.ts'
import { storedPhotos } from './server-peer.ts'
import { fromStore } from './store-trouble.ts'
import { syncEntries } from './sync.ts'

/** First and longest pause before a sync that failed is tried again, milliseconds; each is twice the one before. */
const [firstPause, longestPause] = [5_000, 300_000]

export interface SyncLoop {
  /** Syncs soon; asked for while one is under way, once more after it. Resolves when all asked for so far is done. */
  soon(): Promise<void>
  /** Resolves when the sync that is under way is done; begins one where none is. */
  once(): Promise<void>
  isUnderWay(): boolean
  /** Why the last round did not end well. */
  trouble(): Trouble | null
}

/** Of a copy without a server, where what is recorded is handed on as a file; and of practice, which is not handed on. */
export const noSync: SyncLoop = {
  soon: async () => {},
  once: async () => {},
  isUnderWay: () => false,
  trouble: () => null,
}

/**
 * Syncs by itself when it starts and when there is a network again, and when it is told to; after a failure again and
 * again, ever more slowly. Of all tabs one does so at a time.
 *
 * @param changed  is told of runs that have something new, and when the status changed
 */
export function startSyncLoop(store: DeviceStore, changed: (runs: readonly string[]) => void): SyncLoop {
  let underWay: Promise<void> | null = null
  let isWanted = false
  let trouble: Trouble | null = null
  let pause = firstPause
  let recheckedAt = 0
  let timer: ReturnType<typeof setTimeout> | undefined

  function soon(): Promise<void> {
    isWanted = true
    underWay ??= run().finally(() => {
      underWay = null
    })
    return underWay
  }

  async function run(): Promise<void> {
    clearTimeout(timer)
    changed([])
    while (isWanted) {
      isWanted = false
      const isRecheck = Date.now() - recheckedAt > recheckAfter
      const round = await alone(() => syncOnce(store, isRecheck))
      if (round.ok && isRecheck) recheckedAt = Date.now()
      trouble = round.ok ? null : round.error
      changed(round.ok ? round.value : [])
    }
    if (trouble === null) pause = firstPause
    else {
      timer = setTimeout(() => void soon(), pause)
      pause = Math.min(2 * pause, longestPause)
    }
  }

  self.addEventListener('online', () => void soon())
  void soon()
  return { soon, once: () => underWay ?? soon(), isUnderWay: () => underWay !== null, trouble: () => trouble }
}

/** How long what the server listed of photos is believed, milliseconds: our judgement. */
const recheckAfter = 600_000

async function syncOnce(store: DeviceStore, isRecheck: boolean): Promise<Result<readonly string[], Trouble>> {
  const entries = await syncEntries(store)
  if (!entries.ok) return entries
  const rechecked = isRecheck ? await recheckSentPhotos(store, storedPhotos) : ok(undefined)
  if (!rechecked.ok) return rechecked
  const photos = await store.unsentPhotos()
  if (!photos.ok) return fromStore(photos.error)
  if (photos.value.length > 0) {
    const uploads = await later(() => import('./photo-upload.ts'))
    if (!uploads.ok) return uploads
    const sent = await uploads.value.sendPhotos(store)
    if (!sent.ok) return sent
  }
  const noted = await store.set('lastSync', now())
  return noted.ok ? ok(entries.value) : fromStore(noted.error)
}

/** Browsers without locks (pages that came without encryption from another machine) go without: ids keep all single. */
function alone<T>(step: () => Promise<T>): Promise<T> {
  return 'locks' in navigator ? navigator.locks.request('lapwise/sync', step) : step()
}
