import type { UnitSystem } from '../core/site/site.ts'
import type { Metres } from '../core/units/quantity.ts'

/** Numbers of a site in the units of its tables. */
export interface SiteLengths {
  /** `141.5 ft` */
  readonly long: (length: Metres) => string
  /** The same without its unit, for the first of a range. */
  readonly bare: (length: Metres) => string
  /** `55 mi/h` */
  readonly speed: (value: number) => string
}

const inSystem = (metre: number, length: string, speed: string): SiteLengths => {
  const bare = (metres: Metres): string => hundredths(metres / metre)
  return { bare, long: (metres) => `${bare(metres)} ${length}`, speed: (value) => `${value} ${speed}` }
}

const systems = { us: inSystem(0.3048, 'ft', 'mi/h'), metric: inSystem(1, 'm', 'km/h') }

export const siteLengths = (units: UnitSystem): SiteLengths => systems[units]

/** At most two decimals, without zeros that say nothing. */
export const hundredths = (value: number): string => String(Number(value.toFixed(2)))
