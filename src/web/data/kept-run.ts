import { correctionsIn } from '../../core/measurement/corrections.ts'
import type { Reading } from '../../core/measurement/reading.ts'
import { err, ok, type Result } from '../../core/result.ts'
import type { Entry } from '../../formats/entry/entry-kinds.ts'
import { freeFindings } from '../../formats/entry/free-findings.ts'
import { inLogOrder } from '../../formats/entry/log-order.ts'
import { type InputProblem, written } from '../../formats/input-problem.ts'
import { entryReadings, readingsFormat } from '../../formats/readings/entry-readings.ts'
import { readingsFromValue, readingToValue } from '../../formats/readings/readings-file.ts'
import type { RunFile } from '../../formats/run/run-file.ts'
import { runToValue } from '../../formats/run/write-run.ts'
import { type JudgedRun, judgeKnown } from '../../operations/judge-readings.ts'
import type { LayoutMeans } from '../../operations/means-of-today.ts'
import { type RequiredRun, requireBy } from '../../operations/require-by.ts'
import { type RunHistory, runHistory, versionsOf } from '../../operations/run-history.ts'
import { type SummarisedRun, summariseRun, summariseUnread } from '../../operations/summarise-run.ts'
import { type CheckIn, checksIn } from '../../operations/version-checks.ts'
import type { DeviceEntry } from './merge-entries.ts'
import { d } from './messages.ts'
import type { Answer, KeptRun } from './run-source.ts'

export { readingToValue }

type Now<T> = Awaited<Answer<T>>

/**
 * The run in its version in force and its readings, from their entries, the readings in the order that counts; or that
 * they cannot be read. Null while its first version is not here.
 */
export function readKeptRun(
  run: string,
  versions: readonly DeviceEntry[],
  readings: readonly DeviceEntry[],
  findings: readonly DeviceEntry[] = [],
): Now<KeptRun> | null {
  const history = historyOf(run, versions)
  if (history === null) return null
  if (!history.ok) return err({ kind: 'fault', message: d.trouble.runUnreadable, problems: history.error })
  const list = readingsFromValue(d.files.readings, entryReadings(history.value.run, readings))
  if (!list.ok) return err({ kind: 'fault', message: d.trouble.readingsUnreadable, problems: list.error })
  const rivals = new Map([...correctionsIn(list.value.readings)].filter(([, by]) => by.length > 1))
  const { run: inForce, inForce: version, firstAsked } = history.value
  return ok({
    ...{ id: run, version: version.id, run: inForce, versions: versionsOf(history.value), firstAsked },
    ...{ readings: list.value.readings, freeFindings: freeFindings(inLogOrder(findings)), rivals },
  })
}

/**
 * The reading in the body of one entry.
 * @param units  of its run, in which a value without a unit is
 */
export function readAlone(
  file: string,
  units: RunFile['units'],
  { schemaVersion, body }: Pick<DeviceEntry, 'schemaVersion' | 'body'>,
): Result<Reading, readonly InputProblem[]> {
  const alone = { format: readingsFormat(schemaVersion), run: '-', units, readings: [body] }
  const read = readingsFromValue(file, alone)
  return read.ok ? ok(read.value.readings[0]!) : read
}

/**
 * What the server would refuse of each of `readings`, which come one after the other: each is looked at by the version
 * of the run that its person saw.
 * @param versions  of the run, as they are kept here
 */
export function problemsOfReadings(
  run: string,
  versions: readonly DeviceEntry[],
  before: readonly DeviceEntry[],
  readings: readonly Reading[],
): readonly (readonly InputProblem[])[] {
  const history = historyOf(run, versions)
  if (!history?.ok) throw new Error('readings of a run that cannot be read')
  const key = keyOf(run, versions)
  const checkIn = checks.get(key) ?? checksIn(run, history.value.files, means)
  checks.set(key, checkIn)
  return problemsAfter(checkIn, before, readings, (problems) => problems)
}

