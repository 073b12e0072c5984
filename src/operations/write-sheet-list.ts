import type { HardwareSheet, LongitudinalSheet } from '../core/hardware/hardware-sheet.ts'
import { writeSheetList } from '../documents/pdf/sheet-list.ts'
import { sheetListContents } from '../documents/sheet-list-contents.ts'
import { requiredBySheet } from './sheet-requirements.ts'
import type { SheetPrinting } from './write-sheet-cards.ts'

/**
 * What of a sheet is not confirmed, as PDF for the engineer who has the document in hand.
 * @param system  what the unit is at; null where no sheet that it joins is at hand: then nothing is said of what is required
 */
export function unconfirmedList(
  sheet: HardwareSheet,
  system: LongitudinalSheet | null,
  printing: SheetPrinting,
): Promise<Uint8Array> {
  const required = system === null ? null : requiredBySheet(sheet, system)
  const mustsAt = (place: string) => (required?.get(place) ?? []).map(({ must }) => must)
  const contents = sheetListContents(sheet, printing.isChanged, mustsAt, printing.print)
  return writeSheetList(contents, { ...printing, lie: 'portrait', hash: '' })
}
