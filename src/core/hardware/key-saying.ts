import type { KeyTrait, KeyValues } from './key-traits.ts'

/** What the key that finds the hardware asks, and what can be answered. */
export type KeySaying =
  | { readonly kind: 'key question'; readonly of: KeyTrait }
  | { readonly kind: 'where to look'; readonly of: KeyTrait }
  | { readonly [T in KeyTrait]: { readonly kind: 'key answer'; readonly of: T; readonly is: KeyValues[T] } }[KeyTrait]
