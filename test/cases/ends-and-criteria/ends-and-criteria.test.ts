import { describe, expect, it } from 'vitest'
import type { FitTopic } from '../../../src/core/fit/fit-saying.ts'
import type { Criteria, EndSheet, LongitudinalSheet } from '../../../src/core/hardware/hardware-sheet.ts'
import { contentOf, nameOf } from '../../../src/core/hardware/sheet-text.ts'
import { remedyOf } from '../../../src/core/verdicts/saying.ts'
import { printProblem } from '../../../src/formats/input-problem.ts'
import { runFromValue } from '../../../src/formats/run/run-file.ts'
import { siteFromValue } from '../../../src/formats/site/read-site.ts'
import { computeNeed } from '../../../src/operations/compute-need.ts'
import { judgeReadings } from '../../../src/operations/judge-readings.ts'
import { requireRun } from '../../../src/operations/require-run.ts'
import { shippedSheets } from '../../../src/sheets/shipped-sheets.ts'
import { english } from '../../../src/words/english.ts'
import { soundReadings } from '../../fixtures/record-inputs.ts'

const run = {
  format: 'lapwise-run/1',
  name: 'Plover Lane fill',
  road: { speed: 60, traffic: 'two-way', opposingReaches: false },
  work: 'new',
  letting: '2024-03-15',
  system: 'w-beam-midspan-31',
  first: { sheet: 'tangent-terminal-31' },
  second: { sheet: 'trailing-anchor-31' },
  need: { from: 0, to: '100 ft' },
}
const road = (changes: object) => ({ road: { ...run.road, ...changes } })

/** The run with everything on it read and right, judged. */
function judged(changes: object) {
  const read = runFromValue('run', { ...run, ...changes })
  if (!read.ok) throw new Error(read.error.map((one) => printProblem(one, english(null))).join('\n'))
  const required = requireRun('run', read.value)
  if (!required.ok) throw new Error(required.error.map((one) => printProblem(one, english(null))).join('\n'))
  const found = judgeReadings('readings', required.value, soundReadings(required.value.requirements))
  if (!found.ok) throw new Error(found.error.map((one) => printProblem(one, english(null))).join('\n'))
  const { judgement } = found.value
  const verdictOf = (id: string) => judgement.verdicts.find(({ requirement }) => requirement === id)?.verdict
  return { ...judgement, acceptance: judgement.acceptance.kind, verdictOf }
}

describe('a run with everything read and right', () => {
  it('is acceptable with a crashworthy end before the traffic', () => {
    expect(judged({}).acceptance).toBe('acceptable')
  })

  it('is not acceptable with a trailing anchor as the end that traffic meets first', () => {
    for (const opposingReaches of [true, false, null]) {
      const found = judged({ first: { sheet: 'trailing-anchor-31' }, ...road({ opposingReaches }) })
      expect(found.acceptance).toBe('not acceptable')
      expect(found.verdictOf('first/crashworthy')).toBe('fails')
      expect(found.findings.map((one) => ({ id: one.id, remedy: english(null).say(remedyOf(one)) }))).toEqual(
        [{ id: 'first/crashworthy', remedy: 'Put a crashworthy terminal at this end.' }].concat(
          opposingReaches === true
            ? [{ id: 'second/crashworthy', remedy: 'Put a crashworthy terminal at this end.' }]
            : [],
        ),
      )
    }
  })

  it.each([
    ['two-way', true, 'fails', 'not acceptable'],
    ['two-way', false, 'meets', 'acceptable'],
    ['two-way', undefined, 'unread', 'not yet known'],
    ['divided', undefined, 'unread', 'not yet known'],
    ['divided', false, 'meets', 'acceptable'],
    [undefined, undefined, 'unread', 'not yet known'],
    ['one-way', undefined, 'meets', 'acceptable'],
    ['one-way', false, 'meets', 'acceptable'],
  ] as const)(
    'with a trailing anchor as its second end on a %s road, opposing traffic reaching it: %s, %s and is %s',
    (traffic, opposingReaches, verdict, acceptance) => {
      const found = judged(road({ traffic, opposingReaches }))
      expect(found.verdictOf('second/crashworthy')).toBe(verdict)
      expect(found.acceptance).toBe(acceptance)
    },
  )

  it.each([
    ['tangent-terminal-31', 'acceptable'],
    // tested to NCHRP 350 only, so not for this letting; but not for its end
    ['flared-terminal-31', 'not acceptable'],
  ])('with %s as its second end it meets whoever can reach it', (sheet, acceptance) => {
    for (const opposingReaches of [true, false, null]) {
      const found = judged({ second: { sheet }, ...road({ opposingReaches }) })
      expect(found.verdictOf('second/crashworthy')).toBe('meets')
      expect(found.acceptance).toBe(acceptance)
    }
  })

  it('has no end of its own where it goes on into a run that stands, and one that meets at a bridge or in a backslope', () => {
    const standing = judged({ first: { standingSplice: { at: -150, position: 'midspan' } } })
    expect(standing.verdictOf('first/crashworthy')).toBeUndefined()
    expect(standing.verdictOf('second/crashworthy')).toBe('meets')
    const bridge = judged({ second: { sheet: 'bridge-end-31', at: '100 ft' }, ...road({ opposingReaches: true }) })
    expect(bridge.verdictOf('second/crashworthy')).toBe('meets')
    const buried = judged({ first: { sheet: 'buried-end-31' } })
    expect(buried.verdictOf('first/crashworthy')).toBe('meets')
  })
})

