/** A length as a whole number of sixteenths of an inch: every panel and post space of the trade is one. */
export type Sixteenths = number

/** @throws RangeError when `inches` is not a whole number of sixteenths; readers of files check before */
export function sixteenths(inches: number): Sixteenths {
  const whole = inches * 16
  if (!Number.isSafeInteger(whole)) throw new RangeError(`length must be a whole number of 1/16 in, got ${inches} in`)
  return whole
}

export const inchesOf = (length: Sixteenths): number => length / 16

export function greatestCommonDivisor(a: number, b: number): number {
  return b === 0 ? Math.abs(a) : greatestCommonDivisor(b, a % b)
}
