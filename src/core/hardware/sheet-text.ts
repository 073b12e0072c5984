import type { Language } from '../language.ts'
import type { HardwareSheet } from './hardware-sheet.ts'

/** A text of a hardware sheet, in every language in which the sheet has it. */
export interface SheetText {
  readonly kind: 'sheet text'
  readonly sheet: string
  readonly version: string
  /** In the sheet's own language: what stands in the sheet, and tells one text from another. */
  readonly own: string
  readonly language: Language
}

/** `own`, which stands in the sheet, to be said. */
export const sheetText = ({ id, version }: Pick<HardwareSheet, 'id' | 'version'>, own: string): SheetText => ({
  kind: 'sheet text',
  sheet: id,
  version,
  own,
  language: 'en',
})

/**
 * The same for two sayings that say the same: texts of sheets by what stands in the sheet, whichever sheet or edition it
 * is and whatever other languages that has it in.
 */
export const contentOf = (said: unknown): string =>
  JSON.stringify(said, (_, value: unknown) => (isSheetText(value) ? value.own : value))

const isSheetText = (value: unknown): value is SheetText =>
  typeof value === 'object' && value !== null && 'kind' in value && value.kind === 'sheet text'