/** The same for a run that is here or in a file; nothing where it cannot be laid out, and so not be judged. */
export function problemsOfReadingsIn(
  run: string,
  versions: readonly Entry[],
  before: readonly DeviceEntry[],
  readings: readonly Reading[],
): readonly (readonly InputProblem[])[] {
  const history = runHistory(run, versions)
  // Its run may still come; what counts for nothing counts for nothing then too.
  if (!history?.ok) return readings.map(() => [])
  return problemsAfter(checksIn(run, history.value.files, means), before, readings, () => [])
}

function problemsAfter(
  checkIn: CheckIn,
  before: readonly DeviceEntry[],
  readings: readonly Reading[],
  notLaidOut: (problems: readonly InputProblem[]) => readonly InputProblem[],
) {
  const earlier = new Map(before.map(({ id, body }) => [id, (body as Pick<Reading, 'of'>).of]))
  const file = d.files.readings
  const problemsOf = (reading: Reading): readonly InputProblem[] => {
    const check = checkIn(reading.version)
    if (check === null)
      return [{ file, place: 'version', expected: { kind: 'version of run' }, found: written(reading.version) }]
    return check.ok ? check.value(file, '', reading, earlier) : notLaidOut(check.error)
  }
  return readings.map((reading) => {
    const problems = problemsOf(reading)
    if (problems.length === 0) earlier.set(reading.id, reading.of)
    return problems
  })
}

/** Everything that follows from the run and its readings; or why it cannot be laid out. */
export function judgeKept(kept: KeptRun): Result<JudgedRun, readonly InputProblem[]> {
  const required = requiredOf(kept)
  if (!required.ok) return required
  const { readings, versions, firstAsked, freeFindings } = kept
  return ok(judgeKnown(required.value, readings, versions, firstAsked, freeFindings))
}

/** The run in the list: its verdicts in numbers, or why it can no longer be read or laid out. */
export function summaryOf(first: DeviceEntry, archive: readonly DeviceEntry[], kept: Now<KeptRun>): SummarisedRun {
  const { id, project, body } = first
  if (!kept.ok) {
    const { name } = body as { readonly name?: unknown }
    return summariseUnread({ id, project, name: typeof name === 'string' ? name : id, archive }, kept.error.problems)
  }
  return summariseRun({ id, project, run: kept.value.run, archive }, judgeKept(kept.value))
}

/** The body of the entry of a new run that is another one in all but its readings. */
export function copiedRunBody({ run }: KeptRun, id: string, name: string): unknown {
  const { version } = run
  return runToValue({ ...run, name, ...(version === undefined ? {} : { version: { ...version, id, earlier: [] } }) })
}

/** What a run is laid out by that was recorded without a layout and cannot be pinned: fetched when there is one. */
let means: LayoutMeans | null = null

export function layOutBy(given: LayoutMeans): void {
  means = given
}

// A version never changes, and to read it is work: once for each while the page is open.
const histories = new Map<string, Result<RunHistory<DeviceEntry>, readonly InputProblem[]>>()
const checks = new Map<string, CheckIn>()
const required = new Map<string, Result<RequiredRun, readonly InputProblem[]>>()

const keyOf = (run: string, versions: readonly DeviceEntry[]): string =>
  [run, ...versions.map(({ id }) => id)].join(' ')

function historyOf(run: string, versions: readonly DeviceEntry[]) {
  const key = keyOf(run, versions)
  const history = histories.get(key) ?? runHistory(run, versions)
  if (history?.ok) histories.set(key, history)
  return history
}

/** The run laid out, with all that must be true of it; or why it cannot be. */
function requiredOf({ version, run }: Pick<KeptRun, 'version' | 'run'>): Result<RequiredRun, readonly InputProblem[]> {
  const known = required.get(version) ?? requireBy(means, run.name, run)
  required.set(version, known)
  return known
}
