import { z } from 'zod'
import type { Result } from '../core/result.ts'
import type { VerdictWord } from '../core/verdicts/verdict.ts'
import type { InputProblem } from '../formats/input-problem.ts'
import type { JudgedRun } from '../operations/judge-readings.ts'
import { problemShape } from './refusal.ts'
import type { StoredRun, UnreadRun } from './stored-runs.ts'

const count = z.int().min(0)

const judgedShape = z.object({
  acceptance: z.discriminatedUnion('kind', [
    z.object({ kind: z.enum(['acceptable', 'not acceptable', 'not yet known']) }),
    z.object({ kind: z.literal('acceptable except'), setAside: count, by: z.array(z.string()).readonly() }),
  ]),
  /** How many requirements have each verdict. */
  counts: z.object({
    fails: count,
    'too close': count,
    unread: count,
    meets: count,
    'does not apply': count,
  }),
  findings: count,
})

/** A run in the list. `judged` is null, and `problems` say why, when the run can no longer be laid out. */
export const summaryShape = z.object({
  id: z.string(),
  project: z.string(),
  name: z.string(),
  route: z.string().nullable(),
  judged: judgedShape.nullable(),
  problems: z.array(problemShape).readonly(),
})

export type RunSummary = z.output<typeof summaryShape>

export const summaryOfUnread = ({ id, project, name, problems }: UnreadRun): RunSummary => ({
  ...{ id, project, name, route: null, judged: null, problems },
})

export function summaryOf(
  { id, project, run }: StoredRun,
  judged: Result<JudgedRun, readonly InputProblem[]>,
): RunSummary {
  const named = { id, project, name: run.name, route: run.road.route }
  if (!judged.ok) return { ...named, judged: null, problems: judged.error }
  const { acceptance, verdicts, findings } = judged.value.judgement
  const counts: Record<VerdictWord, number> = { fails: 0, 'too close': 0, unread: 0, meets: 0, 'does not apply': 0 }
  for (const { verdict } of verdicts) counts[verdict] += 1
  return { ...named, judged: { acceptance, counts, findings: findings.length }, problems: [] }
}
