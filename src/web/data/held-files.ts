import { ok } from '../../core/result.ts'
import { newId, now } from './device.ts'
import type { DeviceStore } from './device-store.ts'
import type { HeldReason, HeldRow } from './device-tables.ts'
import { whileHolding } from './loose-pieces.ts'
import type { Answer } from './run-source.ts'
import { sha256Of } from './sha256.ts'
import { fromStore } from './store-trouble.ts'

/** Bytes of one piece: what is in memory at a time. */
const pieceSize = 4 * 1024 * 1024

/** Keeps `content` on this device until it can be taken in; the same content once, however often it comes. */
export const holdFile = (store: DeviceStore, name: string, why: HeldReason, content: Blob): Answer<void> =>
  whileHolding('shared', () => hold(store, name, why, content))

async function hold(store: DeviceStore, name: string, why: HeldReason, content: Blob): Answer<void> {
  const id = newId()
  const hashes: string[] = []
  for (let from = 0; from < content.size; from += pieceSize) {
    const piece = await content.slice(from, from + pieceSize).arrayBuffer()
    const kept = await store.keepHeldPiece(id, hashes.length, piece)
    if (!kept.ok) {
      await store.dropHeld(id, hashes.length)
      return fromStore(kept.error)
    }
    hashes.push(await sha256Of(piece))
  }
  const fingerprint = await sha256Of(new TextEncoder().encode(hashes.join(' ')).buffer)
  const held = await store.held()
  if (!held.ok) return fromStore(held.error)
  const isHeld = held.value.some((one) => one.fingerprint === fingerprint)
  const row = { id, name, heldAt: now(), why, pieces: hashes.length, bytes: content.size, fingerprint }
  const kept = isHeld ? await store.dropHeld(id, hashes.length) : await store.keepHeld(row)
  return kept.ok ? ok(undefined) : fromStore(kept.error)
}

/** What is held as the file that it was, for saving it elsewhere or taking it in anew. */
export async function heldFile(store: DeviceStore, { id, name, pieces }: HeldRow): Answer<File> {
  const parts: Blob[] = []
  for (let piece = 0; piece < pieces; piece += 1) {
    const content = await store.heldPiece(id, piece)
    if (!content.ok) return fromStore(content.error)
    if (content.value === undefined) throw new Error(`piece ${piece} of ${name} is not on this device`)
    // A blob of its own for each: the browser may keep them on the disk.
    parts.push(new Blob([content.value]))
  }
  return ok(new File(parts, name))
}
