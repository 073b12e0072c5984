import * as z from 'zod/mini'
import { problem } from './error-answer.ts'

const count = z.int().check(z.minimum(0))

/** A run in the list. `judged` is null, and `problems` say why, when the run can no longer be laid out. */
export const runSummary = z.object({
  id: z.string(),
  /** `demo`, or where the runs are that somebody added. */
  project: z.string(),
  name: z.string(),
  route: z.nullable(z.string()),
  judged: z.nullable(
    z.object({
      acceptance: z.discriminatedUnion('kind', [
        z.object({ kind: z.enum(['acceptable', 'not acceptable', 'not yet known']) }),
        z.object({ kind: z.literal('acceptable except'), setAside: count, by: z.readonly(z.array(z.string())) }),
      ]),
      /** How many requirements have each verdict. */
      counts: z.object({ fails: count, 'too close': count, unread: count, meets: count, 'does not apply': count }),
      findings: count,
    }),
  ),
  problems: z.readonly(z.array(problem)),
})

export const runList = z.object({ runs: z.readonly(z.array(runSummary)) })

/** A run file or a reading as docs/formats.md describes it; both are checked by their own schemas. */
const formatBody = z.unknown()

export const keptRun = z.object({
  id: z.string(),
  project: z.string(),
  run: formatBody,
  readings: z.readonly(z.array(formatBody)),
  /** Place in the server's order of storing of the reading that was stored last. */
  cursor: z.int(),
  /** Id of the version in force. */
  version: z.string(),
  /** Ids of versions that the one in force did not come from. */
  forks: z.readonly(z.array(z.string())),
})

export type RunSummary = z.output<typeof runSummary>
