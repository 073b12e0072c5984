import type { Reading } from '../core/measurement/reading.ts'
import type { EntryOf } from '../formats/entry/entry-kinds.ts'
import { readReadings } from '../formats/readings/readings-file.ts'
import { readRun } from '../formats/run/run-file.ts'
import { demoProject } from './demo-project.ts'
import { type JudgedRun, judgeKnown } from './judge-readings.ts'
import { type RequiredRun, requireRun } from './require-run.ts'

/** The demo run with its requirements and readings. */
export function demoRun(): { readonly required: RequiredRun; readonly readings: readonly Reading[] } {
  const demo = demoProject()
  const run = readRun('run', demo.run)
  const read = readReadings('readings', demo.readings)
  const required = run.ok ? requireRun('run', run.value) : run
  if (!required.ok || !read.ok) throw new Error('the demo project is not sound')
  return { required: required.value, readings: read.value.readings }
}

/** The demo run judged with these readings besides its own. */
export function demoJudged(more: readonly Reading[] = []): JudgedRun {
  const { required, readings } = demoRun()
  return judgeKnown(required, [...readings, ...more])
}

/** An entry with the fields that the operations look at. */
export const entryOf = <Body>(id: string, body: Body, supersedes: string | null = null): EntryOf<Body> => ({
  id,
  author: 'J. Okafor',
  capturedAt: '2016-05-12T16:00:00-06:00',
  supersedes,
  body,
})
