import type { Reading } from '../core/measurement/reading.ts'
import { err, ok, type Result } from '../core/result.ts'
import { canonicalJson } from '../formats/canonical-json.ts'
import type { DeviceFile } from '../formats/entry/device-file.ts'
import { inLogOrder } from '../formats/entry/log-order.ts'
import { type RunEntries, runEntries } from '../formats/entry/run-entries.ts'
import type { InputProblem } from '../formats/input-problem.ts'
import { entryReadings } from '../formats/readings/entry-readings.ts'
import { readingsFromValue } from '../formats/readings/readings-file.ts'
import { type RunFile, runFromValue } from '../formats/run/run-file.ts'

/** What a device recorded at one run. */
export interface DeviceRun {
  readonly entries: RunEntries
  readonly readings: readonly Reading[]
}

/** What the file of a device holds of `run`, which it has to hold as it is, or what is wrong with that. */
export function deviceRun(
  file: string,
  { entries }: Pick<DeviceFile, 'entries'>,
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
  const own = inLogOrder(entries.filter((entry) => entry.run === same[0]!.id))
  const readings = own.filter(({ kind }) => kind === 'reading')
  const read = readingsFromValue(file, entryReadings(run, readings))
  return read.ok ? ok({ entries: runEntries(own), readings: read.value.readings }) : read
}
