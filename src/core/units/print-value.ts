import type { OtherUnit } from './quantity-kinds.ts'

/**
 * A value that is no length, in its unit: `2.5 %`, `15°`, `25 lbf·ft`, and `8` for a count.
 * @param decimals  how many; none that are zero at the end, and at most six, where it is left out
 */
export function printValue(value: number, unit: OtherUnit, decimals?: number): string {
  const number = decimals === undefined ? `${Number(value.toFixed(6)) + 0}` : value.toFixed(decimals)
  return unit === 'count' ? number : unit === '°' ? `${number}°` : `${number} ${unit}`
}
