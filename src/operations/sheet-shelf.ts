import type { HardwareSheet } from '../core/hardware/hardware-sheet.ts'
import { shippedSheets } from '../sheets/shipped-sheets.ts'
import { isLaterEdition } from './later-edition.ts'

export type Shelf = ReadonlyMap<string, HardwareSheet>

export const shippedShelf: Shelf = new Map(shippedSheets.map((sheet) => [sheet.id, sheet]))

/** The sheets in use by id: those that ship, replaced or joined by the given ones. */
export const sheetShelf = (own: readonly HardwareSheet[]): Shelf =>
  own.length === 0 ? shippedShelf : new Map([...shippedShelf, ...own.map((sheet) => [sheet.id, sheet] as const)])

/** Of each sheet the latest edition; of editions that cannot be put in order the one that comes last in `editions`. */
export function latestEditions(editions: readonly HardwareSheet[]): readonly HardwareSheet[] {
  const latest = new Map<string, HardwareSheet>()
  for (const sheet of editions) {
    const known = latest.get(sheet.id)
    if (known === undefined || !isLaterEdition(known.version, sheet.version)) latest.set(sheet.id, sheet)
  }
  return [...latest.values()]
}
