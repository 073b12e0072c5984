import type { LengthProblem } from '../../core/units/length-problem.ts'
import type { StationProblem } from '../../core/units/station.ts'
import type { ValueProblem } from '../../core/units/value-problem.ts'

/** Why a text that somebody typed is no length or no station. */
export type TypedProblem =
  /** A sentence of its own. */
  | { readonly kind: 'no length'; readonly problem: LengthProblem }
  | { readonly kind: 'no station'; readonly problem: StationProblem }
  | { readonly kind: 'no value'; readonly problem: ValueProblem }
  /** What was expected where such a text stands in a file. */
  | { readonly kind: 'a length'; readonly not: LengthProblem }
  | { readonly kind: 'a station'; readonly not: StationProblem }
  | { readonly kind: 'a value with its unit'; readonly not: ValueProblem }
  /** @property as  how a station is written there */
  | { readonly kind: 'a station as'; readonly as: string; readonly not: StationProblem }
