import type { Requirement } from '../../core/requirements/requirement.ts'
import type { QuantityKind, Steps, Unit } from '../../core/units/quantity-kinds.ts'
import type { Kinds } from '../kinds.ts'

/** What a reading has to say so that it can be one of its run. */
export type ReadingProblem =
  | Kinds<'who took it' | 'when it was taken' | 'only beside a value' | 'moment of reading with zone'>
  | Kinds<'side of line' | 'no side yet' | 'only beside an offset' | 'offset without sign'>
  | { readonly kind: 'one answer'; readonly fields: readonly string[]; readonly given: readonly string[] }
  | Kinds<'no setting aside' | 'requirement of run' | 'earlier reading'>
  | { readonly kind: 'answer to'; readonly look: Exclude<Requirement['look']['kind'], 'measure'> }
  | { readonly kind: 'measured answer'; readonly quantity: QuantityKind }
  | { readonly kind: 'quantity'; readonly quantity: QuantityKind }
  | Kinds<'choice given' | 'confirmation given'>
  | { readonly kind: 'value read'; readonly value: Steps; readonly unit: Unit }
  | { readonly kind: 'no recheck'; readonly of: string }
  | { readonly kind: 'finding to recheck'; readonly of: string; readonly findings: readonly string[] }
  | { readonly kind: 'one of names'; readonly names: readonly string[] }
