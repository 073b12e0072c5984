import type { EntryOf } from '../formats/entry/entry-kinds.ts'

/** Those that no later entry takes the place of, in the order given. */
export function entriesInForce<Body>(entries: readonly EntryOf<Body>[]): readonly EntryOf<Body>[] {
  const replaced = new Set(entries.map(({ supersedes }) => supersedes))
  return entries.filter(({ id }) => !replaced.has(id))
}
