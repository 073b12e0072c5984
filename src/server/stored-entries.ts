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
  const first = await ofEveryProject(store, after, limit)
  if (!first.ok) return first
  const last = first.value.at(-1)
  // One project is read after the other, so that something could be stored between that belongs before `last`. Entries
  // become visible in their order: whatever is up to `last` is there when they are read again.
  const entries = last === undefined ? first : await ofEveryProject(store, after, limit)
  if (!entries.ok) return entries
  const page = entries.value.filter(({ seq }) => seq <= (last?.seq ?? after)).slice(0, limit)
  const before = after === 0 ? ok([]) : await ofEveryProject(store, after - 1, 1)
  if (!before.ok) return before
  const at = before.value.find(({ seq }) => seq === after)?.id ?? null
  const end = page.at(-1)
  return ok({
    entries: page.filter(isOfRun),
    cursor: end?.seq ?? after,
    cursorId: end?.id ?? at,
    more: page.length === limit,
    at,
  })
}

/** The first `limit` after `after` of all projects together, in their order. */
async function ofEveryProject(
  store: Store,
  after: number,
  limit: number,
): Promise<Result<readonly StoredEntry[], Refusal>> {
  const projects = await store.projects()
  if (!projects.ok) return err(unavailable(projects.error.reason))
  const all: StoredEntry[] = []
  for (const { id } of projects.value) {
    const entries = await store.entries({ project: id, after, limit })
    if (!entries.ok) return err(unavailable(entries.error.reason))
    all.push(...entries.value)
  }
  return ok(all.sort((a, b) => a.seq - b.seq).slice(0, limit))
}

const isOfRun = (entry: StoredEntry): entry is StoredEntry & { readonly run: string } => entry.run !== null
