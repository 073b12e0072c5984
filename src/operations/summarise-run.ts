import type { Result } from '../core/result.ts'
import type { InputProblem } from '../formats/input-problem.ts'
import type { RunFile } from '../formats/run/run-file.ts'
import type { RunSummary } from '../protocol/runs.ts'
import { countVerdicts } from './count-verdicts.ts'
import type { JudgedRun } from './judge-readings.ts'

/** A run in the list, with its problems as data. */
export interface SummarisedRun extends Omit<RunSummary, 'problems'> {
  readonly problems: readonly InputProblem[]
}

/** What a list shows of a run: its verdicts in numbers, or why it cannot be judged. */
export function summariseRun(
  { id, project, run }: { readonly id: string; readonly project: string; readonly run: RunFile },
  judged: Result<JudgedRun, readonly InputProblem[]>,
): SummarisedRun {
  const named = { id, project, name: run.name, route: run.road.route }
  if (!judged.ok) return { ...named, judged: null, problems: judged.error }
  const { acceptance, verdicts, findings } = judged.value.judgement
  return { ...named, judged: { acceptance, counts: countVerdicts(verdicts), findings: findings.length }, problems: [] }
}
