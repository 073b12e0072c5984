import { type Draft, itemsAt, unitsOf, valueAt, withValue } from '../form/draft.ts'
import { stationLike, stationNumber } from './station-value.ts'

type UnitSystem = 'us' | 'metric'

const metresPerFoot = 0.3048
const kilometresPerMile = 1.609344
const millimetresPerInch = 25.4

/**
 * The draft in the other units: lengths rounded to hundredths of the new unit, small ones to tenths, the speed to the
 * next multiple of 5 mi/h or 10 km/h (our judgement). What is no number stays as it is written. The elements of an
 * alignment are not rounded, so that they still meet.
 */
export function inUnits(draft: Draft, to: UnitSystem): Draft {
  const from = unitsOf(draft)
  if (from === to) return draft
  const factor = (metricPerUs: number): number => (to === 'metric' ? metricPerUs : 1 / metricPerUs)
  const rounded = (metricPerUs: number, step: number) => (value: number) =>
    Number((Math.round((value * factor(metricPerUs)) / step) * step).toFixed(4))
  let next = withValue(draft, 'units', to)
  const change = (places: readonly string[], convert: (value: number) => number): void => {
    for (const place of places) {
      const value = valueAt(next, place)
      if (typeof value === 'number') next = withValue(next, place, convert(value))
    }
  }
  change(lengthPlaces(draft), rounded(metresPerFoot, 0.01))
  change(smallPlaces, rounded(millimetresPerInch, 0.1))
  change(['road.speed'], rounded(kilometresPerMile, to === 'metric' ? 10 : 5))
  change(elementPlaces(draft), (value) => value * factor(metresPerFoot))
  const isSurvey = valueAt(draft, `${alignment}.foot`) === 'US survey'
  change(coordinatePlaces(draft), (value) => value * factor(isSurvey ? 1200 / 3937 : metresPerFoot))
  for (const place of stationPlaces(draft)) {
    const written = valueAt(next, place)
    const station = stationNumber(written, from)
    if (station !== null) next = withValue(next, place, stationLike(written, rounded(metresPerFoot, 0.01)(station), to))
  }
  return next
}

const smallPlaces = ['hardware.curb.height', 'hardware.curb.toRail', 'hardware.adjoining.railHeight']

const lengthPlaces = (draft: Draft): readonly string[] => [
  ...['laneWidth', 'shoulderWidth', 'medianWidth', 'alignment.radius'].map((name) => `road.${name}`),
  ...['clearZone', 'runoutLength', 'shyLine', 'barrier.offset', 'barrier.flare.parallelLength'],
  ...['behindPostOne', 'recoveryLength', 'recoveryWidth', 'breakBehindPost'].map((name) => `hardware.ground.${name}`),
  ...itemsAt(draft, 'hazards').flatMap((_, i) => [`hazards[${i}].near`, `hazards[${i}].far`]),
]

const alignment = 'road.alignment'

const elementPlaces = (draft: Draft): readonly string[] =>
  itemsAt(draft, `${alignment}.elements`).flatMap((_, i) =>
    ['length', 'radius', 'radiusStart', 'radiusEnd'].map((name) => `${alignment}.elements[${i}].${name}`),
  )

const coordinatePlaces = (draft: Draft): readonly string[] =>
  [alignment, ...itemsAt(draft, `${alignment}.elements`).map((_, i) => `${alignment}.elements[${i}]`)].flatMap(
    (place) => ['easting', 'northing'].map((name) => `${place}.start.${name}`),
  )

const stationPlaces = (draft: Draft): readonly string[] => [
  ...['hazards', 'driveways'].flatMap((list) =>
    itemsAt(draft, list).flatMap((_, i) => [`${list}[${i}].from`, `${list}[${i}].to`]),
  ),
  ...(valueAt(draft, `${alignment}.start.station`) === undefined ? [] : [`${alignment}.start.station`]),
  ...itemsAt(draft, `${alignment}.stationEquations`).flatMap((_, i) =>
    ['back', 'ahead'].map((name) => `${alignment}.stationEquations[${i}].${name}`),
  ),
]
