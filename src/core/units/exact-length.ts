import { type Metres, metres } from './quantity.ts'

/**
 * A length as a whole number of nanometres.
 *
 * Every length the trade writes is a whole number of them: 1/64 in is 396 875 nm, 0.001 in is 25 400 nm, 0.001 ft
 * is 304 800 nm, 0.001 mm is 1 000 nm. So feet, inches and millimetres meet without rounding: 27 3/4 in and
 * 704.85 mm are the same integer. Whole numbers stay exact in a double up to 9 007 km.
 */
export type Nanometres = number

export type LengthUnit = 'in' | 'ft' | 'mm' | 'm'

/** Exact by definition: the international inch is 25.4 mm, the international foot 12 in (1959). */
export const nanometresPer: Readonly<Record<LengthUnit, number>> = {
  in: 25_400_000,
  ft: 304_800_000,
  mm: 1_000_000,
  m: 1_000_000_000,
}

/**
 * The whole number of nanometres in `value` of `unit`; a value finer than a nanometre is rounded to one.
 * @throws RangeError when the value is not finite or larger than a double holds exactly
 */
export function exactLength(value: number, unit: LengthUnit): Nanometres {
  const nanometres = Math.round(value * nanometresPer[unit])
  if (!Number.isSafeInteger(nanometres))
    throw new RangeError(`length must be finite and below 9007 km, got ${value} ${unit}`)
  return nanometres
}

/** The value of `length` in `unit`, as the nearest double (exact for inches down to 1/64 in). */
export const lengthIn = (length: Nanometres, unit: LengthUnit): number => length / nanometresPer[unit]

/**
 * Whether `a` is shorter than `b`, both m, compared as whole nanometres: 14 ft - 9 ft is not shorter than 5 ft, though as
 * doubles it is. Also of infinite lengths.
 */
export const isShorter = (a: Metres, b: Metres): boolean => Math.round(a * 1e9) < Math.round(b * 1e9)

/** Whether two lengths, m, are the same whole number of nanometres. */
export const isSameLength = (a: Metres, b: Metres): boolean => Math.round(a * 1e9) === Math.round(b * 1e9)

/** The length in metres, for geometry on the ground. */
export const toMetres = (length: Nanometres): Metres => metres(length / 1e9)
