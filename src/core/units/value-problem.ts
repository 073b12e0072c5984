import { describeAt, describeLengthProblem, type LengthProblem, type TextPlace } from './length-problem.ts'

/** Why a text is not a value of any kind of quantity, and where. */
export type ValueProblem =
  | { readonly kind: 'length'; readonly problem: LengthProblem }
  | (TextPlace & {
      readonly kind: 'empty' | 'fraction' | 'not whole' | 'below zero' | 'too fine' | 'too large' | 'unknown unit'
    })

/** One English sentence: the place, what stands there, and the reason. */
export const describeValueProblem = (problem: ValueProblem): string =>
  problem.kind === 'length' ? describeLengthProblem(problem.problem) : describeAt(problem, reasons[problem.kind])

const reasons: Readonly<Record<Exclude<ValueProblem['kind'], 'length'>, string>> = {
  empty: 'the text is empty, a value is expected',
  fraction: 'fractions are read of lengths only, write decimals',
  'not whole': 'a count is a whole number',
  'below zero': 'only lengths, slopes and angles go below 0',
  'too fine': 'more than six decimals',
  'too large': 'more than is kept exactly',
  'unknown unit': 'this is not one of the units in, ft, mm, m, %, °, lbf·ft, N·m, lbf and kN',
}
