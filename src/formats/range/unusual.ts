import type { Reading } from '../../core/measurement/reading.ts'
import type { Requirement } from '../../core/requirements/requirement.ts'
import type { Site, UnitSystem } from '../../core/site/site.ts'
import { kindOf, stepsPer, type Unit, valueIn } from '../../core/units/quantity-kinds.ts'
import type { ProblemSaying } from '../../words/problems/problem-saying.ts'
import type { RunFile } from '../run/run-file.ts'
import { type LengthRangeName, lengthRanges, type RangeName, ranges } from './ranges.ts'
import { readingRange } from './reading-range.ts'

/** A value that is read and is seldom right: somebody should look at it again. It stands in the record. */
export type Unusual = Omit<Extract<ProblemSaying, { readonly kind: 'unusual' }>, 'kind'>

/** What is unusual in a run file, in the order of the file. */
export function unusualInRun({
  units,
  road,
  flare,
  stock,
  standing,
  decision,
  decisionRule,
  instruments,
}: RunFile): readonly Unusual[] {
  const speed = units === 'us' ? 'mi/h' : 'km/h'
  const panels = [
    ...(stock ?? []).map(({ inches }, i) => [`stock[${i}]`, inches] as const),
    ...(standing?.panels ?? []).map((inches, i) => [`standing.panels[${i}]`, inches] as const),
    ...(decision?.panels ?? []).map((inches, i) => [`decision.panels[${i}]`, inches] as const),
  ]
  return [
    ...outside('speed', 'road.speed', road.speed, speed, units),
    ...outside('flareRate', 'flare.rate', flare?.rate ?? null, '', units),
    ...panels.flatMap(([place, inches]) => outside('panel', place, inches, 'in', units)),
    ...(decisionRule.kind === 'guard band'
      ? outside('guardBand', 'decisionRule.multiple', decisionRule.multiple, '', units)
      : []),
    ...instruments.flatMap(({ standardUncertainty, readTo, unit }, i) => {
      return [
        ...doubtOutside('uncertainty', `instruments[${i}].standardUncertainty`, standardUncertainty, unit),
        ...doubtOutside('resolution', `instruments[${i}].readTo`, readTo, unit),
      ]
    }),
  ]
}

/** What is unusual in a site, in the order of its file. */
export function unusualInSite(site: Site): readonly Unusual[] {
  const { units, road, barrier, hardware, clearZone } = site
  const unit = units === 'us' ? 'ft' : 'm'
  const rounded = (value: number): number => Number((units === 'us' ? value / 0.3048 : value).toFixed(9))
  const long = (range: RangeName, place: string, value: number | null): readonly Unusual[] =>
    outside(range, place, value === null ? null : rounded(value), unit, units)
  const plain = (range: RangeName, place: string, value: number | null): readonly Unusual[] =>
    outside(range, place, value, '', units)
  const { ground } = hardware
  const curb = hardware.curb === 'none' ? null : hardware.curb
  return [
    ...outside('speed', 'road.speed', road.speed, units === 'us' ? 'mi/h' : 'km/h', units),
    ...plain('adt', 'road.adt', road.adt),
    ...plain('lanes', 'road.lanes', road.lanes),
    ...long('laneWidth', 'road.laneWidth', road.laneWidth),
    ...long('shoulderWidth', 'road.shoulderWidth', road.shoulderWidth),
    ...long('medianWidth', 'road.medianWidth', road.medianWidth),
    ...(road.alignment.kind === 'curve' ? long('radius', 'road.alignment.radius', road.alignment.radius) : []),
    ...(clearZone.kind === 'width'
      ? long('clearZone', 'clearZone', clearZone.width)
      : plain('slopeRun', `clearZone.${clearZone.slope}`, clearZone.run)),
    ...long('runoutLength', 'runoutLength', site.runoutLength),
    ...long('shyLine', 'shyLine', site.shyLine),
    ...plain('flareRate', 'flareLimits.inside', site.flareLimits?.inside ?? null),
    ...plain('flareRate', 'flareLimits.beyond', site.flareLimits?.beyond ?? null),
    ...site.hazards.flatMap(({ near, far }, i) => [
      ...long('lateral', `hazards[${i}].near`, near),
      ...long('lateral', `hazards[${i}].far`, far),
    ]),
    ...long('barrierOffset', 'barrier.offset', barrier.offset),
    ...plain('flareRate', 'barrier.flare.rate', barrier.flare?.rate ?? null),
    ...long('parallelLength', 'barrier.flare.parallelLength', barrier.flare?.parallelLength ?? null),
    ...lengthOutside('railHeight', 'hardware.adjoining.railHeight', hardware.adjoining?.railHeight ?? null),
    ...plain('slopeRun', 'hardware.ground.platformSlope', ground.platformSlope),
    ...(['behindPostOne', 'recoveryLength', 'recoveryWidth', 'breakBehindPost'] as const).flatMap((name) =>
      long('groundLength', `hardware.ground.${name}`, ground[name]),
    ),
    ...plain('slopeRun', 'hardware.ground.besideSlope', ground.besideSlope),
    ...plain('slopeRun', 'hardware.ground.slopeBehind', ground.slopeBehind),
    ...lengthOutside('curbHeight', 'hardware.curb.height', curb?.height ?? null),
    ...plain('slopeRun', 'hardware.curb.faceSlope', curb?.faceSlope ?? null),
    ...lengthOutside('curbToRail', 'hardware.curb.toRail', curb?.toRail ?? null),
  ]
}

