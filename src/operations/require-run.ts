import type { Result } from '../core/result.ts'
import type { InputProblem } from '../formats/input-problem.ts'
import type { RunFile } from '../formats/run/run-file.ts'
import { type LayoutMeans, meansOfToday } from './means-of-today.ts'
import { type RequiredRun, requireBy } from './require-by.ts'

/** @param means  what a run that is not pinned is laid out by: the shelf and the solver of today */
export const requireRun = (
  file: string,
  run: RunFile,
  means: LayoutMeans = meansOfToday,
): Result<RequiredRun, readonly InputProblem[]> => requireBy(means, file, run)
