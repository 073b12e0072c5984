import { expect, test } from 'vitest'
import { readReadings } from '../../formats/readings/readings-file.ts'
import { readRun } from '../../formats/run/run-file.ts'
import { demoProject } from '../../operations/demo-project.ts'
import { openedRun, problemsOfReadings, readingBody, readKeptRun } from './kept-run.ts'
import type { DeviceEntry } from './merge-entries.ts'

const entry = (id: string, kind: string, body: unknown) =>
  ({ id, run: 'run', kind, supersedes: null, body }) as unknown as DeviceEntry

test('a reading may correct only what is here of the same thing, and recheck only what it can prove', () => {
  const demo = demoProject()
  const taken = readReadings('readings', demo.readings)
  const kept = readKeptRun(entry('run', 'run', JSON.parse(demo.run)), [])
  if (!kept.ok || !taken.ok) throw new Error('the demo is not sound')
  const stub = taken.value.readings.find(({ of }) => of === 'post-1/stub-height')!
  const here = [entry(stub.id, 'reading', readingBody(kept.value.run, stub))]
  const places = (...readings: readonly (typeof stub)[]) =>
    problemsOfReadings(kept.value, here, readings).map((problems) => problems.map(({ place }) => place))
  const fresh = { ...stub, id: 'fresh', corrects: stub.id }
  expect(places(fresh, { ...fresh, id: 'next', corrects: 'fresh' })).toEqual([[], []])
  expect(places({ ...fresh, of: 'post-2/stub-height' })).toEqual([['corrects']])
  // What is refused is not there for the next one to correct.
  expect(places({ ...fresh, corrects: 'none' }, { ...fresh, id: 'next', corrects: 'fresh' })).toEqual([
    ['corrects'],
    ['corrects'],
  ])
  expect(places({ ...stub, id: 'again', rechecks: 'splice-2/lap' })).toEqual([['rechecks']])
})

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
