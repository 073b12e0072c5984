import type { LengthUnit } from './exact-length.ts'

/** Where a text could not be read. */
export interface TextPlace {
  /** Index of the first character in question, from 0, in the text as it was given. */
  readonly at: number
  /** The characters in question as they were given; empty when something is missing there. */
  readonly found: string
}

/** Why a text is not a length, and where. */
export type LengthProblem = TextPlace &
  (
    | { readonly kind: 'empty' }
    | { readonly kind: 'not-a-number' }
    | { readonly kind: 'exponent' }
    | { readonly kind: 'comma' }
    | { readonly kind: 'ambiguous'; readonly readings: readonly [string, string] }
    | { readonly kind: 'zero-denominator' }
    | { readonly kind: 'unknown-denominator' }
    | { readonly kind: 'improper-fraction' }
    | { readonly kind: 'decimal-with-fraction' }
    | { readonly kind: 'fraction-in-unit'; readonly unit: LengthUnit }
    | { readonly kind: 'feet-not-whole' }
    | { readonly kind: 'inches-not-below-twelve' }
    | { readonly kind: 'unit-missing' }
    | { readonly kind: 'unknown-unit' }
    | { readonly kind: 'two-units'; readonly first: LengthUnit; readonly second: LengthUnit }
    | { readonly kind: 'trailing-text' }
    | { readonly kind: 'too-fine' }
    | { readonly kind: 'too-large' }
  )

/** One English sentence: the place (characters counted from 1, as people do), what stands there, and the reason. */
export const describeLengthProblem = (problem: LengthProblem): string => describeAt(problem, reason(problem))

/** The sentence that says `reason` of the place. */
export function describeAt(place: TextPlace, reason: string): string {
  const found = place.found === '' ? '' : `, “${place.found}”`
  return `At character ${place.at + 1}${found}: ${reason}.`
}

const unitNames: Readonly<Record<LengthUnit, string>> = { in: 'inches', ft: 'feet', mm: 'millimetres', m: 'metres' }

function reason(problem: LengthProblem): string {
  switch (problem.kind) {
    case 'empty':
      return 'the text is empty, a length is expected'
    case 'not-a-number':
      return 'a number is expected here'
    case 'exponent':
      return 'powers of ten are not read as lengths, write the number out'
    case 'comma':
      return 'a comma can mean decimals or thousands, write a decimal point and no thousands mark'
    case 'ambiguous':
      return `this can mean ${problem.readings[0]} or ${problem.readings[1]}, write which`
    case 'zero-denominator':
      return 'the fraction divides by zero'
    case 'unknown-denominator':
      return 'a fraction is read in halves, 4ths, 8ths, 16ths, 32nds or 64ths only'
    case 'improper-fraction':
      return 'the fraction is not below one, perhaps a space or a digit is missing'
    case 'decimal-with-fraction':
      return 'a decimal point and a fraction do not go together'
    case 'fraction-in-unit':
      return problem.unit === 'ft'
        ? 'a fraction before a foot mark; write " if inches are meant, or ft if feet are'
        : `fractions of ${unitNames[problem.unit]} are not read, write decimals`
    case 'feet-not-whole':
      return 'feet followed by inches must be a whole number'
    case 'inches-not-below-twelve':
      return 'inches that follow feet must be below 12'
    case 'unit-missing':
      return 'the unit is missing (in, ft, mm or m)'
    case 'unknown-unit':
      return 'this is not one of the units in, ft, mm and m'
    case 'two-units':
      return `the length is already given in ${unitNames[problem.first]} and goes on in ${unitNames[problem.second]}; only feet then inches are read`
    case 'trailing-text':
      return 'the length ends before this text'
    case 'too-fine':
      return 'finer than a nanometre, write fewer decimals'
    case 'too-large':
      return 'larger than 9007 km, which is more than is kept exactly'
    default:
      return problem satisfies never
  }
}
