import { proxy, type Remote, wrap } from 'comlink'
import { err, type Result } from '../../core/result.ts'
import { hasServer } from '../has-server.ts'
import { language } from '../language.ts'
import { whenShown } from '../parts/when-shown.ts'
import { onChange, tellChange } from './changes.ts'
import type { DeviceWorker } from './device-worker.ts'
import { keepStorage } from './keep-storage.ts'
import type { LocalSource } from './local-source.ts'
import { d } from './messages.ts'
import type { PageEnd, StorePlace } from './page-end.ts'
import type { RunSource, Trouble } from './run-source.ts'

interface Connection {
  readonly worker: Remote<DeviceWorker>
  readonly source: Remote<LocalSource>
  /** Resolves when the page is left, and the worker with all its answers that were still to come is gone. */
  readonly gone: Promise<Result<never, Trouble>>
}

/**
 * What this device keeps, through a worker of the page; where that cannot be fetched, the next call tries again.
 * @param isNeeded  whether what is shown first comes from it; else its status waits until that is shown
 */
export function deviceSource(isNeeded: boolean, place: StorePlace = 'runs'): RunSource {
  let leaving = new AbortController()
  let connecting = isNeeded ? connect(leaving.signal, place) : null
  const connected = async (): Promise<Connection | null> => {
    connecting ??= connect(leaving.signal, place)
    const connection = await connecting
    if (connection === null) connecting = null
    return connection
  }

  /** The source's function of that name, called in the worker. */
  function there<N extends Exclude<keyof LocalSource, 'cameToFront'>>(name: N): LocalSource[N] {
    const call = async (...words: unknown[]) => {
      const connection = await connected()
      if (connection === null) return err<Trouble>({ kind: 'unreachable', message: d.trouble.part, problems: [] })
      const answer = connection.source[name] as unknown as (...words: unknown[]) => Promise<unknown>
      return Promise.race([answer(...words), connection.gone])
    }
    return call as LocalSource[N]
  }

  /** The same for what is saved here: refused where the browser keeps nothing and the server takes nothing. */
  function kept<N extends Exclude<keyof LocalSource, 'cameToFront'>>(name: N): LocalSource[N] {
    if (isSecureContext) return there(name)
    return (async () =>
      err<Trouble>({
        kind: 'refused',
        message: hasServer ? d.trouble.plainLine : d.trouble.plainCopy,
        problems: [],
      })) as unknown as LocalSource[N]
  }

  // A browser may keep a page that is left, to go back to. Its worker ends all the same: stopped in the middle of its
  // work it would hold what other tabs wait for, and Chromium crashes on it, together with the page that came next.
  addEventListener('pagehide', () => {
    leaving.abort()
    leaving = new AbortController()
    connecting = null
  })
  addEventListener('pageshow', ({ persisted }) => {
    if (persisted) void connected()
  })
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') void connecting?.then((connection) => connection?.source.cameToFront())
  })
  const [packet, status] = [there('packet'), there('status')]
  return {
    runs: there('runs'),
    run: there('run'),
    addRun: kept('addRun'),
    addDemo: kept('addDemo'),
    copyRun: kept('copyRun'),
    layOut: there('layOut'),
    saveVersion: kept('saveVersion'),
    append: kept('append'),
    begun: there('begun'),
    keepBegun: kept('keepBegun'),
    dropBegun: there('dropBegun'),
    record: there('record'),
    document: there('document'),
    packet: (id, wish, making) => packet(id, wish, proxy(making)),
    entries: there('entries'),
    appendEntry: kept('appendEntry'),
    savePhoto: kept('savePhoto'),
    photo: there('photo'),
    freePhotos: there('freePhotos'),
    status: async () => {
      if (connecting === null) await whenShown()
      return status()
    },
    onChange,
    syncNow: there('syncNow'),
    handOver: there('handOver'),
    weighFile: kept('weighFile'),
    takeInFile: kept('takeInFile'),
    heldFile: there('heldFile'),
    takeInHeld: kept('takeInHeld'),
    dropHeld: there('dropHeld'),
    ownSheets: there('ownSheets'),
    addSheet: kept('addSheet'),
    runsBySheet: there('runsBySheet'),
    sheetDocument: there('sheetDocument'),
    dropSheet: there('dropSheet'),
    drills: there('drills'),
    keepDrill: kept('keepDrill'),
    dropPractice: there('dropPractice'),
    speak: (language) => void connecting?.then((connection) => connection?.worker.speak(language)),
  }
}

const page: PageEnd = { changed: tellChange, keepStorage }

/**
 * Null when the worker's file cannot be fetched, or the page is left before.
 * @param leaving  aborted when the page is left
 */
async function connect(leaving: AbortSignal, place: StorePlace): Promise<Connection | null> {
  const thread = new Worker(new URL('./device-worker.ts', import.meta.url), { type: 'module', name: 'device' })
  const left = new Promise<null>((resolve) => {
    leaving.addEventListener('abort', () => {
      thread.terminate()
      resolve(null)
    })
  })
  const failed = new Promise<null>((resolve) => {
    thread.addEventListener('error', () => resolve(null), { once: true })
  })
  const worker = wrap<DeviceWorker>(thread)
  const source = await Promise.race([failed, left, worker.open(proxy(page), language(), place)])
  if (source === null) {
    thread.terminate()
    return null
  }
  return {
    worker,
    source: source as unknown as Remote<LocalSource>,
    gone: left.then(() => err({ kind: 'unreachable', message: d.trouble.left, problems: [] })),
  }
}
