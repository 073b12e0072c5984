import { describe, expect, test } from 'vitest'
import { hardwareNotSaid } from '../../../test/fixtures/hardware-not-said.ts'
import type { Site, UnitSystem } from '../site/site.ts'
import { feet } from '../units/quantity.ts'
import { clearZoneWidth } from './clear-zone.ts'
import { type Findings, flareLimits, runoutLength, shyLine } from './look-up.ts'
import { designTables } from './tables/design-tables.ts'

const site = (units: UnitSystem, speed: number, adt: number, more: Partial<Site> = {}): Site => ({
  units,
  edition: 'rdg-2011',
  interpolateSpeeds: false,
  runoutOnCurves: 'edge',
  road: {
    speed,
    adt,
    traffic: 'two-way',
    lanes: 2,
    laneWidth: 3.6,
    shoulderWidth: 2.4,
    medianWidth: null,
    alignment: { kind: 'straight' },
  },
  clearZone: { kind: 'slope', slope: 'foreslope', run: 6, take: 'high' },
  runoutLength: null,
  shyLine: null,
  flareLimits: null,
  side: 'right',
  hazards: [{ name: 'headwall', from: 0, to: 10, near: 3, far: 6, beyondClearZone: false }],
  barrier: { offset: 2.5, flare: null, approachEnd: null, departureEnd: null },
  driveways: [],
  hardware: hardwareNotSaid,
  sheets: [],
  ...more,
})

/** The value in the table's unit, the cells used and the kinds of the notes; or the refusal. */
function runout(of: Site) {
  const findings: Findings = { found: [], notes: [] }
  const value = runoutLength(of, designTables(of.edition, of.units), findings)
  if (!value.ok) return value.error
  return {
    value: inTable(of, value.value),
    cells: findings.found.map((cell) => cell.value),
    notes: findings.notes.map((n) => n.kind),
  }
}

function zone(of: Site, outsideRadius: number | null = null) {
  const findings: Findings = { found: [], notes: [] }
  const value = clearZoneWidth(of, designTables(of.edition, of.units), outsideRadius, findings)
  return value.ok ? inTable(of, value.value) : value.error
}

const inTable = (of: Site, length: number) => Math.round((of.units === 'us' ? length / 0.3048 : length) * 1e9) / 1e9

describe('the runout length', () => {
  test('changes class where the volume passes the limit: "above 10,000" does not hold 10,000, the others hold theirs', () => {
    const at = (adt: number) => runout(site('us', 60, adt))
    expect([999, 1000, 4999, 5000, 10_000, 10_001].map((adt) => at(adt))).toEqual(
      [200, 210, 210, 250, 250, 300].map((value) => ({ value, cells: [value], notes: [] })),
    )
  })

  test('the older edition has its own classes and its own metric table', () => {
    const old = (units: UnitSystem, speed: number, adt: number) => {
      const found = runout(site(units, speed, adt, { edition: 'rdg-2006' }))
      return 'value' in found ? found.value : found
    }
    expect([799, 800, 2000, 6000, 6001].map((adt) => old('us', 60, adt))).toEqual([330, 345, 400, 400, 425])
    expect([799, 800, 2000, 6000, 6001].map((adt) => old('metric', 100, adt))).toEqual([100, 105, 120, 120, 130])
  })

  test('metric rows are those of the metric table, not conversions', () => {
    expect(runout(site('metric', 100, 12_000))).toMatchObject({ value: 91 })
    expect(runout(site('metric', 130, 500))).toMatchObject({ value: 101 })
  })

  test('between two speeds it is interpolated if the site says so, else that of the next higher speed', () => {
    expect(runout(site('us', 55, 4750))).toEqual({ value: 210, cells: [210], notes: ['next-higher-speed'] })
    expect(runout(site('us', 55, 4750, { interpolateSpeeds: true }))).toEqual({
      value: 185,
      cells: [160, 210],
      notes: ['interpolated-speed'],
    })
    expect(runout(site('us', 60, 4750, { interpolateSpeeds: true }))).toEqual({ value: 210, cells: [210], notes: [] })
    expect(runout(site('us', 25, 4750, { interpolateSpeeds: true }))).toEqual({
      value: 80,
      cells: [80],
      notes: ['next-higher-speed'],
    })
  })

  test('above the table there is none, unless the site gives one', () => {
    expect(runout(site('us', 81, 4750))).toMatchObject({
      kind: 'speed-above-table',
      highest: 80,
      instead: 'runoutLength',
    })
    expect(runout(site('us', 71, 4750, { edition: 'rdg-2006' }))).toMatchObject({ highest: 70 })
    expect(runout(site('us', 81, 4750, { runoutLength: feet(500) }))).toEqual({
      value: 500,
      cells: [],
      notes: ['runout-length-given'],
    })
  })
})

