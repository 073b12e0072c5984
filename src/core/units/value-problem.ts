import type { LengthProblem, TextPlace } from './length-problem.ts'

/** Why a text is not a value of any kind of quantity, and where. */
export type ValueProblem =
  | { readonly kind: 'length'; readonly problem: LengthProblem }
  | (TextPlace & {
      readonly kind: 'empty' | 'fraction' | 'not whole' | 'below zero' | 'too fine' | 'too large' | 'unknown unit'
    })
