import { describe, expect, test } from 'vitest'
import { inches, sampleReading } from '../../../test/fixtures/record-inputs.ts'
import { demoVersions } from '../../../test/fixtures/three-versions.ts'
import type { Reading } from '../../core/measurement/reading.ts'
import { schemaVersions } from '../../formats/entry/sign-off.ts'
import { readingToValue, readReadings } from '../../formats/readings/readings-file.ts'
import { readRun } from '../../formats/run/run-file.ts'
import { writeRun } from '../../formats/run/write-run.ts'
import { demoProject } from '../../operations/demo-project.ts'
import { openedRun } from './drawn-run.ts'
import { problemsOfReadings, readKeptRun } from './kept-run.ts'
import type { DeviceEntry } from './merge-entries.ts'

const entry = (id: string, kind: 'run' | 'reading', body: unknown, schemaVersion = schemaVersions[kind]) =>
  ({ id, run: 'run', kind, schemaVersion, supersedes: null, body }) as unknown as DeviceEntry

test('a reading may correct only what is here of the same thing, and recheck only what it can prove', () => {
  const demo = demoProject()
  const taken = readReadings('readings', demo.readings)
  const versions = [entry('run', 'run', JSON.parse(demo.run))]
  const kept = readKeptRun('run', versions, [])
  if (!kept?.ok || !taken.ok) throw new Error('the demo is not sound')
  const stub = taken.value.readings.find(({ of }) => of === 'post-1/stub-height')!
  const here = [entry(stub.id, 'reading', readingToValue(stub))]
  const places = (...readings: readonly (typeof stub)[]) =>
    problemsOfReadings('run', versions, here, readings).map((problems) => problems.map(({ place }) => place))
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

test('a reading is looked at by the version of the run that its person saw', () => {
  const [first, second] = demoVersions(['run', 'v2'])
  const versions = [
    entry('run', 'run', JSON.parse(writeRun(first!))),
    { ...entry('v2', 'run', JSON.parse(writeRun(second!))), supersedes: 'run' },
  ]
  // Post 19 is of the second end, which the second version has farther on and under another id.
  const added = second!.version!.layout.posts.find(({ id }) => id.endsWith('~v2'))!.id
  const read = (place: string, version?: string) =>
    sampleReading(
      `${place} at ${version}`,
      `${place}/rail-height`,
      inches(31),
      version === undefined ? {} : { version },
    )
  const problems = (...readings: readonly Reading[]) =>
    problemsOfReadings('run', versions, [], readings).map((each) => each.map(({ place }) => place))
  expect(problems(read('post-19'), read('post-19', 'run'), read('post-9', 'v2'), read(added, 'v2'))).toEqual([
    [],
    [],
    [],
    [],
  ])
  expect(problems(read('post-19', 'v2'), read(added), read(added, 'run'), read('post-9', 'v3'))).toEqual([
    ['of'],
    ['of'],
    ['of'],
    ['version'],
  ])
})

test('a run that is opened crosses from the worker to the page whole: there is nothing in it but data', () => {
  const demo = demoProject()
  const run = readRun('run', demo.run)
  const taken = readReadings('readings', demo.readings)
  if (!run.ok || !taken.ok) throw new Error('the demo is not sound')
  const { readings } = taken.value
  const kept = readKeptRun(
    'run',
    [entry('run', 'run', JSON.parse(demo.run))],
    readings.map((reading) => entry(reading.id, 'reading', readingToValue(reading))),
  )
  if (!kept?.ok) throw new Error('the demo cannot be read', { cause: kept?.error })
  const opened = openedRun(kept.value)
  expect(opened.kept.readings).toEqual(readings)
  expect(opened.drawn.ok && opened.drawn.value.judged.judgement.verdicts.length).toBeGreaterThan(100)
  // The platform's own way of copying between a page and its worker (HTML standard, structured data).
  expect(structuredClone(opened)).toEqual(opened)
})

describe('an offset that was read before its side was asked', () => {
  const of = 'post-1/flare-offset'
  const body = { id: 'old', of, value: '48 in', by: 'R. Quist', at: '2026-05-04T15:30:00.000Z', corrects: null }
  const run = entry('run', 'run', JSON.parse(demoProject().run))
  const keptWith = (...readings: DeviceEntry[]) => {
    const kept = readKeptRun('run', [run], readings)
    if (!kept?.ok) throw new Error('the readings cannot be read', { cause: kept?.error })
    const { drawn } = openedRun(kept.value)
    if (!drawn.ok) throw new Error('the run cannot be laid out')
    return drawn.value.judged
  }

  test('is kept and shown beside newer ones, and is unread for its side alone', () => {
    const newer = { ...body, id: 'new', of: 'post-2/lateral-offset', value: '40 in', side: 'toward' }
    const judged = keptWith(entry('old', 'reading', body, 1), entry('new', 'reading', newer))
    expect(judged.readings.map(({ answer }) => answer)).toMatchObject([
      { value: 48 * 25_400_000 },
      { value: 40 * 25_400_000, side: 'toward' },
    ])
    expect(judged.readings[0]!.answer).not.toHaveProperty('side')
    expect(judged.judgement.verdicts.find(({ requirement }) => requirement === of)).toMatchObject({
      verdict: 'unread',
      because: { kind: 'side not stated' },
      readings: ['old'],
    })
  })
})
