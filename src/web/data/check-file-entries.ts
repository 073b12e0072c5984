import type { Reading } from '../../core/measurement/reading.ts'
import { err, ok, type Result } from '../../core/result.ts'
import type { CarriedEntry } from '../../formats/entry/carried.ts'
import type { Entry } from '../../formats/entry/entry-kinds.ts'
import type { InputProblem } from '../../formats/input-problem.ts'
import { type RunFile, runFromValue } from '../../formats/run/run-file.ts'
import { dayProblems, isDayEntry } from '../../operations/day-problems.ts'
import { meansOfToday } from '../../operations/means-of-today.ts'
import { requireRun } from '../../operations/require-run.ts'
import { runHistory } from '../../operations/run-history.ts'
import { withoutPlace } from './device-entry.ts'
import type { DeviceStore, StoreTrouble } from './device-store.ts'
import { layOutBy, problemsOfReadingsIn, readAlone } from './kept-run.ts'
import type { DeviceEntry } from './merge-entries.ts'
import { pinsHere } from './pinned-versions.ts'
import type { Answer } from './run-source.ts'
import { fromStore } from './store-trouble.ts'

/**
 * What is wrong with entries of a file that are not here yet, one list for each: none is taken in that the server would
 * refuse. What is here stays, also where it would no longer be taken in. What comes after one that is wrong is looked at
 * as if that had not come.
 */
export async function problemsOfFileEntries(
  store: DeviceStore,
  fresh: readonly CarriedEntry[],
): Answer<readonly (readonly InputProblem[])[]> {
  layOutBy(meansOfToday)
  const units = await unitsOfRuns(store, fresh)
  if (!units.ok) return fromStore(units.error)
  const problems = new Map<CarriedEntry, readonly InputProblem[]>()
  const readings = new Map<CarriedEntry, Reading>()
  for (const one of fresh) {
    const read = readBody(one, units.value.get(one.entry.run))
    if (!read.ok) problems.set(one, read.error)
    else if (read.value !== null) readings.set(one, read.value)
  }
  const sound = fresh.filter((one) => !problems.has(one))
  for (const run of new Set(sound.map(({ entry }) => entry.run))) {
    const [runs, before] = await Promise.all([store.entries('run', run), store.entries('reading', run)])
    if (!runs.ok) return fromStore(runs.error)
    if (!before.ok) return fromStore(before.error)
    const ofRun = sound.filter(({ entry }) => entry.run === run)
    for (const [one, found] of await misfitsOfRun(run, runs.value, before.value, ofRun, readings))
      problems.set(one, found)
  }
  return ok(fresh.map((one) => problems.get(one) ?? []))
}

async function misfitsOfRun(
  run: string,
  runs: readonly DeviceEntry[],
  before: readonly DeviceEntry[],
  fresh: readonly CarriedEntry[],
  readings: ReadonlyMap<CarriedEntry, Reading>,
): Promise<ReadonlyMap<CarriedEntry, readonly InputProblem[]>> {
  const misfits = new Map<CarriedEntry, readonly InputProblem[]>()
  const brought = fresh.flatMap(({ entry }) => (entry.kind === 'run' ? [entry] : []))
  const versions = [...runs.map(withoutPlace), ...brought]
  // As it will be pinned once it is opened here.
  const pinned = [...versions, ...(await pinsHere(versions))]
  const read = fresh.filter((one) => readings.has(one))
  const found = problemsOfReadingsIn(
    run,
    pinned,
    before,
    read.map((one) => readings.get(one)!),
  )
  for (const [i, one] of read.entries()) if (found[i]!.length > 0) misfits.set(one, placed(one, found[i]!))
  const history = runHistory(run, pinned)
  // Its run may still come.
  if (!history?.ok) return misfits
  for (const one of fresh) {
    const unfit = isDayEntry(one.entry) ? dayProblems(one.file, 'body', one.entry, history.value.files) : []
    if (unfit.length > 0)
      misfits.set(
        one,
        unfit.map((problem) => ({ ...problem, place: one.at(problem.place) })),
      )
  }
  return misfits
}

/** The reading in an entry's body, null where it is none; or what is wrong with the body by itself. */
function readBody(
  one: CarriedEntry,
  units: RunFile['units'] | undefined,
): Result<Reading | null, readonly InputProblem[]> {
  const { file, entry } = one
  if (entry.kind === 'reading') {
    // What a value without a unit means only its run can say, which may still come.
    const read = readAlone(file, units ?? 'us', entry)
    return read.ok ? read : err(placed(one, read.error, /^readings\[0\]\.?/))
  }
  if (entry.kind !== 'run') return ok(null)
  const run = runFromValue(file, entry.body)
  const required = run.ok ? requireRun(file, run.value) : run
  return required.ok ? ok(null) : err(placed(one, required.error))
}

/** Problems of a body, where it lies in the file. */
const placed = (
  { file, at }: CarriedEntry,
  problems: readonly InputProblem[],
  before: RegExp | string = '',
): readonly InputProblem[] =>
  problems.map((problem) => {
    const inner = problem.place.replace(before, '')
    return { ...problem, file, place: at(inner === '' ? 'body' : `body.${inner}`) }
  })

/** Units of the runs that entries are of, from the file or from here; of a run that is in neither, nothing. */
async function unitsOfRuns(
  store: DeviceStore,
  fresh: readonly CarriedEntry[],
): Promise<Result<ReadonlyMap<string, RunFile['units']>, StoreTrouble>> {
  const here = await store.entries('run')
  if (!here.ok) return here
  const brought = fresh.flatMap(({ entry }): readonly Entry[] => (entry.kind === 'run' ? [entry] : []))
  return ok(
    new Map(
      [...here.value, ...brought].map(({ run, body }) => [
        run,
        (body as { readonly units?: unknown } | null)?.units === 'metric' ? 'metric' : 'us',
      ]),
    ),
  )
}
