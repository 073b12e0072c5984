import { sixteenths } from '../layout/sixteenths.ts'

/** To what a length is rounded for pay: tenths of a foot, whole feet, or panels of 12 ft 6 in. Common practice. */
export const payRoundings = ['0.1 ft', '1 ft', '12.5 ft'] as const
export type PayRounding = (typeof payRoundings)[number]

/** How many of a step make 12.5 ft, and what one is in feet, as numerator and denominator. */
const steps: Readonly<Record<PayRounding, { readonly feet: number; readonly over: number }>> = {
  '0.1 ft': { feet: 1, over: 10 },
  '1 ft': { feet: 1, over: 1 },
  '12.5 ft': { feet: 25, over: 2 },
}

/** The step of a rounding, feet. */
export const payStep = (rounding: PayRounding): number => steps[rounding].feet / steps[rounding].over

/**
 * Feet that are paid for `inches` of rail: the nearest step, halves upward; reckoned in whole sixteenths of an inch, so
 * that a half is a half.
 * @example payLength(18, '1 ft')  // 2
 */
export function payLength(inches: number, rounding: PayRounding): number {
  const { feet, over } = steps[rounding]
  // A foot has 192 sixteenths of an inch: n = length / step, rounded as floor((2 length + step) / 2 step).
  const [length, step] = [sixteenths(inches) * over, 192 * feet]
  return (Math.floor((2 * length + step) / (2 * step)) * feet) / over
}
