import { writtenStations } from '../../../core/alignment/station-equations.ts'
import type { Site, UnitSystem } from '../../../core/site/site.ts'
import { exactLength } from '../../../core/units/exact-length.ts'
import type { Metres } from '../../../core/units/quantity.ts'
import { printStation } from '../../../core/units/station.ts'

export const inUnit = (length: Metres, units: UnitSystem): number => (units === 'us' ? length / 0.3048 : length)

/** A length as drawings of a site write it: hundredths, without zeros that say nothing; `166.67 ft`, `12 ft`, `3.65 m`. */
export const lengthWords = (length: Metres, units: UnitSystem): string =>
  `${Number(inUnit(length, units).toFixed(2)) + 0} ${units === 'us' ? 'ft' : 'm'}`

/** What stands on the stakes at a continuous station; both stations at an equation. */
export function stationWords(site: Site, station: Metres): string {
  const { alignment } = site.road
  const written = alignment.kind === 'elements' ? writtenStations(alignment.equations, station) : [station]
  return written.map((one) => plainStation(one, site.units)).join(' = ')
}

function plainStation(station: Metres, units: UnitSystem): string {
  const value = inUnit(station, units)
  const isWhole = Math.abs(value - Math.round(value)) < 1e-4
  return printStation(exactLength(station, 'm'), units, isWhole ? 0 : 2)
}

/** `a`, `a and b`, `a, b and c`. */
export const listed = (names: readonly string[]): string =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`

/** `6,400`. */
const thousands = (count: number): string => {
  const [whole, ...parts] = `${count}`.split('.')
  return [whole!.replace(/\B(?=(\d{3})+$)/g, ','), ...parts].join('.')
}

/** Road and traffic in one line. */
export function roadWords(site: Site): string {
  const { road, units } = site
  const speed = `${road.speed} ${units === 'us' ? 'mi/h' : 'km/h'}`
  const lanes = `${road.lanes} ${road.lanes === 1 ? 'lane' : 'lanes'} of ${lengthWords(road.laneWidth, units)}`
  const volume = `${thousands(road.adt)} vehicles a day`
  return `Design speed ${speed}, ${volume}, ${road.traffic}, ${lanes}, shoulder ${lengthWords(road.shoulderWidth, units)}`
}
