import type { OmissionRule } from '../hardware/hardware-sheet.ts'
import type { SheetText } from '../hardware/sheet-text.ts'
import type { PostKind, PostThatStands } from './kind-of-post.ts'
import type { AsCounted, Obstructed, UnknownEnd } from './layout.ts'
import type { PostsKeepClear } from './post-clearance.ts'
import type { Refusal } from './refusal.ts'

/** What is said of a layout. Names of obstructions are a person's words, names of sheets and posts the sheet's. */
export type LayoutSaying = Refusal | LayoutReason | PostThatStands

/** Why a layout is as it is. Lengths in inches along the rail from the centre of post 1. */
export type LayoutReason =
  | { readonly kind: 'as counted'; readonly known: AsCounted }
  | { readonly kind: 'goes on from standing splice'; readonly end: 'first' | 'second' }
  | { readonly kind: 'end not known'; readonly end: 'first' | 'second'; readonly because: UnknownEnd['because'] }
  /** `adapterInches` null where the run is joined as it is. */
  | { readonly kind: 'sheet joins run'; readonly sheet: SheetText; readonly adapterInches: number | null }
  /** What is to spare at either end; null where a standing run goes on. */
  | { readonly kind: 'need covered'; readonly atBegin: number | null; readonly atEnd: number | null }
  | {
      readonly kind: 'post left out'
      readonly alongInches: number
      readonly obstructions: Obstructed
      readonly rule: OmissionRule['kind']
    }
  /** `doubledInches` null where the sheet does not allow the gap at a curb. */
  | { readonly kind: 'gap as without curb'; readonly obstructions: Obstructed; readonly doubledInches: number | null }
  | PostsKeepClear
  | { readonly kind: 'post moved along rail'; readonly post: number }
  | { readonly kind: 'post of special kind'; readonly post: number; readonly of: PostKind }
  | {
      readonly kind: 'pieces of run'
      readonly changedPosts: number
      readonly oddPanels: number
      readonly railInches: number
      readonly pieces: number
    }
