import type { EndSheet, LongitudinalSheet } from '../hardware/hardware-sheet.ts'
import type { RunEnd, Unit } from './layout.ts'

interface Sheets {
  readonly system: LongitudinalSheet
  readonly first: RunEnd
  readonly second: RunEnd
}

/** The sheet by which a part of the run is made. */
export function sheetOf({ system, first, second }: Sheets, unit: Unit): EndSheet | LongitudinalSheet {
  const end = unit === 'first' ? first : unit === 'second' ? second : null
  return end !== null && end.kind === 'unit' ? end.sheet : system
}
