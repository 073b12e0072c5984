import { writtenStations } from '../../../core/alignment/station-equations.ts'
import type { Site, UnitSystem } from '../../../core/site/site.ts'
import { exactLength } from '../../../core/units/exact-length.ts'
import type { Metres } from '../../../core/units/quantity.ts'
import { printStation } from '../../../core/units/station.ts'
import { siteWords } from '../../words/site-words.ts'
import type { SiteView } from './site-view.ts'

export const inUnit = (length: Metres, units: UnitSystem): number => (units === 'us' ? length / 0.3048 : length)

/** A length as drawings of a site write it: hundredths, without zeros that say nothing; `166.67 ft`, `12 ft`, `3.65 m`. */
export const lengthWords = (length: Metres, units: UnitSystem): string =>
  `${Number(inUnit(length, units).toFixed(2)) + 0} ${unitOf(units)}`

const unitOf = (units: UnitSystem): 'ft' | 'm' => (units === 'us' ? 'ft' : 'm')

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

/** `6,400`. */
const thousands = (count: number): string => {
  const [whole, ...parts] = `${count}`.split('.')
  return [whole!.replace(/\B(?=(\d{3})+$)/g, ','), ...parts].join('.')
}

/** Road and traffic in one line. */
export function roadWords(view: SiteView): string {
  const { road, units } = view.site
  return siteWords(view.print).road(
    `${road.speed} ${units === 'us' ? 'mi/h' : 'km/h'}`,
    thousands(road.adt),
    road.traffic,
    road.lanes,
    saidLength(road.laneWidth, view),
    saidLength(road.shoulderWidth, view),
  )
}

type Saying = Pick<SiteView, 'site' | 'print'>

/** A length within a sentence, in both systems where the other one is asked for. */
export const saidLength = (length: Metres, { site, print }: Saying): string =>
  print.written(lengthWords(length, site.units), inUnit(length, site.units), unitOf(site.units))

/** A length where there is room for one, as at a dimension line. */
export const shortLength = (length: Metres, { site, print }: Saying): string =>
  print.short.written(lengthWords(length, site.units), inUnit(length, site.units), unitOf(site.units))
