import type { StoredEntry } from '../../store/entry.ts'
import type { Store } from '../../store/store.ts'

/** Entries read in one go. */
const piece = 1000

/** The store stopped answering in the middle. */
export class StoreSilent extends Error {}

/**
 * Every entry in the order of storing, piece by piece.
 * @throws StoreSilent
 */
export async function* entriesOf(store: Store): AsyncGenerator<readonly StoredEntry[]> {
  for (let after = 0; ; ) {
    const read = await store.entries({ after, limit: piece })
    if (!read.ok) throw new StoreSilent(read.error.reason)
    if (read.value.length > 0) yield read.value
    const last = read.value.at(-1)
    if (last === undefined || read.value.length < piece) return
    after = last.seq
  }
}