describe('the clear zone', () => {
  test('falls into the columns of the table, between columns on the wide side', () => {
    const fore = (run: number) =>
      zone(site('us', 60, 3000, { clearZone: { kind: 'slope', slope: 'foreslope', run, take: 'low' } }))
    expect([10, 6, 5.9, 5, 4].map(fore)).toEqual([26, 26, 32, 32, 32])
    expect(fore(3.9)).toMatchObject({ kind: 'slope-not-tabulated', steepest: 4 })
    const back = (run: number) =>
      zone(site('us', 60, 3000, { clearZone: { kind: 'slope', slope: 'backslope', run, take: 'high' } }))
    expect([3, 3.1, 5, 5.1, 6].map(back)).toEqual([18, 22, 22, 26, 26])
    expect(back(2.9)).toMatchObject({ kind: 'slope-not-tabulated', steepest: 3 })
  })

  test('takes the block of the speed or the next higher one, and the row of the volume', () => {
    const at = (speed: number, adt: number) => zone(site('us', speed, adt))
    expect([at(40, 749), at(41, 749), at(50, 750), at(55, 1500), at(60, 6000), at(70, 6001)]).toEqual([
      10, 12, 16, 22, 30, 34,
    ])
    expect(at(71, 100)).toMatchObject({ kind: 'speed-above-table', highest: 70, instead: 'clearZone' })
  })

  test('is multiplied by the curve factor of the next smaller radius and the next higher speed', () => {
    const at = (speed: number, radius: number) => zone(site('us', speed, 3000), feet(radius))
    const straight = (speed: number) => zone(site('us', speed, 3000)) as number
    const factor = (speed: number, radius: number) =>
      Number(((at(speed, radius) as number) / straight(speed)).toFixed(6))
    expect([factor(60, 2951), factor(60, 2950), factor(60, 2000), factor(60, 1000), factor(58, 985)]).toEqual([
      1, 1.2, 1.3, 1.5, 1.5,
    ])
    expect(at(60, 984)).toMatchObject({ kind: 'curve-factor-outside-table', smallest: feet(985) })
    expect(at(40, 329)).toMatchObject({ kind: 'curve-factor-outside-table', smallest: feet(330) })
    expect(zone(site('us', 60, 3000, { clearZone: { kind: 'width', width: feet(30) } }), feet(400))).toBe(30)
    expect(zone(site('metric', 100, 3000), 400)).toBeCloseTo(9 * 1.4, 9)
  })
})

test('shy line and flare limits take the next higher speed and end with their tables', () => {
  const look = (speed: number) => {
    const findings: Findings = { found: [], notes: [] }
    const of = site('us', speed, 3000)
    const tables = designTables('rdg-2011', 'us')
    const shy = shyLine(of, tables, findings)
    return [shy && inTable(of, shy), flareLimits(of, tables, findings), findings.notes.map((n) => n.kind)]
  }
  expect(look(60)).toEqual([8, { inside: 26, beyond: 14 }, []])
  expect(look(46)).toEqual([6.5, { inside: 21, beyond: 11 }, []])
  expect(look(75)).toEqual([10, null, ['flare-limit-not-tabulated']])
  expect(look(81)).toEqual([null, null, ['shy-line-not-tabulated', 'flare-limit-not-tabulated']])
})
