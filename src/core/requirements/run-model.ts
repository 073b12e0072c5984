import type { EndSheet, LongitudinalSheet } from '../hardware/hardware-sheet.ts'
import type { CurbBefore, Layout, RunEnd, Unit } from '../layout/layout.ts'

/** A chosen layout with everything that decides what must be true of it. */
export interface RunModel {
  readonly layout: Layout
  readonly system: LongitudinalSheet
  readonly first: RunEnd
  readonly second: RunEnd
  /** New work falls under the agreement's letting dates; standing work does not. Null when not said. */
  readonly work: 'new' | 'standing' | null
  /** ISO date of the letting; null when not said. */
  readonly letting: string | null
  /** Left out when not said. */
  readonly curb?: CurbBefore | undefined
}

export function sheetOf(model: RunModel, unit: Unit): EndSheet | LongitudinalSheet {
  const end = unit === 'first' ? model.first : unit === 'second' ? model.second : null
  return end !== null && end.kind === 'unit' ? end.sheet : model.system
}

export const endSheetOf = (model: RunModel, unit: Unit): EndSheet | null => {
  const sheet = sheetOf(model, unit)
  return sheet.kind === 'longitudinal' ? null : sheet
}
