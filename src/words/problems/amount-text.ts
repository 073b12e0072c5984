import { inBothUnits } from '../in-both-units.ts'
import type { Print } from '../print.ts'

/** `9.9375 in`, `95 mi/h`, `14`: to four decimals, a length in the units of `print` as well. */
export function amountText(value: number, unit: string, { units }: Print): string {
  const text = `${Number(value.toFixed(4))}${unit === '' ? '' : ` ${unit}`}`
  return units === null ? text : inBothUnits(text, units)
}
