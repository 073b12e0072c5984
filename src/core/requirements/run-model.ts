import type { EndSheet, LongitudinalSheet } from '../hardware/hardware-sheet.ts'
import type { WorkAtHand } from '../hardware/tested-criteria.ts'
import type { CurbBefore, Layout, RunEnd, Unit } from '../layout/layout.ts'
import type { RunFlare } from '../layout/run-flare.ts'

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
}

export function sheetOf(model: RunModel, unit: Unit): EndSheet | LongitudinalSheet {
  const end = unit === 'first' ? model.first : unit === 'second' ? model.second : null
  return end !== null && end.kind === 'unit' ? end.sheet : model.system
}

export const endSheetOf = (model: RunModel, unit: Unit): EndSheet | null => {
  const sheet = sheetOf(model, unit)
  return sheet.kind === 'longitudinal' ? null : sheet
}
