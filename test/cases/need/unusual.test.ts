// What is read and seldom right: said at just outside what is usual, not at its limit, in both unit systems.
import { describe, expect, test } from 'vitest'
import { printProblem } from '../../../src/formats/input-problem.ts'
import { readingsFromValue } from '../../../src/formats/readings/readings-file.ts'
import { runFromValue } from '../../../src/formats/run/run-file.ts'
import { siteFromValue } from '../../../src/formats/site/read-site.ts'
import { computeNeed } from '../../../src/operations/compute-need.ts'
import { demoProject } from '../../../src/operations/demo-project.ts'
import { judgeReadings } from '../../../src/operations/judge-readings.ts'
import { judgeOutput } from '../../../src/operations/outputs.ts'
import { requireRun } from '../../../src/operations/require-run.ts'
import { english } from '../../../src/words/english.ts'
import { recordTextOf } from '../../fixtures/record-text-of.ts'

const road = { speed: 55, adt: 4750, traffic: 'one-way', lanes: 1, laneWidth: 12, shoulderWidth: 8 }
const site = {
  ...{ format: 'lapwise-site/1', units: 'us', road, clearZone: 34, runoutLength: 200 },
  ...{ hazards: [{ name: 'river', from: 0, to: 100, near: 20, beyondClearZone: true }], barrier: { offset: 8 } },
}
const metricRoad = { ...road, laneWidth: 3.6, shoulderWidth: 2.4, speed: 90 }
const metricSite = {
  ...{ ...site, units: 'metric', road: metricRoad, clearZone: 10, runoutLength: 100 },
  ...{ hazards: [{ ...site.hazards[0], near: 6 }], barrier: { offset: 2.4 } },
}

function unusualOf(file: object): readonly string[] {
  const read = siteFromValue('site.json', file)
  if (!read.ok) throw new Error(read.error.map((one) => printProblem(one, english(null))).join('\n'))
  const need = computeNeed(read.value)
  if (!need.ok) throw new Error(need.error.kind)
  return need.value.unusual.map((one) => english(null).say({ kind: 'unusual', ...one }))
}

describe('a site', () => {
  test.each<[string, object, readonly string[]]>([
    ['with nothing unusual', site, []],
    ['with nothing unusual in metres', metricSite, []],
    ['with lanes as wide as any', { ...site, road: { ...road, laneWidth: 16 } }, []],
    [
      'with a lane that is wider',
      { ...site, road: { ...road, laneWidth: 16.01 } },
      ['"road.laneWidth": 16.01 ft is unusual, usual is 8 ft to 16 ft'],
    ],
    ['with a lane as wide as any in metres', { ...metricSite, road: { ...metricRoad, laneWidth: 5 } }, []],
    [
      'with a lane of 12 m, which is one of 12 ft',
      { ...metricSite, road: { ...metricRoad, laneWidth: 12 } },
      ['"road.laneWidth": 12 m is unusual, usual is 2.4 m to 5 m'],
    ],
    [
      'with a slow road and a steep flare',
      {
        ...{ ...site, road: { ...road, speed: 24 } },
        barrier: { offset: 8, flare: { rate: '4:1', parallelLength: 20 } },
      },
      [
        '"road.speed": 24 mi/h is unusual, usual is 25 mi/h to 80 mi/h',
        '"barrier.flare.rate": 4 is unusual, usual is 5 to 50',
      ],
    ],
  ])('%s says so', (_, file, expected) => {
    expect(unusualOf(file)).toEqual(expected)
  })
})

const demo = demoProject()

function judgedWith(changes: object, reading: object) {
  const run = runFromValue('run.json', { ...JSON.parse(demo.run), ...changes })
  const required = run.ok ? requireRun('run.json', run.value) : run
  const file = {
    format: 'lapwise-readings/1',
    run: 'x',
    readings: [{ by: 'J. Doe', at: '2016-05-09T08:20', ...reading }],
  }
  const readings = readingsFromValue('readings.json', file)
  if (!required.ok || !readings.ok) throw new Error(JSON.stringify([required, readings]))
  return judgeReadings('readings.json', required.value, readings.value.readings)
}

const rail = (value: string, more: object = {}) => ({ of: 'post-3/rail-height', value, ...more })

describe('a reading', () => {
  // The rail of the demo stands 31 in above grade, 30 in to 32 in; three times 32 in is less than 10 ft.
  test.each([
    [rail('-31 in'), 'a length of 0 in to 120 in'],
    [rail('-1/16 in'), 'a length of 0 in to 120 in'],
    [rail('0 in'), null],
    [rail('120 in'), null],
    [rail('120 1/16 in'), 'a length of 0 in to 120 in'],
    [rail('3048.1 mm'), 'a length of 0 in to 120 in'],
    [rail('3048 mm'), null],
    // A stub may stand below grade.
    [{ of: 'post-1/stub-height', value: '-2 in' }, null],
    [{ of: 'post-1/stub-height', value: '-121 in' }, 'a length of -120 in to 120 in'],
  ])('%j is refused where it can be none: %s', (reading, expected) => {
    const judged = judgedWith({}, reading)
    expect(judged.ok ? null : judged.error.map((one) => english(null).say(one.expected)).join()).toBe(expected)
  })

  // Half of 32 in and 4 in beyond the limits: 10 in to 52 in.
  test.each([
    [rail('10 in'), []],
    [rail('9 15/16 in'), ['"r1 (post-3/rail-height)": 9.9375 in is unusual, usual is 10 in to 52 in']],
    [rail('52 in'), []],
    [rail('1321 mm'), ['"r1 (post-3/rail-height)": 1321 mm is unusual, usual is 254 mm to 1320.8 mm']],
    [
      rail('31 in', { resolution: '2 in' }),
      ['"r1 (post-3/rail-height) resolution": 0.0508 m is unusual, usual is 0.0001 m to 0.03 m'],
    ],
  ])('%j is kept, and unusual: %s', (reading, expected) => {
    const judged = judgedWith({}, reading)
    if (!judged.ok) throw new Error(judged.error.map((one) => printProblem(one, english(null))).join('\n'))
    expect(judged.value.unusual.map((one) => english(null).say({ kind: 'unusual', ...one }))).toEqual(expected)
    expect(judgeOutput(judged.value, english(null)).unusual).toHaveLength(expected.length)
  })

  test('and a run file that is unusual stand in the judgement without changing what is signed', () => {
    const plain = judgedWith({}, rail('31 in'))
    const unusual = judgedWith({ decisionRule: { kind: 'guard band', multiple: 4 } }, rail('31 in'))
    if (!plain.ok || !unusual.ok) throw new Error('not judged')
    expect(unusual.value.unusual.map((one) => english(null).say({ kind: 'unusual', ...one }))).toEqual([
      '"decisionRule.multiple": 4 is unusual, usual is 0.5 to 3',
    ])
    expect(plain.value.unusual).toEqual([])
    expect(recordTextOf(plain.value)).not.toContain('unusual')
  })
})
