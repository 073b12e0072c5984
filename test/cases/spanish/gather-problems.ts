import { layAlignment } from '../../../src/core/alignment/horizontal-alignment.ts'
import type { Result } from '../../../src/core/result.ts'
import { parseLength } from '../../../src/core/units/length-text.ts'
import { parseStation } from '../../../src/core/units/station.ts'
import type { InputProblem } from '../../../src/formats/input-problem.ts'
import { findJsonFault } from '../../../src/formats/json-fault.ts'
import { readingsFromValue } from '../../../src/formats/readings/readings-file.ts'
import { readRun, runFromValue } from '../../../src/formats/run/run-file.ts'
import { readSheet } from '../../../src/formats/sheet/sheet-file.ts'
import { siteFromValue } from '../../../src/formats/site/read-site.ts'
import { layOutRun } from '../../../src/operations/lay-out-run.ts'
import { placeRun } from '../../../src/operations/place-run.ts'
import { requireRun } from '../../../src/operations/require-run.ts'
import type { Saying } from '../../../src/words/saying.ts'
import { brokenReadings } from '../../fixtures/readings-files.ts'
import { brokenRuns } from '../../fixtures/run-files.ts'
import { brokenSheets } from '../../fixtures/sheet-files.ts'
import { brokenSites } from '../../fixtures/site-files.ts'
import { astrayReadings } from './gather-astray.ts'
import { requiredRun, runFile, runFiles } from './gather-runs.ts'
import { noNeeds } from './gather-sites.ts'

/** What is typed as a length and is none, one text for every reason. */
const noLengths = [
  ...['', 'abc', '1e3', '1,5', '27 3', '1/0', '3/7', '27 5/4', '27.5 3/4', '1/2 m', '1/2 mm', '1.5 ft 3 in', "1/2'"],
  ...[
    '5 ft 14 in',
    '12.5 yd',
    '5 m 3 in',
    '27 in x',
    '0.0000000001 mm',
    '99999999999 m',
    '5 ft 3 ft',
    '27-3/4',
    '6 3/4 ft',
  ],
  ...['27 3/4 in 2', '--5', '12 ft 6 mm', '1 1/2 mm', '9 4 1/2', '9 4'],
]
const noStations = ['', 'abc', '12,5', '1.5+20', '12+5', '12+37.50 x', '1+00.00000000001', '99999999999999999+00']

const noJson = [
  '',
  '{',
  '[1,',
  '{"a" 1}',
  '{a: 1}',
  '{"a": 1, "a": 2}',
  '"abc',
  '"\\x"',
  '[1 2]',
  '{} {}',
  '"a\nb"',
  '{"a":1;}',
]

/** What is wrong with what is typed, with whole files, with runs that cannot be laid out or staked, with sites and readings. */
export function sayingsOfProblems(): readonly Saying[] {
  const lengths = [null, 'in', 'mm'].flatMap((unit) =>
    noLengths.flatMap((text): readonly Saying[] => {
      const parsed = parseLength(text, unit as 'in' | null)
      if (parsed.ok) return []
      return [
        { kind: 'no length', problem: parsed.error },
        { kind: 'a length', not: parsed.error },
      ]
    }),
  )
  const stations = noStations.flatMap((text) =>
    (['us', 'metric'] as const).flatMap((system): readonly Saying[] => {
      const parsed = parseStation(text, system)
      if (parsed.ok) return []
      return [
        { kind: 'no station', problem: parsed.error },
        { kind: 'a station', not: parsed.error },
      ]
    }),
  )
  const faults = [...noJson, '['.repeat(200)].flatMap((text) => {
    const fault = findJsonFault(text)
    return fault === null ? [] : [fault.expected, fault.found]
  })
  const files = [
    ...brokenReadings.map(({ raw }) => readingsFromValue('readings', raw)),
    ...brokenRuns.map(({ raw }) => runFromValue('run', raw)),
    ...brokenSheets.map(({ raw }) => readSheet('sheet', JSON.stringify(raw))),
    ...brokenSites.map(({ raw }) => siteFromValue('site', raw)),
  ]
  const unusual = [
    { place: 'road.speed', value: 95, unit: 'mi/h', low: 25, high: 80 },
    { place: 'r1 (post-3/rail-height)', value: 9.9375, unit: 'in', low: 10, high: 52 },
    { place: 'road.lanes', value: 14, unit: '', low: 1, high: 12 },
  ].map((one): Saying => ({ kind: 'unusual', ...one }))
  return [
    ...[...lengths, ...stations, ...faults, ...unusual],
    ...files.flatMap(saidOf),
    ...noRuns.flatMap((changes) => [requiredOf(changes), laidOutOf(changes)]).flatMap(saidOf),
    ...unstakedRuns().flatMap(saidOf),
    ...[astrayReadings(), noNeeds()].flatMap((error) => saidOf({ ok: false, error })),
  ]
}

