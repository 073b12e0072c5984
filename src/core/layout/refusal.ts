import type { OmissionRule, SplicePosition } from '../hardware/hardware-sheet.ts'
import type { SheetText } from '../hardware/sheet-text.ts'
import type { Obstructed } from './layout.ts'
import type { PostsKeepClear } from './post-clearance.ts'

/**
 * Why an alternative is not lawful. Lengths in inches; post numbers count from the first end. `unit` is the name of an end
 * unit's sheet, null for a run that stands.
 */
export type Refusal =
  | PostsKeepClear
  | {
      readonly kind: 'splice position'
      /** The panel that joins it to the run; null where it is joined as it is. */
      readonly panel: number | null
      readonly unit: SheetText
      readonly at: SplicePosition
      readonly post: number
      readonly wanted: SplicePosition
    }
  | { readonly kind: 'panel not of this unit'; readonly panel: number; readonly unit: SheetText }
  | {
      readonly kind: 'unit post obstructed'
      readonly unit: SheetText | null
      readonly post: number
      readonly obstructions: Obstructed
    }
  | {
      readonly kind: 'too many posts obstructed'
      readonly obstructions: Obstructed
      readonly posts: number
      readonly most: number
      readonly firstPost: number
    }
  | {
      readonly kind: 'special posts do not fit'
      readonly obstructions: Obstructed
      readonly rule: OmissionRule['kind']
      readonly each: number
    }
  | {
      readonly kind: 'too near the end unit'
      readonly obstructions: Obstructed
      readonly rule: OmissionRule['kind']
      readonly have: number
      readonly least: number
    }
  | {
      readonly kind: 'gaps too near'
      readonly first: Obstructed
      readonly second: Obstructed
      readonly have: number
      readonly least: number
    }
  | { readonly kind: 'not stated at a curb'; readonly obstructions: Obstructed; readonly rule: OmissionRule['kind'] }
  | { readonly kind: 'too many posts moved'; readonly obstructions: Obstructed; readonly most: number }
  | { readonly kind: 'reduced part in unit'; readonly unit: SheetText | null; readonly spacing: 'half' | 'quarter' }
  | {
      readonly kind: 'post at reduced spacing obstructed'
      readonly obstructions: Obstructed
      readonly spacing: 'half' | 'quarter'
    }
  | { readonly kind: 'doubled part in unit'; readonly unit: SheetText | null }
  | { readonly kind: 'no panels fit'; readonly between: number; readonly lengths: readonly number[] }
  | { readonly kind: 'splice on omitted post'; readonly obstructions: Obstructed }
  | {
      readonly kind: 'ends do not meet'
      readonly between: number
      readonly nearestShorter: number | null
      readonly nearestLonger: number
    }
  | { readonly kind: 'does not cover'; readonly end: 'first' | 'second'; readonly shortBy: number }
  | {
      readonly kind: 'hung panel differs'
      readonly panel: number
      readonly hung: number
      readonly expected: number
      readonly unit: SheetText | null
    }
  | { readonly kind: 'hung splice'; readonly panel: number }
  | { readonly kind: 'hung length'; readonly panel: number; readonly hung: number; readonly endOnly: boolean }
  | { readonly kind: 'hung too long'; readonly by: number }
  | { readonly kind: 'stands elsewhere'; readonly by: number }
  /** A post that stands moved or special is not so in this layout; from the run's datum. */
  | { readonly kind: 'stands otherwise'; readonly state: 'moved' | 'special'; readonly atInches: number }
  | { readonly kind: 'not in stock'; readonly panel: number }
  | { readonly kind: 'posts do not meet'; readonly remainder: number; readonly spacing: number }
  | {
      readonly kind: 'nested rail in unit'
      readonly unit: SheetText | null
      readonly obstructions: Obstructed
      readonly nested: number
    }
