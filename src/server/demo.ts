import { randomBytes } from 'node:crypto'
import type { Reading } from '../core/measurement/reading.ts'
import { schemaVersions } from '../formats/entry/sign-off.ts'
import { entryId, entryIdAfter } from '../formats/entry-id.ts'
import { readingToValue, readReadings } from '../formats/readings/readings-file.ts'
import { readRun } from '../formats/run/run-file.ts'
import { runToValue } from '../formats/run/write-run.ts'
import { demoProject } from '../operations/demo-project.ts'
import { pinRun } from '../operations/pin-run.ts'
import type { NewEntry } from '../store/entry.ts'
import type { Store } from '../store/store.ts'

const project = { id: 'demo', name: 'Demo' }
const device = 'server'

/** Whether the store is new, or was left before its demo project was complete. */
export async function lacksDemo(store: Store): Promise<boolean> {
  const projects = answered(await store.projects())
  if (projects.length === 0) return true
  if (!projects.some(({ id }) => id === project.id)) return false
  return answered(await store.entries({ project: project.id, limit: 1 })).length === 0
}

/** Puts the demo run and its readings into the store, all of it or nothing. */
export async function createDemo(store: Store, now: Date): Promise<void> {
  const demo = demoProject()
  const { readings } = answered(readReadings('demo readings', demo.readings))
  const runId = entryId(now.getTime(), randomBytes(10))
  const run = answered(pinRun('demo run', answered(readRun('demo run', demo.run)), runId))
  const common = { project: project.id, run: runId, device }
  const runEntry: NewEntry = {
    ...common,
    id: runId,
    kind: 'run',
    schemaVersion: schemaVersions.run,
    author: 'Lapwise',
    capturedAt: now.toISOString(),
    supersedes: null,
    body: runToValue(run),
  }
  const readingEntries = withOwnIds(readings, runId).map(
    (reading): NewEntry => ({
      ...common,
      id: reading.id,
      kind: 'reading',
      schemaVersion: schemaVersions.reading,
      author: reading.by,
      capturedAt: reading.at,
      supersedes: reading.corrects,
      body: readingToValue(reading),
    }),
  )
  answered(await store.createProject(project))
  const answers = answered(await store.append([runEntry, ...readingEntries]))
  const refused = answers.find(({ outcome }) => outcome === 'rejected')
  if (refused !== undefined) throw new Error('the demo project cannot be stored', { cause: refused })
}

/** The readings of a file count from r1; in a store every id is single, and sorts as they were read. */
function withOwnIds(readings: readonly Reading[], run: string): readonly Reading[] {
  const ids = new Map<string, string>()
  let last = run
  for (const { id } of readings) {
    last = entryIdAfter([last], randomBytes(10))
    ids.set(id, last)
  }
  return readings.map((reading) => ({
    ...reading,
    id: ids.get(reading.id)!,
    corrects: reading.corrects === null ? null : ids.get(reading.corrects)!,
  }))
}

function answered<T>(
  result: { readonly ok: true; readonly value: T } | { readonly ok: false; readonly error: unknown },
): T {
  if (!result.ok) throw new Error('the demo project cannot be made', { cause: result.error })
  return result.value
}
