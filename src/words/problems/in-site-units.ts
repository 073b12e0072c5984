import type { UnitSystem } from '../../core/site/site.ts'
import type { Metres } from '../../core/units/quantity.ts'

/** `12.5 ft`, `3.81 m`: a length as the file of a site states lengths, to a thousandth. */
export function siteLength(length: Metres, units: UnitSystem): string {
  const value = units === 'us' ? length / 0.3048 : length
  return `${Number(value.toFixed(3)) + 0} ${units === 'us' ? 'ft' : 'm'}`
}

export const siteSpeed = (value: number, units: UnitSystem): string => `${value} ${units === 'us' ? 'mi/h' : 'km/h'}`
