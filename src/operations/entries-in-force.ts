import type { Entry } from '../formats/entry/entry-kinds.ts'

/** An entry whose body is known to be of its kind. */
export interface EntryOf<Body> extends Pick<Entry, 'id' | 'author' | 'capturedAt' | 'supersedes'> {
  readonly body: Body
}

/** Those that no later entry takes the place of, in the order given. */
export function entriesInForce<Body>(entries: readonly EntryOf<Body>[]): readonly EntryOf<Body>[] {
  const replaced = new Set(entries.map(({ supersedes }) => supersedes))
  return entries.filter(({ id }) => !replaced.has(id))
}
