import type { Layout, LayoutRequest } from '../core/layout/layout.ts'
import type { Refusal } from '../core/layout/refusal.ts'
import { err, ok, type Result } from '../core/result.ts'
import type { InputProblem } from '../formats/input-problem.ts'
import type { RunFile } from '../formats/run/run-file.ts'
import { chooseLayout, layoutInputProblem, layoutRequest } from './choose-layout.ts'
import { meansOfToday } from './means-of-today.ts'

/** The lawful runs that were asked for, best first, and why the other alternatives are refused. */
export interface LaidOut {
  readonly request: LayoutRequest
  readonly layouts: readonly Layout[]
  /** True when there are more lawful runs than were asked for. */
  readonly more: boolean
  readonly refused: readonly Refusal[]
}

/**
 * The best `most` lawful runs for what the run file asks; of a pinned run the one that was chosen, of a counted one what stands.
 * @param file  name shown in problems
 */
export function layOutRun(file: string, run: RunFile, most: number): Result<LaidOut, readonly InputProblem[]> {
  if (run.version !== undefined || run.counted !== undefined) {
    const chosen = chooseLayout(file, run, meansOfToday)
    if (!chosen.ok) return chosen
    const { request, layout } = chosen.value
    return ok({ request, layouts: [layout], more: false, refused: [] })
  }
  const request = layoutRequest(file, run, meansOfToday)
  if (!request.ok) return request
  const solved = meansOfToday.solve(request.value)
  if (!solved.ok) return err([layoutInputProblem(file, solved.error)])
  const layouts: Layout[] = []
  let more = false
  for (const layout of solved.value.runs) {
    if (layouts.length === most) {
      more = true
      break
    }
    layouts.push(layout)
  }
  return ok({ request: request.value, layouts, more, refused: solved.value.refused() })
}
