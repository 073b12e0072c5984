import type { Entry } from '../formats/entry/entry-kinds.ts'
import { type InputProblem, written } from '../formats/input-problem.ts'
import { type RunFile, runFromValue } from '../formats/run/run-file.ts'
import { versionProblems } from '../operations/version-problems.ts'
import { type Draft, problem, rejected } from './entry-answer.ts'
import type { StoredRun } from './stored-runs.ts'

/**
 * What is to be stored of an entry that brings another version of a run; or why not. An accepted one is added to
 * `files`, the versions of the run by id, so that readings and further versions may name it.
 */
export function draftOfVersion(entry: Entry, { id, project, history }: StoredRun, files: Map<string, RunFile>): Draft {
  const refused = (problems: readonly InputProblem[]) => rejected(entry.id, { kind: 'no version of run' }, problems)
  const before = entry.supersedes ?? ''
  const from = before === id && history.asked !== null ? history.asked : files.get(before)
  if (from === undefined)
    return refused([problem('entry', 'supersedes', { kind: 'version of run' }, written(entry.supersedes))])
  const read = runFromValue('run', entry.body)
  if (!read.ok) return refused(read.error)
  const problems = versionProblems('run', read.value, entry.id, from)
  if (problems.length > 0) return refused(problems)
  files.set(entry.id, read.value)
  return { entry: { ...entry, project } }
}
