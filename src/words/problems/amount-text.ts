import { isUnit } from '../../core/units/quantity-kinds.ts'
import type { Print } from '../print.ts'

/** `9.9375 in`, `95 mi/h`, `14`: to four decimals, a length in the units of `print` as well. */
export function amountText(value: number, unit: string, print: Print): string {
  const text = `${Number(value.toFixed(4))}${unit === '' ? '' : ` ${unit}`}`
  return isUnit(unit) ? print.written(text, value, unit) : text
}