/** What is unusual among readings, in their order: a value far from all limits, a step or doubt that decides nothing. */
export function unusualInReadings(
  readings: readonly Reading[],
  requirements: readonly Requirement[],
): readonly Unusual[] {
  const required = new Map(requirements.map((requirement) => [requirement.id, requirement]))
  return readings.flatMap(({ id, of, answer, uncertainty }) => {
    const place = `${id} (${of})`
    const own =
      uncertainty === null
        ? []
        : doubtOutside('uncertainty', `${place} uncertainty`, uncertainty.value, uncertainty.unit)
    if (answer.kind !== 'measured') return own
    const { value, unit, resolution } = answer
    const requirement = required.get(of)
    const usual = requirement === undefined ? null : (readingRange(requirement)?.usual ?? null)
    const inUnit = (steps: number): number => valueIn(steps, unit)
    const isFar = usual !== null && (value < usual[0] || value > usual[1])
    return [
      ...(isFar ? [{ place, value: inUnit(value), unit, low: inUnit(usual[0]), high: inUnit(usual[1]) }] : []),
      ...(resolution === null ? [] : doubtOutside('resolution', `${place} resolution`, inUnit(resolution), unit)),
      ...own,
    ]
  })
}

function outside(
  range: RangeName,
  place: string,
  value: number | null,
  unit: string,
  units: UnitSystem,
): readonly Unusual[] {
  const usual = ranges[range].usual?.[units]
  if (value === null || usual === undefined) return []
  const [low, high] = usual
  return value < low || value > high ? [{ place, value, unit, low, high }] : []
}

/** Of lengths alone is it known what steps and doubts are usual. */
const doubtOutside = (
  range: Extract<LengthRangeName, 'uncertainty' | 'resolution'>,
  place: string,
  value: number,
  unit: Unit,
): readonly Unusual[] => (kindOf(unit) === 'length' ? lengthOutside(range, place, (value * stepsPer(unit)) / 1e9) : [])

function lengthOutside(range: LengthRangeName, place: string, metres: number | null): readonly Unusual[] {
  const { usual } = lengthRanges[range]
  if (metres === null || usual === null) return []
  const [low, high] = usual
  return metres < low || metres > high ? [{ place, value: metres, unit: 'm', low, high }] : []
}
