import type { Reading } from '../../core/measurement/reading.ts'
import { ok } from '../../core/result.ts'
import type { Entry } from '../../formats/entry/entry-kinds.ts'
import type { InputProblem } from '../../formats/input-problem.ts'
import { type DayEntry, dayProblems } from '../../operations/day-problems.ts'
import { meansOfToday } from '../../operations/means-of-today.ts'
import { runHistory } from '../../operations/run-history.ts'
import { withoutPlace } from './device-entry.ts'
import type { DeviceStore } from './device-store.ts'
import { layOutBy, problemsOfReadingsIn } from './kept-run.ts'
import { pinsHere } from './pinned-versions.ts'
import type { Answer } from './run-source.ts'
import { fromStore } from './store-trouble.ts'

/** A reading in a device's file, and its place among the entries. */
export interface FileReading {
  readonly at: number
  readonly run: string
  readonly reading: Reading
}

/** A day log or locate ticket in it. */
export interface FileDay {
  readonly at: number
  readonly entry: Entry & DayEntry
}

/**
 * What is wrong with the readings, day logs and locate tickets in a device's file that are not here yet: none is taken in
 * that the server would refuse. What is here stays, also where it would no longer be taken in.
 */
export async function problemsOfFileEntries(
  store: DeviceStore,
  file: string,
  entries: readonly Entry[],
  readings: readonly FileReading[],
  days: readonly FileDay[],
): Answer<readonly InputProblem[]> {
  const problems: InputProblem[] = []
  layOutBy(meansOfToday)
  for (const run of new Set([...readings.map((one) => one.run), ...days.map(({ entry }) => entry.run)])) {
    const kinds = ['run', 'reading', 'day-log', 'locate-ticket'] as const
    const [runs, before, ...logged] = await Promise.all(kinds.map((kind) => store.entries(kind, run)))
    if (!runs!.ok) return fromStore(runs!.error)
    if (!before!.ok) return fromStore(before!.error)
    const here = new Set(before!.value.map(({ id }) => id))
    for (const one of logged) {
      if (!one.ok) return fromStore(one.error)
      for (const { id } of one.value) here.add(id)
    }
    const known = new Set(runs!.value.map(({ id }) => id))
    const brought = entries.filter((one) => one.kind === 'run' && one.run === run && !known.has(one.id))
    const versions = [...runs!.value.map(withoutPlace), ...brought]
    // As it will be pinned once it is opened here.
    const pinned = [...versions, ...(await pinsHere(versions))]
    const fresh = readings.filter((one) => one.run === run && !here.has(one.reading.id))
    const found = problemsOfReadingsIn(
      run,
      pinned,
      before!.value,
      fresh.map(({ reading }) => reading),
    )
    for (const [i, { at }] of fresh.entries())
      problems.push(...found[i]!.map((one) => ({ ...one, file, place: `entries[${at}].body.${one.place}` })))
    const history = runHistory(run, pinned)
    // Its run may still come.
    if (!history?.ok) continue
    for (const { at, entry } of days)
      if (entry.run === run && !here.has(entry.id))
        problems.push(...dayProblems(file, `entries[${at}].body`, entry, history.value.files))
  }
  return ok(problems)
}
