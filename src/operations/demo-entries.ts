import type { Reading } from '../core/measurement/reading.ts'
import type { Entry } from '../formats/entry/entry-kinds.ts'
import { schemaVersions } from '../formats/entry/sign-off.ts'
import { entryId, entryIdAfter } from '../formats/entry-id.ts'
import { readingToValue, readReadings } from '../formats/readings/readings-file.ts'
import { readRun } from '../formats/run/run-file.ts'
import { runToValue } from '../formats/run/write-run.ts'
import { demoProject } from './demo-project.ts'
import { pinRun } from './pin-run.ts'

/**
 * The demo run and its readings as entries of a run of its own, the run's first.
 * @param random  ten random bytes, others at each call
 */
export function demoEntries(now: Date, random: () => Uint8Array): readonly Omit<Entry, 'device'>[] {
  const demo = demoProject()
  const { readings } = sound(readReadings('demo readings', demo.readings))
  const id = entryId(now.getTime(), random())
  const run = sound(pinRun('demo run', sound(readRun('demo run', demo.run)), id))
  return [
    {
      ...{ id, run: id, kind: 'run', schemaVersion: schemaVersions.run, supersedes: null },
      ...{ author: 'Lapwise', capturedAt: now.toISOString(), body: runToValue(run) },
    },
    ...withOwnIds(readings, id, random).map(
      (reading): Omit<Entry, 'device'> => ({
        ...{ id: reading.id, run: id, kind: 'reading', schemaVersion: schemaVersions.reading },
        ...{ author: reading.by, capturedAt: reading.at, supersedes: reading.corrects, body: readingToValue(reading) },
      }),
    ),
  ]
}

/** The readings of a file count from r1; where they are kept every id is single, and sorts as they were read. */
function withOwnIds(readings: readonly Reading[], run: string, random: () => Uint8Array): readonly Reading[] {
  const ids = new Map<string, string>()
  let last = run
  for (const { id } of readings) {
    last = entryIdAfter([last], random())
    ids.set(id, last)
  }
  return readings.map((reading) => ({
    ...reading,
    id: ids.get(reading.id)!,
    corrects: reading.corrects === null ? null : ids.get(reading.corrects)!,
  }))
}

function sound<T>(
  result: { readonly ok: true; readonly value: T } | { readonly ok: false; readonly error: unknown },
): T {
  if (!result.ok) throw new Error('the demo run cannot be made', { cause: result.error })
  return result.value
}
