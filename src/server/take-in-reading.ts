import type { Reading } from '../core/measurement/reading.ts'
import { theirs } from '../core/theirs.ts'
import type { Entry } from '../formats/entry/entry-kinds.ts'
import { type InputProblem, written } from '../formats/input-problem.ts'
import { readingsFormat } from '../formats/readings/entry-readings.ts'
import { readingsFromValue } from '../formats/readings/readings-file.ts'
import type { CheckIn } from '../operations/version-checks.ts'
import { type Draft, problem, rejected } from './entry-answer.ts'
import type { StoredRun } from './stored-runs.ts'

/**
 * What is to be stored of a reading's entry; or why not. An accepted one is added to `known`, what each reading of the
 * run was read of by its id, so that the next may correct it.
 */
export function draftOfReading(
  entry: Entry,
  { project, run: { name, units } }: StoredRun,
  checkIn: CheckIn,
  known: Map<string, string>,
): Draft {
  const refused = (problems: readonly InputProblem[]) => rejected(entry.id, { kind: 'no reading of run' }, problems)
  const alone = { format: readingsFormat(entry.schemaVersion), run: name, units, readings: [entry.body] }
  const read = readingsFromValue('reading', alone)
  if (!read.ok) return refused(read.error)
  const reading = read.value.readings[0]!
  const check = checkIn(reading.version)
  if (check === null)
    return refused([problem('reading', 'version', { kind: 'version of run' }, written(reading.version))])
  if (!check.ok) return rejected(entry.id, { kind: 'run of entry not laid out' }, check.error)
  const problems: InputProblem[] = []
  if (!/(Z|[+-]\d\d:\d\d)$/.test(reading.at))
    problems.push(problem('reading', 'at', { kind: 'moment of reading with zone' }, written(reading.at)))
  problems.push(...check.value('reading', '', reading, known))
  if (problems.length > 0) return refused(problems)
  const disagreeing = disagreements(entry, reading)
  if (disagreeing.length > 0) return rejected(entry.id, { kind: 'no entry' }, disagreeing)
  known.set(entry.id, reading.of)
  return { entry: { ...entry, project } }
}

/** What is said twice, in the reading and in its envelope, has to agree. */
function disagreements(entry: Entry, { id, by, at, corrects }: Reading): readonly InputProblem[] {
  const said = { id, author: by, supersedes: corrects }
  const fields = (['id', 'author', 'supersedes'] as const).filter((field) => entry[field] !== said[field])
  const isSameTime = new Date(entry.capturedAt).getTime() === new Date(at).getTime()
  return [
    ...fields.map((field) => problem('entry', field, { kind: 'as in the reading' }, written(entry[field]))),
    ...(isSameTime ? [] : [problem('entry', 'capturedAt', { kind: 'time of the reading' }, theirs(entry.capturedAt))]),
  ]
}
