import type { SheetText } from '../hardware/sheet-text.ts'
import type { InstrumentName } from '../measurement/instrument-saying.ts'
import type { RequirementText } from '../requirements/requirement-saying.ts'
import type { LengthUnit } from '../units/exact-length.ts'
import type { Unit } from '../units/quantity-kinds.ts'

/** One thing to do about a fault. Numbers of posts and panels are the run's own, from its first end. */
export type RemedyStep =
  | MeasureFirst
  | MovePosts
  | RaisePost
  | ResetPost
  | ExchangePanel
  | MoveEnd
  | SetRight
  | NotProvable
  | { readonly kind: 'lay out again' }
  | { readonly kind: 'as the rule says'; readonly how: RequirementText }

/** Without these readings nobody can say what has to be done, or whether it is all. */
export type MeasureFirst = {
  readonly kind: 'measure first'
  readonly requirements: readonly string[]
  /** Posts or panels by number, from the first that it is about to the last. */
  readonly from: number
  readonly to: number
} & (
  | { readonly what: 'stub' | 'rail' | 'spaces' | 'panels' | 'splice again' | 'side'; readonly using: null }
  /** With the name of the instrument that it takes. */
  | { readonly what: 'finely'; readonly using: InstrumentName }
)

/** Posts that stand out of place together. */
export interface MovePosts {
  readonly kind: 'move posts'
  readonly from: number
  readonly to: number
  /** Positive downstream, toward the second end. */
  readonly by: number
  readonly unit: LengthUnit
  /** Which end of the run the posts reach to; null where posts that stand right are on both sides. */
  readonly reaches: 'first end' | 'second end' | null
  /** Neighbours of these posts that have to be moved as well. */
  readonly with: readonly number[]
  /** The one among them that the layout moves from its place, and whose bolt therefore needs a slot of its own. */
  readonly newSlotAt: number | null
}

export interface RaisePost {
  readonly kind: 'raise post'
  readonly post: number
  /** Positive up. */
  readonly by: number
  readonly unit: LengthUnit
  readonly railThen: number | null
  readonly stubThen: number | null
  /** Every move from the first to the second is then met; null where one side is open or no other move holds. */
  readonly holds: { readonly from: number; readonly to: number } | null
  /** How far the block may be raised instead; null where that does not help. */
  readonly blockUpTo: number | null
}

/** No move of the post brings rail and stub right together, or not so that a reading could prove it. */
export interface ResetPost {
  readonly kind: 'reset post'
  readonly post: number
  /** What the least move that brings one of them right would do to the other; null where it is only not provable. */
  readonly because: {
    readonly unit: LengthUnit
    readonly brings: 'rail' | 'stub'
    readonly move: number
    readonly railThen: number
    readonly stubThen: number
    /** The limit of the stub that it would then be beyond; its own height where it would be right. */
    readonly stubLimit: number
  } | null
}

export interface ExchangePanel {
  readonly kind: 'exchange panel'
  readonly panel: number
  /** Inches as it hangs; null when it is another length that nobody measured. */
  readonly from: number | null
  readonly to: number
  /** What the panel is called where it has to be a particular one; null for any of the length. */
  readonly name: SheetText | null
}

/** The end post, across the line of the run. */
export interface MoveEnd {
  readonly kind: 'move end'
  readonly post: number
  /** Positive away from traffic. */
  readonly by: number
  readonly unit: LengthUnit
  readonly standsAt: number
  readonly holds: Span
}

/** One thing of one place put as it must be, in the words of its rule. */
export interface SetRight {
  readonly kind: 'set right'
  readonly requirement: string
  readonly how: RequirementText
  readonly to:
    | { readonly kind: 'choice'; readonly choice: string }
    | { readonly kind: 'confirmed' }
    | { readonly kind: 'value'; readonly span: Span; readonly unit: Unit }
}

/** Values that a reading like the one at hand proves right; null where no limit bounds it. */
export interface Span {
  readonly from: number | null
  readonly to: number | null
}

/** The limits leave a reading as doubtful as the one at hand no room. */
export interface NotProvable {
  readonly kind: 'not provable'
  /** What has to be read otherwise. */
  readonly requirements: readonly string[]
  /** Names of the instruments of the run that would prove it, the least doubtful first. */
  readonly would: readonly InstrumentName[]
}
