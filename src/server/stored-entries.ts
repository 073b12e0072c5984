import { err, ok, type Result } from '../core/result.ts'
import type { StoredEntry } from '../store/entry.ts'
import type { Store } from '../store/store.ts'
import { type Refusal, unavailable } from './refusal.ts'

/** A piece of the order of storing, over all projects. */
export interface EntryPage {
  /** Those of runs; facts about a project as a whole are left out. */
  readonly entries: readonly (StoredEntry & { readonly run: string })[]
  /** The last entry looked at: where to read on. */
  readonly cursor: number
  readonly cursorId: string | null
  /** Whether there is more after it. */
  readonly more: boolean
  /** Id of the entry at `after`; null when there is none. Another than the reader knows: the store is another one. */
  readonly at: string | null
}

/** What was stored after `after`, at most `limit` entries. */
export async function entriesAfter(store: Store, after: number, limit: number): Promise<Result<EntryPage, Refusal>> {
  // The one at `after` comes along, so that the reader sees whether it is the one that it knows.
  const read = await store.entries(after === 0 ? { limit } : { after: after - 1, limit: limit + 1 })
  if (!read.ok) return err(unavailable(read.error.reason))
  const at = read.value.find(({ seq }) => seq === after)?.id ?? null
  const page = read.value.filter(({ seq }) => seq > after).slice(0, limit)
  const end = page.at(-1)
  return ok({
    entries: page.filter(isOfRun),
    cursor: end?.seq ?? after,
    cursorId: end?.id ?? at,
    more: page.length === limit,
    at,
  })
}

const isOfRun = (entry: StoredEntry): entry is StoredEntry & { readonly run: string } => entry.run !== null
