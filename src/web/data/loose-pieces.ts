import type { DeviceStore } from './device-store.ts'

/**
 * Clears away the pieces of files whose holding was broken off, as by the end of the page; never while another tab holds
 * one, whose row is still to come.
 */
export const clearLoosePieces = (store: DeviceStore): Promise<unknown> =>
  whileHolding('exclusive', () => store.dropLoosePieces())

/**
 * Holds a file with `shared`, or waits until nobody does. A lock ends with the page that has it. A browser has none where
 * the page came unencrypted, and then nothing is held.
 */
export const whileHolding = <T>(mode: LockMode, step: () => Promise<T>): Promise<T> =>
  'locks' in navigator ? navigator.locks.request('lapwise/hold', { mode }, step) : step()
