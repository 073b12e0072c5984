import { longestRunInches } from '../../core/units/longest-run.ts'
import { type LengthRangeName, lengthRanges, type RangeName, ranges } from './ranges.ts'

/** Written out: 0.000001, not 1e-6. */
export const plain = (value: number): string =>
  Math.abs(value) < 1e-5 && value !== 0 ? value.toFixed(6) : String(value)

/** What was expected of a number that lies outside its range; null inside it. */
export function numberFault(name: RangeName, value: number): string | null {
  const { least, most } = ranges[name]
  if (value < least) return `a value of at least ${plain(least)}`
  return value > most ? `a value of at most ${plain(most)}` : null
}

/** What was expected of a length, m, that lies outside its range; null inside it. */
export function lengthFault(name: LengthRangeName, metres: number): string | null {
  const { least, most } = lengthRanges[name]
  if (metres >= least && metres <= most) return null
  return `a length of ${plain(least)} m to ${plain(most)} m`
}

/** What is expected of one run, and what to do with a longer one. */
export const longestRunWords = `at most ${longestRunInches} in (10 miles) in one run: split a longer one at a splice into runs that name it as standingSplice`