type Test = readonly [standard: Criteria['standard'], edition: number, testLevel: number]

/** The system's sheet with other tests on it. */
const sheetsTested = (...tests: readonly Test[]) => {
  const system = shippedSheets.find(({ id }) => id === 'w-beam-midspan-31') as LongitudinalSheet
  const criteria = tests.map(([standard, edition, testLevel]) => ({
    ...{ standard, edition, testLevel },
    ...({ source: 'recalled', confirmation: 'published' } as const),
  }))
  return { sheets: [{ ...system, criteria }] }
}

const sheet = (wanted: string) => shippedSheets.find(({ id }) => id === wanted)!
const [anchor, terminal] = [nameOf(sheet('trailing-anchor-31')), nameOf(sheet('tangent-terminal-31'))]
const systemTest = { kind: 'crash test of sheet', sheet: nameOf(sheet('w-beam-midspan-31')) } as const

function fitOf(changes: object, roadChanges: object, barrier: object = {}) {
  const site = {
    format: 'lapwise-site/1',
    units: 'us',
    road: { speed: 65, adt: 8000, traffic: 'two-way', lanes: 2, laneWidth: 12, shoulderWidth: 8, ...roadChanges },
    clearZone: 20,
    hazards: [{ name: 'box', from: 500, to: 520, near: 14, far: 18 }],
    barrier: { offset: 8, approachEnd: 'tangent-terminal-31', departureEnd: 'trailing-anchor-31', ...barrier },
    hardware: { system: 'w-beam-midspan-31', work: 'new', letting: '2024-03-15' },
    ...changes,
  }
  const read = siteFromValue('site', site)
  if (!read.ok) throw new Error(read.error.map((one) => printProblem(one, english(null))).join('\n'))
  const need = computeNeed(read.value)
  if (!need.ok) throw new Error(need.error.kind)
  const verdictOf = (wanted: Partial<FitTopic>) =>
    need.value.checks.find(({ what }) =>
      Object.entries(wanted).every(([field, value]) => contentOf(what[field as 'kind']) === contentOf(value)),
    )?.verdict
  return { verdictOf, run: need.value.run as { road: { opposingReaches: boolean | null } } }
}

