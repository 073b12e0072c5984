import { err, ok, type Result } from '../result.ts'
import { type LengthUnit, type Nanometres, nanometresPer } from './exact-length.ts'

/** An exact number, not reduced: `27.50` is 2750/100, so the denominator still tells what the last place is worth. */
export interface Ratio {
  readonly numerator: bigint
  readonly denominator: bigint
}

/**
 * The number written in `text`, exactly.
 * @param text digits with at most one point among or before them: `27`, `27.75`, `.5`
 */
export function parseDecimal(text: string): Ratio {
  const [whole = '', decimals = ''] = text.split('.')
  return { numerator: BigInt(whole + decimals), denominator: 10n ** BigInt(decimals.length) }
}

/**
 * `value` of `unit` as a whole number of nanometres, by integer arithmetic: nothing is rounded.
 * @returns the length; `too-fine` when it is no whole number of nanometres, `too-large` from 9 007 km on
 */
export function ratioToNanometres(value: Ratio, unit: LengthUnit): Result<Nanometres, 'too-fine' | 'too-large'> {
  const product = value.numerator * BigInt(nanometresPer[unit])
  if (product % value.denominator !== 0n) return err('too-fine')
  const nanometres = Number(product / value.denominator)
  return Number.isSafeInteger(nanometres) ? ok(nanometres) : err('too-large')
}

/**
 * `length` counted in steps of `unit` / `stepsPerUnit`, rounded to the nearest whole step, halves away from zero.
 * @throws RangeError when `length` is not a whole number of nanometres that a double holds exactly
 */
export function nearestSteps(length: Nanometres, unit: LengthUnit, stepsPerUnit: bigint): bigint {
  if (!Number.isSafeInteger(length))
    throw new RangeError(`length must be whole nanometres below 9007 km, got ${length}`)
  const size = BigInt(Math.abs(length)) * stepsPerUnit
  const per = BigInt(nanometresPer[unit])
  const steps = (2n * size + per) / (2n * per)
  return length < 0 ? -steps : steps
}

/**
 * `length` in `unit` with a fixed number of decimals: 43.1292 m with 2 decimals in `ft` is `141.50`.
 * A length that rounds to nothing has no sign.
 */
export function printDecimal(length: Nanometres, unit: LengthUnit, decimals: number): string {
  const steps = nearestSteps(length, unit, 10n ** BigInt(decimals))
  const digits = (steps < 0n ? -steps : steps).toString().padStart(decimals + 1, '0')
  const point = digits.length - decimals
  return (steps < 0n ? '-' : '') + digits.slice(0, point) + (decimals > 0 ? `.${digits.slice(point)}` : '')
}
