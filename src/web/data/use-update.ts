import { useEffect, useState } from 'preact/hooks'
import { hasServer } from '../has-server.ts'

/** How a new version of the page stands. */
export type UpdateState =
  | 'none'
  /** It is on this device and waits to be taken over. */
  | 'ready'
  /** It was to be taken over, but something entered here or in another tab is not saved. */
  | 'held'
  /** It took over in another tab; this page follows once what was entered in it is saved. */
  | 'took over'

export interface Update {
  readonly state: UpdateState
  /** Takes the new version over in all tabs, unless something entered in one of them is not saved. */
  takeOver(): Promise<void>
}

/** How long other tabs have to say that they hold unsaved work, milliseconds; one that misses it does not reload. */
const answerTime = 400
/** How often a page that has to follow looks whether it may, milliseconds. */
const followPause = 1000
/** How often an open page asks whether there is a new version, milliseconds. */
const askPause = 60 * 60 * 1000

const listeners = new Set<() => void>()
let state: UpdateState = 'none'
let waiting: ServiceWorker | null = null
const tabs = typeof BroadcastChannel === 'undefined' ? null : new BroadcastChannel('lapwise/update')

/** Puts the page onto this device, and looks for new versions from then on. Called once, by the page. */
export async function startUpdates(): Promise<void> {
  if (!('serviceWorker' in navigator)) return
  if (tabs !== null)
    tabs.onmessage = ({ data }) => {
      if (data === 'is anything unsaved?' && hasUnsaved()) tabs.postMessage('something is unsaved')
    }
  // The very first worker takes over a page that had none: the same version, nothing to follow.
  let hadWorker = navigator.serviceWorker.controller !== null
  navigator.serviceWorker.addEventListener('controllerchange', () => {
    if (hadWorker) follow()
    hadWorker = true
  })
  const registration = await navigator.serviceWorker
    .register(hasServer ? '/sw.js' : 'sw.js', { updateViaCache: 'none' })
    .catch(() => null)
  // Without encryption, or with its storage shut, a browser keeps no page; it then works as long as there is a network.
  if (registration === null) return
  watch(registration)
  void navigator.serviceWorker.ready.then(({ active }) => {
    if (navigator.serviceWorker.controller === null) active?.postMessage('serve me')
  })
  const ask = (): void => void registration.update().catch(() => undefined)
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') ask()
  })
  setInterval(ask, askPause)
}

/** The state of a new version, for the page to show. */
export function useUpdate(): Update {
  const [, draw] = useState({})
  useEffect(() => {
    const listener = (): void => draw({})
    listeners.add(listener)
    return () => {
      listeners.delete(listener)
    }
  }, [])
  return { state, takeOver }
}

function watch(registration: ServiceWorkerRegistration): void {
  const found = (): void => {
    if (registration.waiting === null || navigator.serviceWorker.controller === null) return
    waiting = registration.waiting
    become('ready')
  }
  const listen = (): void => registration.installing?.addEventListener('statechange', found)
  registration.addEventListener('updatefound', listen)
  listen()
  found()
}

async function takeOver(): Promise<void> {
  if (hasUnsaved() || (await isUnsavedElsewhere())) become('held')
  else waiting?.postMessage('take over')
}

/** Shows the new version; at once when nothing is lost by it. */
function follow(): void {
  if (!hasUnsaved()) {
    location.reload()
    return
  }
  become('took over')
  setTimeout(follow, followPause)
}

/** What keeps a person from leaving the page keeps the page from being replaced: its drafts answer for both. */
function hasUnsaved(): boolean {
  return !window.dispatchEvent(new Event('beforeunload', { cancelable: true }))
}

function isUnsavedElsewhere(): Promise<boolean> {
  if (tabs === null) return Promise.resolve(false)
  const asking = new BroadcastChannel('lapwise/update')
  return new Promise<boolean>((resolve) => {
    setTimeout(() => resolve(false), answerTime)
    asking.onmessage = ({ data }) => {
      if (data === 'something is unsaved') resolve(true)
    }
    asking.postMessage('is anything unsaved?')
  }).finally(() => asking.close())
}

function become(next: UpdateState): void {
  state = next
  for (const listener of listeners) listener()
}
