import { err, ok, type Result } from '../../core/result.ts'
import { type InputProblem, written } from '../../formats/input-problem.ts'
import { runFromValue } from '../../formats/run/run-file.ts'
import { runToValue } from '../../formats/run/write-run.ts'
import { type LaidOut, layOutRun } from '../../operations/lay-out-run.ts'
import { versionProblems } from '../../operations/version-problems.ts'
import { d } from './messages.ts'
import type { Answer, KeptRun } from './run-source.ts'

/** The name of the file in problems, which a page does not show. */
const file = 'run'

/** How many lawful layouts are shown to choose from. */
const most = 6

/** The lawful layouts of a run as it is being written. */
export function layOutWritten(draft: unknown): Result<LaidOut, readonly InputProblem[]> {
  const read = runFromValue(file, draft)
  return read.ok ? layOutRun(file, read.value, most) : read
}

/** The body of the entry of a run's next version, as the server will take it in; or why it is none. */
export function versionBody(kept: KeptRun, from: string, id: string, body: unknown): Awaited<Answer<unknown>> {
  if (kept.version !== from) {
    const problem = { file, place: 'earlier', expected: { kind: 'version of run' }, found: written(from) } as const
    return err({ kind: 'refused', message: d.trouble.otherVersion, problems: [problem] })
  }
  const read = runFromValue(file, body)
  const problems = read.ok ? versionProblems(file, read.value, id, kept.run) : read.error
  if (!read.ok || problems.length > 0) return err({ kind: 'refused', message: d.trouble.noVersion, problems })
  return ok(runToValue(read.value))
}
