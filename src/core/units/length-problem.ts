import type { LengthUnit } from './exact-length.ts'

/** Where a text could not be read. */
export interface TextPlace {
  /** Index of the first character in question, from 0, in the text as it was given. */
  readonly at: number
  /** The characters in question as they were given; empty when something is missing there. */
  readonly found: string
}

/** One length less another, as `6 minus 3`. */
export interface Difference {
  readonly from: string
  readonly less: string
}

/** Why a text is not a length, and where. */
export type LengthProblem = TextPlace &
  (
    | { readonly kind: 'empty' }
    | { readonly kind: 'not-a-number' }
    | { readonly kind: 'exponent' }
    | { readonly kind: 'comma' }
    | { readonly kind: 'ambiguous'; readonly readings: readonly [string, string | Difference] }
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
