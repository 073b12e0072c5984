import { nearestSteps, printDecimal } from './decimal-text.ts'
import { type Nanometres, nanometresPer } from './exact-length.ts'

/**
 * - `inches`: `27 3/4 in`
 * - `feet-inches`: `9 ft 4 1/2 in`; `9 in` under one foot
 * - `feet-inches-short`: `9' 4 1/2"`, for drawings; `9"` under one foot
 * - `decimal-feet`, `millimetres`, `metres`: `141.50 ft`, `787 mm`, `0.706 m`
 */
export type LengthStyle = 'inches' | 'feet-inches' | 'feet-inches-short' | 'decimal-feet' | 'millimetres' | 'metres'

export interface LengthPrintOptions {
  /** Decimals of the decimal styles; hundredths of a foot, millimetres when absent (common practice). */
  readonly decimals?: number
}

/**
 * `length` as text in `style`, which `parseLength` reads back.
 *
 * Inch styles are exact on 1/64 in, with the fraction reduced; any other length is rounded to the nearest 1/16 in.
 * Decimal styles round to their decimals. Halves go away from zero, and rounding comes before the split into feet,
 * inches and fraction, so 11.99 in prints as `1 ft 0 in`.
 */
export function printLength(length: Nanometres, style: LengthStyle, options: LengthPrintOptions = {}): string {
  switch (style) {
    case 'inches':
      return printInches(length)
    case 'feet-inches':
      return printFeetInches(length, ' ft', ' in')
    case 'feet-inches-short':
      return printFeetInches(length, "'", '"')
    case 'decimal-feet':
      return `${printDecimal(length, 'ft', options.decimals ?? 2)} ft`
    case 'millimetres':
      return `${printDecimal(length, 'mm', options.decimals ?? 0)} mm`
    case 'metres':
      return `${printDecimal(length, 'm', options.decimals ?? 3)} m`
    default:
      return style satisfies never
  }
}

function printInches(length: Nanometres): string {
  const sixtyFourths = nearestSixtyFourths(length)
  return `${signOf(sixtyFourths)}${mixedNumber(Math.abs(sixtyFourths))} in`
}

/** With a foot or more, the inches keep their 0 (`6 ft 0 3/4 in`), so that a fraction is never read as one of feet. */
function printFeetInches(length: Nanometres, foot: string, inch: string): string {
  const sixtyFourths = nearestSixtyFourths(length)
  const size = Math.abs(sixtyFourths)
  const feet = Math.floor(size / (12 * 64))
  if (feet === 0) return `${signOf(sixtyFourths)}${mixedNumber(size)}${inch}`
  const rest = size % (12 * 64)
  const inches = rest > 0 && rest < 64 ? `0 ${mixedNumber(rest)}` : mixedNumber(rest)
  return `${signOf(sixtyFourths)}${feet}${foot} ${inches}${inch}`
}

/** `length` in 1/64 in: exactly if it lies on one, otherwise the nearest 1/16 in. */
function nearestSixtyFourths(length: Nanometres): number {
  const isOnLattice = length % (nanometresPer.in / 64) === 0
  return isOnLattice ? Number(nearestSteps(length, 'in', 64n)) : 4 * Number(nearestSteps(length, 'in', 16n))
}

const signOf = (value: number): string => (value < 0 ? '-' : '')

/** `sixtyFourths` >= 0 as whole number and reduced fraction: 48 is `3/4`, 80 is `1 1/4`, 0 is `0`. */
function mixedNumber(sixtyFourths: number): string {
  const whole = Math.floor(sixtyFourths / 64)
  let numerator = sixtyFourths % 64
  if (numerator === 0) return `${whole}`
  let denominator = 64
  while (numerator % 2 === 0) {
    numerator /= 2
    denominator /= 2
  }
  return `${whole === 0 ? '' : `${whole} `}${numerator}/${denominator}`
}
