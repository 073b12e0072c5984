import type { FitCheck } from '../fit/fit-check.ts'
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
  /** Left out where the run was laid out. */
  readonly counted?: CountedRun | undefined
  /** What was checked of the site that the run was made of; left out where it was made of none. */
  readonly siteChecks?: readonly FitCheck[] | undefined
}

/** What stands, and what was said of it besides. */
export interface CountedRun extends CountedPieces {
  /** The stretch that has to be shielded, inches from the run's datum. */
  readonly need: LayoutRequest['need']
  /** Whether it is known where it stands: by a station, or by the position of a device. */
  readonly isLocated: boolean
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
