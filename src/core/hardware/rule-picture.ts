import type { HardwareSheet, RulePicture } from './hardware-sheet.ts'
import { type SheetText, sheetText } from './sheet-text.ts'

/** A picture of a sheet's own, with what it shows to be said in any language. */
export interface SaidPicture extends Omit<RulePicture, 'alt'> {
  readonly alt: SheetText
}

/** The own picture of the rule that has this id; null where it has none, and for what is derived from layout and sheet. */
export function rulePicture(sheet: HardwareSheet, id: string): SaidPicture | null {
  const rule = sheet.parts.flatMap(({ rules }) => rules).find((one) => one.id === id)
  return rule?.picture === undefined ? null : { ...rule.picture, alt: sheetText(sheet, rule.picture.alt) }
}
