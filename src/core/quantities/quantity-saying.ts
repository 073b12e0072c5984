import type { SourceSaying } from '../hardware/hardware-saying.ts'
import type { Beam, EndSheet } from '../hardware/hardware-sheet.ts'
import type { SheetText } from '../hardware/sheet-text.ts'
import type { PostKind } from '../layout/kind-of-post.ts'

/** What quantities say of their own. Names of posts, panels and units are their sheet's. */
export type QuantitySaying =
  | PanelSaying
  | QuantityName
  | PieceName
  | PiecesSaying
  | OwnSource
  | QuantityNote
  | BoundarySaying

export type QuantitySource = SourceSaying | OwnSource

/** What one panel is. */
export type PanelSaying =
  /** `of` null for a plain panel of the run. */
  | { readonly kind: 'panel as named'; readonly of: SheetText | null }
  | { readonly kind: 'gauge of panel'; readonly gauge: Beam['gauge'] }

export type QuantityName =
  | { readonly kind: 'rail of run' }
  | { readonly kind: 'rail from end to end' }
  | { readonly kind: 'end units'; readonly sheet: SheetText }
  /** `place` null for posts that stood before the run was laid out. */
  | {
      readonly kind: 'posts of kind'
      readonly of: PostKind
      readonly place: EndSheet['kind'] | 'run' | null
      readonly stand: boolean
    }
  | { readonly kind: 'offset blocks' }
  /** `of` null for a plain panel of the run. */
  | {
      readonly kind: 'panels of kind'
      readonly of: SheetText | null
      readonly inches: number
      readonly gauge: Beam['gauge']
      readonly hang: boolean
    }
  | { readonly kind: 'splice bolts'; readonly at: 'single rail' | 'nested rail' }
  | { readonly kind: 'thrie-beam splices' }
  | { readonly kind: 'post bolts'; readonly through: PostBolts }
  | { readonly kind: 'posts not said to be bolted' }

/** What the bolts of the posts of one kind go through. */
export type PostBolts = 'wood block and post' | 'block' | 'no block'

/** One of the pieces of a total. */
export type PieceName =
  | NumberedPiece
  | { readonly kind: 'splice to standing run' }
  | { readonly kind: 'end of run'; readonly end: 'first' | 'second' }
  | { readonly kind: 'spares begun'; readonly each: number; readonly of: number }

export interface NumberedPiece {
  readonly kind: 'numbered piece'
  readonly of: 'post' | 'panel' | 'splice'
  readonly number: number
  readonly how: 'whole' | 'part' | 'nested'
}

/** Many pieces in few words. */
export interface PiecesSaying {
  readonly kind: 'pieces'
  readonly pieces: readonly PieceName[]
}

type OwnSource = { readonly kind: 'habit of carrying spares' }

/** What a quantity leaves open. */
export type QuantityNote =
  | { readonly kind: 'length by drawing' }
  | { readonly kind: 'length by layers' }
  | { readonly kind: 'bolts by drawing' }
  | { readonly kind: 'bolted by manual' }
  | { readonly kind: 'bolt length by block' }
  | { readonly kind: 'bolt length by manual' }

/** Where the run begins or ends for pay. */
export type BoundarySaying =
  | { readonly kind: 'pay boundary at standing splice' }
  | { readonly kind: 'pay boundary at unknown end' }
  | { readonly kind: 'pay boundary at splice'; readonly of: EndSheet['kind'] }
  /** By the run's number and, in `own`, the unit's. */
  | {
      readonly kind: 'pay boundary at post'
      readonly number: number
      readonly own: { readonly number: number; readonly of: EndSheet['kind'] }
    }
  | { readonly kind: 'pay boundary at listed length'; readonly of: EndSheet['kind'] }