describe('design and judging go by one rule of criteria', () => {
  it.each([
    [[['MASH', 2025, 3]], 65, 'meets'],
    [
      [
        ['MASH', 2016, 2],
        ['NCHRP 350', 1993, 3],
      ],
      65,
      'fails',
    ],
    [
      [
        ['MASH', 2016, 2],
        ['NCHRP 350', 1993, 3],
      ],
      45,
      'meets',
    ],
    [[['MASH', 2009, 3]], 65, 'fails'],
    [[['NCHRP 350', 1993, 3]], 65, 'fails'],
  ] as const)('%j at %d mi/h: %s', (criteria, speed, verdict) => {
    const sheets = sheetsTested(...criteria)
    expect(judged({ ...sheets, ...road({ speed }) }).verdictOf('run/criteria')).toBe(verdict)
    expect(fitOf(sheets, { speed }).verdictOf(systemTest)).toBe(verdict)
  })

  // 70 km/h is the speed of level 2's test: 72 km/h, though 45 mi/h, lies above it
  it.each([
    [70, 'meets'],
    [70.1, 'fails'],
    [72, 'fails'],
  ] as const)('MASH level 2 at %d km/h: %s', (speed, verdict) => {
    const sheets = sheetsTested(['MASH', 2016, 2])
    expect(judged({ ...sheets, units: 'metric', ...road({ speed }) }).verdictOf('run/criteria')).toBe(verdict)
    const metric = { units: 'metric', clearZone: 6, hazards: [{ name: 'box', from: 500, to: 520, near: 4, far: 5 }] }
    const found = fitOf(
      { ...sheets, ...metric, runoutLength: 60 },
      { speed, laneWidth: 3.6, shoulderWidth: 2 },
      { offset: 2 },
    )
    expect(found.verdictOf(systemTest)).toBe(verdict)
  })

  it('a run that does not say its speed is unread, but for a level that is enough at every speed', () => {
    const silent = road({ speed: undefined })
    expect(judged(silent).verdictOf('run/criteria')).toBe('meets')
    expect(judged({ ...sheetsTested(['MASH', 2016, 2]), ...silent }).verdictOf('run/criteria')).toBe('unread')
  })

  it('standing work is held to the level for its speed, not to the letting', () => {
    const standing = { work: 'standing', letting: null }
    const found = (level: number, speed: number) =>
      judged({ ...sheetsTested(['NCHRP 350', 1993, level]), ...standing, ...road({ speed }) }).verdictOf('run/criteria')
    expect([found(3, 65), found(2, 45), found(2, 46)]).toEqual(['meets', 'meets', 'fails'])
  })
})

describe('from site to run', () => {
  it('an anchor before the traffic fails already in the design', () => {
    expect(
      fitOf({}, {}, { approachEnd: 'trailing-anchor-31' }).verdictOf({
        kind: 'sheet at end',
        sheet: anchor,
        end: 'approach',
      }),
    ).toBe('fails')
    expect(fitOf({}, {}).verdictOf({ kind: 'sheet at end', sheet: terminal, end: 'approach' })).toBe('meets')
  })

  // The barrier stands 8 ft from the edge and 12 ft farther from the opposing traffic's: 20 ft, on the limit, counts as inside.
  it.each([
    [20, {}, true, 'fails'],
    [19.9, {}, false, 'meets'],
    [20, { traffic: 'one-way' }, false, 'meets'],
    [20, { traffic: 'divided' }, null, 'unread'],
  ] as const)(
    'clear zone %d ft, %j: opposing traffic reaches the departure end: %s',
    (clearZone, roadIs, reaches, verdict) => {
      const found = fitOf({ clearZone }, roadIs)
      expect(found.run.road.opposingReaches).toBe(reaches)
      expect(found.verdictOf({ kind: 'sheet at end', sheet: anchor, end: 'departure' })).toBe(verdict)
    },
  )
})

it('the shipped sheets say of every end whether it is crashworthy as the trade does', () => {
  const ends = shippedSheets.filter((sheet): sheet is EndSheet => sheet.kind !== 'longitudinal')
  expect(ends.filter(({ crashworthy }) => !crashworthy).map(({ kind }) => kind)).toEqual(
    ends.filter(({ kind }) => kind === 'trailing anchor').map(({ kind }) => kind),
  )
  expect(ends.length).toBeGreaterThan(5)
})
