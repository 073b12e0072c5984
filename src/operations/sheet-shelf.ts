import type { HardwareSheet } from '../core/hardware/hardware-sheet.ts'
import type { RunFile } from '../formats/run/run-file.ts'
import { shippedSheets } from '../sheets/shipped-sheets.ts'

export type Shelf = ReadonlyMap<string, HardwareSheet>

export const shippedShelf: Shelf = new Map(shippedSheets.map((sheet) => [sheet.id, sheet]))

/** The sheets in use by id: those that ship, replaced or joined by the given ones. */
export const sheetShelf = (own: readonly HardwareSheet[]): Shelf =>
  own.length === 0 ? shippedShelf : new Map([...shippedShelf, ...own.map((sheet) => [sheet.id, sheet] as const)])

/**
 * The sheets that a run may name: a pinned run brings all of its own and never looks on the shelf.
 * @param shelf  what is on it
 */
export const shelfOf = ({ version, sheets }: Pick<RunFile, 'version' | 'sheets'>, shelf: Shelf = shippedShelf): Shelf =>
  new Map([...(version === undefined ? shelf : []), ...sheets.map((sheet) => [sheet.id, sheet] as const)])
