import type { HardwareSheet } from '../core/hardware/hardware-sheet.ts'
import { shippedSheets } from '../sheets/shipped-sheets.ts'

export type Shelf = ReadonlyMap<string, HardwareSheet>

export const shippedShelf: Shelf = new Map(shippedSheets.map((sheet) => [sheet.id, sheet]))

/** The sheets in use by id: those that ship, replaced or joined by the given ones. */
export const sheetShelf = (own: readonly HardwareSheet[]): Shelf =>
  own.length === 0 ? shippedShelf : new Map([...shippedShelf, ...own.map((sheet) => [sheet.id, sheet] as const)])
