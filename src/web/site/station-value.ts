import { exactLength, lengthIn } from '../../core/units/exact-length.ts'
import { parseStation, printStation } from '../../core/units/station.ts'

type UnitSystem = 'us' | 'metric'

const unitOf = (units: UnitSystem): 'ft' | 'm' => (units === 'us' ? 'ft' : 'm')

/** A station of the draft in ft or m; null where it is none. */
export function stationNumber(value: unknown, units: UnitSystem): number | null {
  if (typeof value === 'number') return value
  const parsed = parseStation(String(value), units)
  return parsed.ok ? lengthIn(parsed.value, unitOf(units)) : null
}

/** A station in ft or m written as `like` was: as a number, or as on the stakes. */
export function stationLike(like: unknown, station: number, units: UnitSystem): number | string {
  if (typeof like !== 'string') return station
  const isWhole = Math.abs(station - Math.round(station)) < 1e-4
  return printStation(exactLength(station, unitOf(units)), units, isWhole ? 0 : 2)
}
