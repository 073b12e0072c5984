import type { Nanometres } from '../../core/units/exact-length.ts'
import type { QuantityKind, Unit } from '../../core/units/quantity-kinds.ts'
import type { Kinds } from '../kinds.ts'

/** What kind of value a field takes. */
export type ValueType = 'text' | 'number' | 'whole number' | 'true or false' | 'list' | 'object' | 'null'

/** Forms that a check asks for, which have no values of their own. */
export type Form =
  | 'slug'
  | 'UUID'
  | 'sha256'
  | 'base64'
  | 'name without controls'
  | 'day'
  | 'moment'
  | 'whole sixteenths'
  | 'sheet or standing splice'
  | 'time zone'
  | 'storable text'
  | 'moment with zone'

/** What a value in a file has to be by its shape, and what kind of value stands there. */
export type ShapeProblem =
  | Kinds<Form>
  | Kinds<'another value' | 'not listed before' | 'length from zero' | 'length too great'>
  | Kinds<'day in years' | 'moment in years', { readonly least: number; readonly most: number }>
  | { readonly kind: 'value of type'; readonly type: ValueType }
  /** @property values  as they stand in a file */
  | { readonly kind: 'one of values'; readonly values: readonly string[] }
  | { readonly kind: 'no field named'; readonly name: string }
  | Kinds<'number bound' | 'text bound' | 'list bound', { readonly bound: Bound; readonly value: number }>
  | { readonly kind: 'sixteenths near'; readonly nearest: Nanometres }
  | { readonly kind: 'length of at most inches'; readonly inches: number }
  | { readonly kind: 'value between'; readonly least: number; readonly most: number; readonly unit: Unit }
  /** Of a step or an uncertainty. */
  | { readonly kind: 'value above zero'; readonly quantity: QuantityKind }
  | { readonly kind: 'value above zero, at most'; readonly most: number; readonly unit: Unit }
  // What stands there.
  | Kinds<'nothing' | 'none' | 'one' | 'more' | 'neither' | 'empty list' | 'empty object'>
  | { readonly kind: 'list of'; readonly length: number }
  | { readonly kind: 'object with'; readonly fields: string }
  // JSON, character by character.
  | Kinds<'end of document' | 'a value' | 'field name in quotes' | 'each field once' | 'colon' | 'comma or brace'>
  | Kinds<'comma or bracket' | 'quote before line end' | 'escape' | 'closing quote' | 'end of text' | 'end of line'>
  | { readonly kind: 'levels of nesting'; readonly most: number }
  | { readonly kind: 'field again'; readonly name: string }

export type Bound = 'at least' | 'more than' | 'at most' | 'less than'
