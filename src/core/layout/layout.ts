import type { EndSheet, LongitudinalSheet, OmissionRule, SplicePosition } from '../hardware/hardware-sheet.ts'

/** Which part of the run a piece belongs to. */
export type Unit = 'first' | 'run' | 'second'

export interface LayoutPost {
  /** Outlives the layout: readings name it. */
  readonly id: string
  /** From 1 at the first end, for showing only: another layout counts otherwise. */
  readonly number: number
  /** Inches along the rail from the centre of post 1; exact to 1/16. */
  readonly alongInches: number
  readonly kind: string
  /** Whether the post carries an offset block. */
  readonly block: boolean
  readonly unit: Unit
  /** The post's number in its end unit's own count, from the unit's outermost post; null in the run. */
  readonly ownNumber: number | null
  readonly state: 'regular' | 'moved' | 'special' | 'standing'
}

/** Between one post and the next. */
export interface LayoutSpace {
  readonly id: string
  /** That of its upstream post. */
  readonly number: number
  readonly fromInches: number
  readonly toInches: number
}

export interface LayoutPanel {
  readonly id: string
  readonly number: number
  readonly inches: number
  readonly fromInches: number
  readonly toInches: number
  readonly unit: Unit
  readonly role: 'own' | 'adapter' | 'standard' | 'converting' | 'end only' | 'hung'
  /** The panel's number in its end unit's own count; null in the run. */
  readonly ownNumber: number | null
  readonly nested: boolean
}

export interface LayoutSplice {
  readonly id: string
  readonly number: number
  readonly alongInches: number
  readonly position: SplicePosition
  readonly unit: Unit
}

/** Names of what is in the way of one gap, as somebody wrote them; of a layout chosen long ago one text names them all. */
export type Obstructed = readonly string[]

export interface OmittedPost {
  readonly alongInches: number
  readonly obstructions: Obstructed
  readonly rule: OmissionRule['kind']
}

/** The run piece by piece. */
export interface Layout {
  readonly posts: readonly LayoutPost[]
  readonly spaces: readonly LayoutSpace[]
  readonly panels: readonly LayoutPanel[]
  readonly splices: readonly LayoutSplice[]
  /** Ids of the end units. */
  readonly endIds: { readonly first: string; readonly second: string }
  readonly omitted: readonly OmittedPost[]
  /** Where the centre of post 1 lies from the run's datum, inches, positive downstream. */
  readonly postOneAtInches: number
  /** Rail that counts for length of need, inches along the rail from post 1; null where it goes on into a standing run. */
  readonly countsFromInches: number | null
  readonly countsToInches: number | null
  readonly score: LayoutScore
  /** Left out of a lawful layout; see `AsCounted`. */
  readonly asCounted?: AsCounted | undefined
}

/**
 * That the layout is what stands, lawful or not: panels have the lengths that hang, and what must hang there is asked of
 * the sheets. Where the posts were only counted and do not come out at their spacing, nobody knows where each stands.
 */
export type AsCounted = 'posts placed' | 'posts only counted'

/** The objective, in the order in which it is compared; smaller is better. */
export interface LayoutScore {
  readonly changedPosts: number
  readonly oddPanels: number
  readonly railInches: number
  readonly pieces: number
}

/** How one end of the run is closed. */
export type RunEnd =
  | { readonly kind: 'unit'; readonly sheet: EndSheet; readonly atInches: number | null }
  | { readonly kind: 'standing splice'; readonly atInches: number; readonly position: SplicePosition }
  | UnknownEnd

/** What closes this end is not known: no sheet fits what was seen, or nobody looked there. None of it is judged. */
export interface UnknownEnd {
  readonly kind: 'unknown'
  readonly because: 'no sheet fits' | 'not looked at'
  readonly atInches: number | null
  /** How many of the posts and panels that were counted belong to it. */
  readonly posts: number
  readonly panels: number
}

/** What stands, counted from the first end on. */
export interface CountedPieces {
  /** Lengths of the panels, splice centre to splice centre, inches. */
  readonly panels: readonly number[]
  /** How many posts; or how far each stands from post 1, measured along the rail, inches. */
  readonly posts: number | readonly number[]
}

export interface Obstruction {
  readonly name: string
  readonly fromInches: number
  readonly toInches: number
}

/** What lies between the centre of a post and what is in its way, inches along the rail. */
export interface PostClearance {
  readonly halfPostInches: number
  /** From the side of the post on. */
  readonly clearanceInches: number
  /** The run states the clearance; else it is the usual one. */
  readonly isStated: boolean
}

export interface ReducedPart {
  readonly fromInches: number
  readonly toInches: number
  readonly spacing: 'half' | 'quarter' | 'full'
  readonly nested: boolean
}

/** What already stands, from the first end on. */
export interface StandingPart {
  readonly postOneAtInches: number
  readonly panels: readonly number[]
  readonly postsDriven: number
  /** Where before the last driven post one was left out, from the run's datum, each in an obstruction; left out for nowhere. */
  readonly leftOutAtInches?: readonly number[] | undefined
  /** Where among the driven posts one stands that was moved there, from the run's datum; left out for nowhere. */
  readonly movedToInches?: readonly number[] | undefined
  /** Where among the driven posts one stands that is special, from the run's datum; left out for nowhere. */
  readonly specialAtInches?: readonly number[] | undefined
}

export interface StockPanel {
  readonly inches: number
  /** How many there are; null for as many as wanted. */
  readonly count: number | null
}

/** Whether a curb stands before the rail of the run. */
export type CurbBefore = 'present' | 'none'

/** Distances are inches along the rail from the run's datum, positive downstream, exact to 1/16. */
export interface LayoutRequest {
  readonly system: LongitudinalSheet
  readonly first: RunEnd
  readonly second: RunEnd
  /** The stretch that has to be shielded. */
  readonly need: { readonly fromInches: number; readonly toInches: number } | null
  /** Null for every length the sheet allows, as many as wanted. */
  readonly stock: readonly StockPanel[] | null
  readonly obstructions: readonly Obstruction[]
  /** Left out where a post counts as a line, as in runs of before and where what stands was counted. */
  readonly postClearance?: PostClearance | undefined
  readonly reduced: readonly ReducedPart[]
  readonly standing: StandingPart | null
  /** Left out where nobody said: the run is then laid out as without one, on that condition. */
  readonly curb?: CurbBefore | undefined
  /** How much longer than the shortest covering run the search may go, inches. */
  readonly mayExtendInches: number
}
