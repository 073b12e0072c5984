import type { PhotoStrokes } from '../../core/record/photo-strokes.ts'
import type { FreeFinding } from '../../core/verdicts/free-findings.ts'
import { dayLogOf, locateTicketOf } from './day-entries.ts'
import {
  type AssignmentBody,
  type DayLogBody,
  type EntryKind,
  type EntryOf,
  entryBodies,
  firstDayLogBody,
  firstLocateTicketBody,
  firstSignOffBody,
  type LocateTicketBody,
  type PhotoBody,
  secondSignOffBody,
  thirdSignOffBody,
} from './entry-kinds.ts'
import { freeFindingKinds, freeFindings } from './free-findings.ts'
import { photoStrokes } from './photo-strokes.ts'
import { type SignOff, signOffOf } from './sign-off.ts'

/** What was recorded at one run besides readings, each kind in the order that counts. */
export interface RunEntries {
  /** Who made which version of the run and when; what a version holds is the run. */
  readonly versions: readonly EntryOf<null>[]
  readonly photos: readonly EntryOf<PhotoBody>[]
  readonly photoStrokes: readonly PhotoStrokes[]
  readonly signatures: readonly EntryOf<SignOff>[]
  readonly logs: readonly EntryOf<DayLogBody>[]
  readonly tickets: readonly EntryOf<LocateTicketBody>[]
  readonly findings: readonly FreeFinding[]
  readonly assignments: readonly EntryOf<AssignmentBody>[]
}

export const noEntries: RunEntries = {
  versions: [],
  photos: [],
  photoStrokes: [],
  signatures: [],
  logs: [],
  tickets: [],
  findings: [],
  assignments: [],
}

const olderSignOffBodies = new Map<number, { parse(body: unknown): unknown }>([
  [1, firstSignOffBody],
  [2, secondSignOffBody],
  [3, thirdSignOffBody],
])

/**
 * The entries of one run, by kind.
 * @throws ZodError when the body of one is not of its kind: they are checked where they come in
 */
export function runEntries(
  entries: readonly (EntryOf<unknown> & { readonly kind: string; readonly schemaVersion: number })[],
): RunEntries {
  const of = <Body>(kind: EntryKind, read: (body: unknown, schemaVersion: number) => Body): readonly EntryOf<Body>[] =>
    entries
      .filter((entry) => entry.kind === kind)
      .map(({ id, author, capturedAt, supersedes, schemaVersion, body }) => ({
        ...{ id, author, capturedAt, supersedes },
        body: read(body, schemaVersion),
      }))
  return {
    findings: freeFindings(soundFindings(entries)),
    assignments: of('assignment', (body) => entryBodies.assignment.parse(body)),
    versions: of('run', () => null),
    photos: of('photo', (body) => entryBodies.photo.parse(body)),
    photoStrokes: photoStrokes(of('photo-strokes', (body) => entryBodies['photo-strokes'].parse(body))),
    signatures: of('sign-off', (body, version) =>
      signOffOf(version, (olderSignOffBodies.get(version) ?? entryBodies['sign-off']).parse(body)),
    ),
    logs: of('day-log', (body, version) =>
      dayLogOf(version, (version === 1 ? firstDayLogBody : entryBodies['day-log']).parse(body)),
    ),
    tickets: of('locate-ticket', (body, version) =>
      locateTicketOf(version, (version === 1 ? firstLocateTicketBody : entryBodies['locate-ticket']).parse(body)),
    ),
  }
}

/** Those that say of a free finding that it is there or closed, their bodies looked at. */
const soundFindings = <E extends { readonly kind: string; readonly body: unknown }>(entries: readonly E[]) =>
  entries.flatMap((entry) => {
    const kind = freeFindingKinds.find((one) => one === entry.kind)
    return kind === undefined ? [] : [{ ...entry, body: entryBodies[kind].parse(entry.body) }]
  })
