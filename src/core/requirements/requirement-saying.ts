import type { FitCheck } from '../fit/fit-check.ts'
import type { EndExposure } from '../hardware/crashworthy-end.ts'
import type { NewSlot, SlotSet, SplicePosition } from '../hardware/hardware-sheet.ts'
import type { LimitsSaying } from '../hardware/limits-saying.ts'
import type { SheetText } from '../hardware/sheet-text.ts'
import type { NeededTest } from '../hardware/tested-criteria.ts'
import type { Obstructed } from '../layout/layout.ts'

/** What a requirement says: in words of its own, or in those of a sheet. */
export type RequirementText = RequirementSaying | SheetText

/** What is said of requirements that follow from layout, sheets and run file, topic by topic. */
export type RequirementSaying = MustSaying | HowSaying | WhySaying | MendSaying | ChoiceSaying | RailSlots

/** What must be true. It has the values that are said and no others, so that the same is said where they are the same. */
export type MustSaying = { readonly kind: 'must' } & Asked

/** How one finds out. */
export type HowSaying = { readonly kind: 'how to look' } & (
  | Of<Exclude<Asked['of'], AsTheSheetSays | FromOthersToo>>
  | Of<FromOthersToo, { readonly measured: SheetText }>
)

export type WhySaying = { readonly kind: 'why it matters' } & (
  | Of<Exclude<Asked['of'], 'block' | 'rail-bolt'>>
  | Extract<Asked, { readonly of: 'block' | 'rail-bolt' }>
)

/** What to do where it is not so. */
export type MendSaying = { readonly kind: 'if it fails' } & (
  | Of<Exclude<Asked['of'], MendedAsAsked | 'spacing' | 'flare-offset' | 'curb' | 'criteria' | 'site-check'>>
  | Extract<Asked, { readonly of: MendedAsAsked }>
  | Of<'spacing', { readonly slots: RailSlots }>
  | Of<'flare-offset', { readonly limits: LimitsSaying }>
  | Of<'curb', { readonly doubledInches: number | null }>
  | Of<'criteria', { readonly needed: NeededTest }>
  | Of<'site-check', { readonly change: FitCheck['smallestChange'] }>
)

/** An answer to choose. It has no value that tells which answer is right: that may change while the question stays. */
export type ChoiceSaying =
  | { readonly kind: 'choice'; readonly is: PlainChoice }
  | { readonly kind: 'choice of post'; readonly postKind: SheetText }
  | ({ readonly kind: 'choice of slots' } & Pick<SlotSet, 'set'> & { readonly side: Side | 'other' | 'either' })
  | { readonly kind: 'choice of panel'; readonly inches: number }
  | { readonly kind: 'choice of new slot'; readonly slot: SlotSize }

export type PlainChoice =
  | 'offset block'
  | 'no offset block'
  | 'another kind of post'
  | 'damaged post'
  | 'bolted without washer'
  | 'bolted with washer'
  | 'bolted'
  | 'not bolted'
  | 'toward the head'
  | 'away from the head'
  | 'not held in slots'
  | 'slotted'
  | 'not slotted'
  | 'another length'
  | 'nested'
  | 'single'
  | 'splice at a post'
  | 'splice at midspan'
  | 'splice elsewhere'
  | 'upstream panel over'
  | 'downstream panel over'
  | 'no curb'
  | 'curb'
  | 'new slot without zinc'
  | 'new slot badly cut'
  | 'old slot enlarged'

/**
 * What of the slots in the rail when a post is set right: a post of the run comes back to its own slot, the one that the
 * layout moves has no slot of its own yet.
 */
export interface RailSlots {
  readonly kind: 'rail slots'
  /** Number of the post that gets a new one; null where none does. */
  readonly newSlotAt: number | null
}

export type SlotSize = Pick<NewSlot, 'widthInches' | 'lengthInches'>

type Side = SlotSet['side']

type Asked =
  | Of<'block', { readonly block: boolean }>
  | Of<'post-kind', { readonly postKind: SheetText }>
  | Of<'rail-bolt', { readonly bolted: boolean }>
  | Of<'hinge-side', { readonly side: Side }>
  | Of<'slot-set', SlotSet>
  | Of<'slotted-panel', { readonly name: SheetText; readonly inches: number }>
  | Of<'panel-length', { readonly inches: number; readonly isAdapter: boolean }>
  | Of<'nested'>
  | Of<'splice-position', { readonly position: SplicePosition }>
  | Of<'lap', { readonly over: Side }>
  | Of<'rail-height' | 'stub-height' | 'straightness', { readonly limits: LimitsSaying }>
  | Of<'flare-offset', { readonly limits: LimitsSaying; readonly isFlared: boolean }>
  | Of<'spacing', { readonly inches: number; readonly omitted: Omitted | null }>
  | Of<'curb', { readonly obstructions: Obstructed }>
  | Of<'new-slot', { readonly slot: SlotSize }>
  | Of<'criteria' | 'need' | 'rest-of-run' | 'end-hardware' | 'end-joins' | 'location'>
  | Of<'post-count' | 'panel-count'>
  | Of<'crashworthy', Pick<EndExposure, 'end'>>
  | Of<'site-check', Pick<FitCheck, 'what' | 'limit'>>

/** Posts that are left out of a space, and what for. */
interface Omitted {
  readonly posts: number
  readonly obstructions: Obstructed
}

type AsTheSheetSays = 'rail-height' | 'stub-height'
/** What can be computed from other readings as well. */
type FromOthersToo = 'spacing' | 'straightness' | 'flare-offset'
/** Where the remedy names the values that are asked for. */
type MendedAsAsked =
  | 'block'
  | 'post-kind'
  | 'rail-bolt'
  | 'hinge-side'
  | 'slot-set'
  | 'slotted-panel'
  | 'panel-length'
  | 'new-slot'

/** A topic with what is said of it. */
type Of<Topic extends string, Values = unknown> = Topic extends string ? { readonly of: Topic } & Values : never
