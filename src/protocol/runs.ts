import * as z from 'zod/mini'
import { problem } from './error-answer.ts'

const count = z.int().check(z.minimum(0))

/**
 * A run's face, for lists: its line with the worst verdict on each piece of it.
 */
export const runFace = z.object({
  /** Where along the run, 0 at its first end and 1 at its second, the line of the rail bends away; null where it does not. */
  bends: z.object({ first: z.nullable(z.number()), second: z.nullable(z.number()) }),
  /** For each stretch of equal length, in order, the place in `verdictOrder` of the worst verdict on it. */
  stretches: z.string().check(z.regex(/^[0-4]*$/)),
})

/** A run in the list. `judged` is null, and `problems` say why, when the run can no longer be laid out. */
export const runSummary = z.object({
  id: z.string(),
  /** `demo`, or where the runs are that somebody added. */
  project: z.string(),
  name: z.string(),
  route: z.nullable(z.string()),
  /** Station of the run's datum, as its file says it. */
  station: z.nullable(z.string()),
  judged: z.nullable(
    z.object({
      acceptance: z.discriminatedUnion('kind', [
        z.object({ kind: z.enum(['acceptable', 'not acceptable', 'not yet known']), freeFindings: z.optional(count) }),
        z.object({
          kind: z.literal('acceptable except'),
          setAside: count,
          by: z.readonly(z.array(z.string())),
          freeFindings: z.optional(count),
        }),
      ]),
      /** How many requirements have each verdict. */
      counts: z.object({ fails: count, 'too close': count, unread: count, meets: count, 'does not apply': count }),
      findings: count,
      face: runFace,
    }),
  ),
  /** The reading that was taken last; null before the first. */
  lastVisit: z.nullable(z.object({ at: z.string(), by: z.string() })),
  /** By whom, when and why the run was put away; null while it is in the list. */
  archived: z.nullable(z.object({ at: z.string(), by: z.string(), reason: z.string() })),
  problems: z.readonly(z.array(problem)),
})

/** A run file or a reading as docs/formats.md describes it; both are checked by their own schemas. */
const formatBody = z.unknown()

export const keptRun = z.object({
  id: z.string(),
  project: z.string(),
  run: formatBody,
  readings: z.readonly(z.array(formatBody)),
  /** What was seen that no requirement asks for, as in a readings file. */
  findings: z.readonly(z.array(formatBody)),
  /** Place in the server's order of storing of the reading that was stored last. */
  cursor: z.int(),
  /** Id of the version in force. */
  version: z.string(),
  /** Ids of versions that the one in force did not come from. */
  forks: z.readonly(z.array(z.string())),
})

export type RunFace = z.output<typeof runFace>
export type RunSummary = z.output<typeof runSummary>
