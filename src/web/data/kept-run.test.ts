import { expect, test } from 'vitest'
import { readReadings } from '../../formats/readings/readings-file.ts'
import { readRun } from '../../formats/run/run-file.ts'
import { demoProject } from '../../operations/demo-project.ts'
import { openedRun, readingBody, readKeptRun } from './kept-run.ts'
import type { DeviceEntry } from './merge-entries.ts'

const entry = (id: string, kind: string, body: unknown) =>
  ({ id, run: 'run', kind, supersedes: null, body }) as unknown as DeviceEntry

test('a run that is opened crosses from the worker to the page whole: there is nothing in it but data', () => {
  const demo = demoProject()
  const run = readRun('run', demo.run)
  const taken = readReadings('readings', demo.readings)
  if (!run.ok || !taken.ok) throw new Error('the demo is not sound')
  const { readings } = taken.value
  const kept = readKeptRun(
    entry('run', 'run', JSON.parse(demo.run)),
    readings.map((reading) => entry(reading.id, 'reading', readingBody(run.value, reading))),
  )
  if (!kept.ok) throw new Error('the demo cannot be read', { cause: kept.error })
  const opened = openedRun(kept.value)
  expect(opened.kept.readings).toEqual(readings)
  expect(opened.drawn.ok && opened.drawn.value.judged.judgement.verdicts.length).toBeGreaterThan(100)
  // The platform's own way of copying between a page and its worker (HTML standard, structured data).
  expect(structuredClone(opened)).toEqual(opened)
})
