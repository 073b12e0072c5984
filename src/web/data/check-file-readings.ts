import type { Reading } from '../../core/measurement/reading.ts'
import { ok } from '../../core/result.ts'
import type { Entry } from '../../formats/entry/entry-kinds.ts'
import type { InputProblem } from '../../formats/input-problem.ts'
import { withoutPlace } from './device-entry.ts'
import type { DeviceStore } from './device-store.ts'
import { problemsOfReadingsIn } from './kept-run.ts'
import { pinsHere } from './pinned-versions.ts'
import type { Answer } from './run-source.ts'
import { fromStore } from './store-trouble.ts'

/** A reading in a device's file, and its place among the entries. */
export interface FileReading {
  readonly at: number
  readonly run: string
  readonly reading: Reading
}

/**
 * What is wrong with the readings in a device's file that are not here yet: none is taken in that the server would
 * refuse. What is here stays, also where it would no longer be taken in.
 */
export async function problemsOfFileReadings(
  store: DeviceStore,
  file: string,
  entries: readonly Entry[],
  readings: readonly FileReading[],
): Answer<readonly InputProblem[]> {
  const problems: InputProblem[] = []
  for (const run of new Set(readings.map((one) => one.run))) {
    const [runs, before] = await Promise.all([store.entries('run', run), store.entries('reading', run)])
    if (!runs.ok) return fromStore(runs.error)
    if (!before.ok) return fromStore(before.error)
    const known = new Set(runs.value.map(({ id }) => id))
    const brought = entries.filter((one) => one.kind === 'run' && one.run === run && !known.has(one.id))
    const versions = [...runs.value.map(withoutPlace), ...brought]
    const here = new Set(before.value.map(({ id }) => id))
    const fresh = readings.filter((one) => one.run === run && !here.has(one.reading.id))
    const found = problemsOfReadingsIn(
      run,
      // As it will be pinned once it is opened here.
      [...versions, ...(await pinsHere(versions))],
      before.value,
      fresh.map(({ reading }) => reading),
    )
    for (const [i, { at }] of fresh.entries())
      problems.push(...found[i]!.map((one) => ({ ...one, file, place: `entries[${at}].body.${one.place}` })))
  }
  return ok(problems)
}
