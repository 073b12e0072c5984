import type { Language } from '../../core/language.ts'
import type { Kinds } from '../kinds.ts'

/** What a hardware sheet has to say so that it goes with the rest of it. */
export type SheetProblem =
  | Kinds<
      | 'own rule id'
      | 'place of a run'
      | 'topic or rule'
      | 'text of sheet'
      | 'special posts'
      | 'no special posts'
      | 'origin post'
    >
  /** Own pictures of rules. */
  | { readonly kind: 'picture at most'; readonly bytes: number }
  | { readonly kind: 'picture of type'; readonly type: string }
  | { readonly kind: 'said in language'; readonly to: Language }
  | { readonly kind: 'another language'; readonly language: Language }
  /** @property marked  as `18 in, 5 in`; empty for none */
  | { readonly kind: 'marked values'; readonly marked: string }
  | { readonly kind: 'key of sources'; readonly sources: readonly string[] }
  | { readonly kind: 'number for role'; readonly role: 'floor' | 'ceiling' | 'centre' }
  | Kinds<'at least low' | 'at least nominal', { readonly value: number }>
  | { readonly kind: 'piece of sheet'; readonly pieces: 'posts' | 'panels'; readonly last: number }
  | Kinds<'right choice' | 'wrong choice'>
  | Kinds<'less than full' | 'less than half', { readonly inches: number }>
  | { readonly kind: 'post in order'; readonly number: number }
  | { readonly kind: 'beyond post before'; readonly inches: number }
