import type { HardwareSheet } from '../core/hardware/hardware-sheet.ts'
import { shippedSheets } from '../core/hardware/shipped-sheets.ts'

/** The sheets in use by id: those that ship, replaced or joined by the given ones. */
export function sheetShelf(own: readonly HardwareSheet[]): ReadonlyMap<string, HardwareSheet> {
  return new Map([...shippedSheets, ...own].map((sheet) => [sheet.id, sheet]))
}
