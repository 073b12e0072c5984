import type * as z from 'zod/mini'
import {
  type DayLogBody,
  type EntryKind,
  type EntryOf,
  entryBodies,
  type LocateTicketBody,
  type PhotoBody,
  type SignOffBody,
} from './entry-kinds.ts'

/** What was recorded at one run besides readings, each kind in the order that counts. */
export interface RunEntries {
  readonly photos: readonly EntryOf<PhotoBody>[]
  readonly signatures: readonly EntryOf<SignOffBody>[]
  readonly logs: readonly EntryOf<DayLogBody>[]
  readonly tickets: readonly EntryOf<LocateTicketBody>[]
}

export const noEntries: RunEntries = { photos: [], signatures: [], logs: [], tickets: [] }

/**
 * The entries of one run, by kind.
 * @throws ZodError when the body of one is not of its kind: they are checked where they come in
 */
export function runEntries(entries: readonly (EntryOf<unknown> & { readonly kind: string })[]): RunEntries {
  const of = <Body>(kind: EntryKind, shape: z.ZodMiniType<Body>): readonly EntryOf<Body>[] =>
    entries
      .filter((entry) => entry.kind === kind)
      .map(({ id, author, capturedAt, supersedes, body }) => ({
        ...{ id, author, capturedAt, supersedes },
        body: shape.parse(body),
      }))
  return {
    photos: of('photo', entryBodies.photo),
    signatures: of('sign-off', entryBodies['sign-off']),
    logs: of('day-log', entryBodies['day-log']),
    tickets: of('locate-ticket', entryBodies['locate-ticket']),
  }
}
