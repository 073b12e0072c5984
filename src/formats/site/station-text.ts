import { endStation } from '../../core/alignment/horizontal-alignment.ts'
import { meaningsOf } from '../../core/alignment/station-equations.ts'
import type { SiteAlignment, UnitSystem } from '../../core/site/site.ts'
import { toMetres } from '../../core/units/exact-length.ts'
import { feet, type Metres, metres } from '../../core/units/quantity.ts'
import { parseStation } from '../../core/units/station.ts'
import type { ProblemSaying } from '../../words/problems/problem-saying.ts'
import { type InputProblem, written } from '../input-problem.ts'
import { lengthFault } from '../range/range-faults.ts'

/** A problem whose file is named by the caller. */
export type Fault = Omit<InputProblem, 'file'>

/** A number is a continuous station in ft or m, a text is what stands on the stakes. */
export type StationText = number | string

/** What a station text says in m, before station equations; a text that is none is reported, and 0 returned. */
export function writtenStation(stated: StationText, units: UnitSystem, place: string, faults: Fault[]): Metres {
  if (typeof stated === 'number') return units === 'us' ? feet(stated) : metres(stated)
  const parsed = parseStation(stated, units)
  const beyond = parsed.ok ? lengthFault('station', toMetres(parsed.value)) : null
  if (parsed.ok && beyond === null) return toMetres(parsed.value)
  const expected: ProblemSaying = parsed.ok
    ? beyond!
    : { kind: 'a station as', as: units === 'us' ? '12+37.50' : '1+237.500', not: parsed.error }
  faults.push({ place, expected, found: written(stated) })
  return 0
}

/** Reads stations on `alignment`: the one continuous station that a text means, or a fault that says why there is none. */
export function stationReader(units: UnitSystem, alignment: SiteAlignment, faults: Fault[]) {
  return (stated: StationText, place: string): Metres => {
    const before = faults.length
    const value = writtenStation(stated, units, place, faults)
    if (alignment.kind !== 'elements' || faults.length > before) return value
    const { horizontal, equations } = alignment
    const reaches = (station: Metres) =>
      station >= horizontal.startStation - 1e-6 && station <= endStation(horizontal) + 1e-6
    const meanings =
      typeof stated === 'number' ? [value] : meaningsOf(equations, value).map((meaning) => meaning.internal)
    const places = meanings.filter(reaches)
    if (places.length === 1) return places[0]!
    const long = (station: Metres) => Number((units === 'us' ? station / 0.3048 : station).toFixed(3))
    const expected: ProblemSaying =
      places.length === 0
        ? { kind: 'station on alignment', from: long(horizontal.startStation), to: long(endStation(horizontal)) }
        : { kind: 'one place', places: places.map(long) }
    faults.push({ place, expected, found: written(stated) })
    return value
  }
}
