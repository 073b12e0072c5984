import type { EndSheet, LongitudinalSheet } from '../hardware/hardware-sheet.ts'
import type { WorkAtHand } from '../hardware/tested-criteria.ts'
import type { CountedPieces, CurbBefore, Layout, LayoutRequest, RunEnd, Unit } from '../layout/layout.ts'
import type { RunFlare } from '../layout/run-flare.ts'
import { sheetOf } from '../layout/sheet-of.ts'

/** A chosen layout with everything that decides what must be true of it. */
export interface RunModel extends WorkAtHand {
  readonly layout: Layout
  readonly system: LongitudinalSheet
  readonly first: RunEnd
  readonly second: RunEnd
  /** Left out when not said. */
  readonly curb?: CurbBefore | undefined
  readonly flare: RunFlare | null
  /** Whether opposing traffic can reach the second end; null when not said. */
  readonly opposingReaches: boolean | null
  /** What stands, and the stretch that has to be shielded (inches from the run's datum); left out where the run was laid out. */
  readonly counted?: (CountedPieces & { readonly need: LayoutRequest['need'] }) | undefined
}

/** Whether a piece belongs to an end of which nobody knows what it is: nothing is asked of it. */
export function isUnknown({ first, second }: RunModel, unit: Unit): boolean {
  const end = unit === 'first' ? first : unit === 'second' ? second : null
  return end?.kind === 'unknown'
}

export const endSheetOf = (model: RunModel, unit: Unit): EndSheet | null => {
  const sheet = sheetOf(model, unit)
  return sheet.kind === 'longitudinal' ? null : sheet
}
