import { exactValue, kindOf, type Unit, valueIn } from '../core/units/quantity-kinds.ts'
import type { Print } from './print.ts'

type System = NonNullable<Print['units']>

/**
 * The value in `units`: `787.4 mm` of 31 in. Exact where that takes few decimals (27 3/4 in is 704.85 mm), else rounded. Null where
 * it is published in them already, or in what both systems have alike, as a slope.
 */
export function inUnits(value: number, unit: Unit, units: Print['units']): string | null {
  const other = units === null ? null : unitIn(unit, units)
  if (other === null || other === unit) return null
  const there = valueIn(exactValue(value, unit), other)
  return kindOf(unit) === 'length'
    ? lengthThere(there, other)
    : `${plain(there, other === 'lbf' ? 0 : other === 'kN' ? 3 : 1)} ${other}`
}

/** In which unit of `units` a value of this one is said; null for what both systems have alike. */
export const unitIn = (unit: Unit, units: System): Unit | null =>
  unit in unitsIn ? unitsIn[unit as Sided][units] : null

type Sided = keyof typeof unitsIn

const unitsIn = {
  in: { us: 'in', metric: 'mm' },
  ft: { us: 'ft', metric: 'm' },
  mm: { us: 'in', metric: 'mm' },
  m: { us: 'ft', metric: 'm' },
  lbf·ft: { us: 'lbf·ft', metric: 'N·m' },
  N·m: { us: 'lbf·ft', metric: 'N·m' },
  lbf: { us: 'lbf', metric: 'kN' },
  kN: { us: 'lbf', metric: 'kN' },
} as const satisfies Partial<Record<Unit, Readonly<Record<System, Unit>>>>

/** Millimetres below 1 m, metres above; inches below 10 ft, feet above. */
function lengthThere(value: number, unit: Unit): string {
  switch (unit) {
    case 'mm':
      return Math.abs(value) < 1000 ? `${fewest(value, 2, 1)} mm` : `${fewest(value / 1000, 4, 3)} m`
    case 'm':
      return Math.abs(value) < 1 ? `${fewest(value * 1000, 2, 1)} mm` : `${fewest(value, 4, 3)} m`
    case 'in':
      return Math.abs(value) < 120 ? `${plain(value, 2)} in` : `${plain(value / 12, 2)} ft`
    default:
      return Math.abs(value) < 10 ? `${plain(value * 12, 2)} in` : `${plain(value, 2)} ft`
  }
}

/** Exact with at most `most` decimals, else rounded to `fewer`. */
function fewest(value: number, most: number, fewer: number): string {
  const isExact = Math.abs(value - Number(value.toFixed(most))) < 1e-9
  return plain(value, isExact ? most : fewer)
}

const plain = (value: number, decimals: number): string => String(Number(value.toFixed(decimals)) + 0)
