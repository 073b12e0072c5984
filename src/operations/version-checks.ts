import { ok, type Result } from '../core/result.ts'
import type { InputProblem } from '../formats/input-problem.ts'
import type { RunFile } from '../formats/run/run-file.ts'
import type { LayoutMeans } from './means-of-today.ts'
import { type ReadingCheck, readingCheck } from './reading-problems.ts'
import { requireBy } from './require-by.ts'

/**
 * The check of readings that were taken at a version of a run, or why that cannot be laid out; null when there is no
 * such version. A reading that names none was taken at the first.
 */
export type CheckIn = (version: string | undefined) => Result<ReadingCheck, readonly InputProblem[]> | null

/**
 * What readings of a run are checked by before they are taken in: each by the version that its person saw.
 * @param run    id of the run, which is that of its first version
 * @param files  its versions by id; those that are added to it later are known from then on
 * @param means  what one that is not pinned is laid out by
 */
export function checksIn(run: string, files: ReadonlyMap<string, RunFile>, means: LayoutMeans | null): CheckIn {
  const checks = new Map<string, Result<ReadingCheck, readonly InputProblem[]>>()
  return (version = run) => {
    const file = files.get(version)
    if (file === undefined) return null
    const known = checks.get(version) ?? checkOf(version, file, means)
    checks.set(version, known)
    return known
  }
}

function checkOf(
  version: string,
  file: RunFile,
  means: LayoutMeans | null,
): Result<ReadingCheck, readonly InputProblem[]> {
  const required = requireBy(means, `run ${version}`, file)
  return required.ok ? ok(readingCheck(required.value)) : required
}
