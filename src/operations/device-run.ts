import type { Reading } from '../core/measurement/reading.ts'
import { err, ok, type Result } from '../core/result.ts'
import { canonicalJson } from '../formats/canonical-json.ts'
import type { Entry } from '../formats/entry/entry-kinds.ts'
import { inLogOrder } from '../formats/entry/log-order.ts'
import { type RunEntries, runEntries } from '../formats/entry/run-entries.ts'
import { type InputProblem, written } from '../formats/input-problem.ts'
import { entryReadings } from '../formats/readings/entry-readings.ts'
import { readingsFromValue } from '../formats/readings/readings-file.ts'
import { type RunFile, runFromValue } from '../formats/run/run-file.ts'
import { dayProblems, isDayEntry } from './day-problems.ts'
import { type RunHistory, runHistory } from './run-history.ts'

/** What a device recorded at one run. */
export interface DeviceRun {
  /** The run with its versions on the device. */
  readonly history: RunHistory
  readonly entries: RunEntries
  readonly readings: readonly Reading[]
}

/**
 * What the file of a device holds of `run`, or what is wrong with that. The run has to be what it has in force, or what
 * was recorded before runs held their layout, while only the version that pins it followed.
 * @param entries  with the pins of what is recorded without a layout
 */
export function deviceRun(
  file: string,
  { entries }: { readonly entries: readonly Entry[] },
  run: RunFile,
): Result<DeviceRun, readonly InputProblem[]> {
  const wanted = canonicalJson(run)
  const runs = entries.filter(({ kind }) => kind === 'run')
  const same = runs.filter(({ body }) => {
    const read = runFromValue(file, body)
    return read.ok && canonicalJson(read.value) === wanted
  })
  if (same.length !== 1) {
    const names = runs.map(({ body }) => JSON.stringify((body as { readonly name?: unknown } | null)?.name))
    const found =
      same.length > 1
        ? ({ kind: 'several runs', count: same.length } as const)
        : ({ kind: 'other runs', names } as const)
    return err([{ file, place: 'entries', expected: { kind: 'run of a device', name: run.name }, found }])
  }
  const own = inLogOrder(entries.filter((entry) => entry.run === same[0]!.run))
  const history = runHistory(same[0]!.run, own)
  if (history === null || !history.ok) return history ?? err([notWhole(file, same[0]!.run)])
  const { inForce, firstAsked } = history.value
  if (same[0]!.id !== inForce.id && (firstAsked === null || same[0]!.id !== inForce.run)) {
    const expected = { kind: 'version in force', version: inForce.id } as const
    return err([{ file, place: 'entries', expected, found: written(same[0]!.id) }])
  }
  const { files } = history.value
  const unfit = entries.flatMap((entry, i) =>
    entry.run === inForce.run && isDayEntry(entry) ? dayProblems(file, `entries[${i}].body`, entry, files) : [],
  )
  if (unfit.length > 0) return err(unfit)
  const readings = own.filter(({ kind }) => kind === 'reading')
  const read = readingsFromValue(file, entryReadings(run, readings))
  return read.ok ? ok({ history: history.value, entries: runEntries(own), readings: read.value.readings }) : read
}

const notWhole = (file: string, run: string): InputProblem => ({
  ...{ file, place: 'entries', expected: { kind: 'first version', run } },
  found: { kind: 'versions' },
})
