import type { Result } from '../../core/result.ts'
import type { InputProblem } from '../../formats/input-problem.ts'
import { type RequiredRun, requireRun } from '../../operations/require-run.ts'
import type { KeptRun } from './run-source.ts'

// A run never changes, and to lay it out is work: once for each run while the page is open.
const required = new Map<string, Result<RequiredRun, readonly InputProblem[]>>()

/** The run laid out, with all that must be true of it; or why it cannot be. */
export function requiredOf({ id, run }: Pick<KeptRun, 'id' | 'run'>): Result<RequiredRun, readonly InputProblem[]> {
  const known = required.get(id) ?? requireRun(run.name, run)
  required.set(id, known)
  return known
}
