import type { Change } from './run-source.ts'

type Listener = (change: Change) => void

const listeners = new Set<Listener>()

/** Other tabs of this page; null where the browser has no such thing. */
const otherTabs = typeof BroadcastChannel === 'undefined' ? null : new BroadcastChannel('lapwise/changes')
if (otherTabs !== null) otherTabs.onmessage = ({ data }: MessageEvent<Change>) => tellHere({ ...data, isOwn: false })

/** Calls back after each change, until the function returned is called. */
export function onChange(listener: Listener): () => void {
  listeners.add(listener)
  return () => listeners.delete(listener)
}

/** Tells this page and all other tabs. */
export function tellChange(change: Change): void {
  tellHere(change)
  otherTabs?.postMessage(change)
}

function tellHere(change: Change): void {
  for (const listener of listeners) listener(change)
}
