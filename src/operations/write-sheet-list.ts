import type { HardwareSheet, LongitudinalSheet } from '../core/hardware/hardware-sheet.ts'
import type { PaperName } from '../core/units/paper-names.ts'
import { writeSheetList } from '../documents/pdf/sheet-list.ts'
import { sheetListContents } from '../documents/sheet-list-contents.ts'
import type { Print } from '../words/print.ts'
import { requiredBySheet } from './sheet-requirements.ts'

interface Options {
  /** What the unit is at; null where no sheet that it joins is at hand: then nothing is said of what is required. */
  readonly system: LongitudinalSheet | null
  readonly page: PaperName
  readonly printedAt: string
  readonly author: string
  readonly print: Print
}

/** What of a sheet is not confirmed, as PDF for the engineer who has the document in hand. */
export function unconfirmedList(sheet: HardwareSheet, { system, print, ...printing }: Options): Promise<Uint8Array> {
  const required = system === null ? null : requiredBySheet(sheet, system)
  const contents = sheetListContents(sheet, (place) => (required?.get(place) ?? []).map(({ must }) => must), print)
  return writeSheetList(contents, { ...printing, lie: 'portrait', hash: '', print })
}