/** Why other layouts are refused. */
export const sayingsOfRefusals = (): readonly Saying[] =>
  noRuns.flatMap((changes) => {
    const laid = laidOutOf(changes)
    return laid.ok ? laid.value.refused : []
  })

const requiredOf = (changes: object) => {
  const read = readRun('run', runFile(changes))
  return read.ok ? requireRun('run', read.value) : read
}

const laidOutOf = (changes: object) => {
  const read = readRun('run', runFile(changes))
  return read.ok ? layOutRun('run', read.value, 3) : read
}

const saidOf = (read: Result<unknown, readonly InputProblem[]>): readonly Saying[] =>
  read.ok ? [] : read.error.flatMap(({ expected, found }) => (found === null ? [expected] : [expected, found]))

const noRuns: readonly object[] = [
  { system: 'no-such' },
  { first: { sheet: 'no-such' } },
  { need: null },
  { need: { from: 0, to: 600_000 }, first: { sheet: 'flared-terminal-31', at: -100_000 } },
  { need: { from: 0, to: 600_000 }, reduced: [{ from: 0, to: 600_000, spacing: 'quarter' }], obstructions: [] },
  { second: { sheet: 'bridge-end-31' } },
  { second: { sheet: 'trailing-anchor-27-3-4' } },
  { decision: { postOneAt: 0, panels: [150, 150, 150] } },
  { obstructions: [{ name: 'the culvert', from: '-60 ft', to: '60 ft' }] },
  { obstructions: [{ name: 'the culvert', from: '-90 ft', to: '90 ft' }] },
  { obstructions: [{ name: 'the culvert', from: '2 ft', to: '20 ft' }] },
  { obstructions: [{ name: 'the culvert', from: '2 ft', to: '28 ft' }] },
  {
    obstructions: [
      { name: 'the culvert', from: '2 ft', to: '9 ft 6 in' },
      { name: 'the inlet', from: '30 ft', to: '34 ft' },
    ],
  },
  { obstructions: [{ name: 'the culvert', from: '-54 ft', to: '-50 ft' }] },
  { stock: ['25 ft'], mayExtend: 0 },
  { mayExtend: 0, stock: ['12 ft 6 in'] },
  { reduced: [{ from: '-80 ft', to: '12 ft', spacing: 'half' }], obstructions: [] },
  { reduced: [{ from: '0 ft', to: '12 ft', spacing: 'half' }] },
  { reduced: [{ from: '-50 ft', to: '80 ft', spacing: 'quarter', nested: true }], obstructions: [], mayExtend: 0 },
  {
    obstructions: [],
    first: { standingSplice: { at: 0, position: 'midspan' } },
    second: { standingSplice: { at: 1000, position: 'midspan' } },
  },
  {
    obstructions: [],
    first: { standingSplice: { at: 0, position: 'post' } },
    second: { standingSplice: { at: 1200, position: 'midspan' } },
  },
  { obstructions: [], standing: { postOneAt: -800, panels: [150, 150, 150], postsDriven: 2 } },
  { obstructions: [], standing: { postOneAt: -800, panels: [300, 150, 112.5, 75], postsDriven: 2 } },
  { obstructions: [], standing: { postOneAt: -400, panels: [150, 150, 112.5], postsDriven: 2 } },
]

/** Runs whose flare cannot be staked: inside either end unit, toward a bridge, toward a run that stands, beside a curve. */
const unstaked = [
  'flare inside the units',
  'flare inside the second unit',
  'flare at a bridge',
  'flare at a standing run',
  'flared',
] as const

function unstakedRuns() {
  const curve = [{ length: 1000, curvatureStart: 1 / 500, curvatureEnd: 1 / 500 }]
  const origin = { point: { easting: 0, northing: 0 }, azimuth: 0, station: 6200 }
  return unstaked.map((name) => {
    const road = { horizontal: layAlignment(origin, curve), equations: [], surface: null }
    const found = placeRun('run', requiredRun(runFiles[name]!), { offset: 3, road, unit: 'foot' })
    if (found.ok) throw new Error(`${name} was staked`)
    return found
  })
}
