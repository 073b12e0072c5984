import { type Language, languages } from '../language.ts'
import type { HardwareSheet } from './hardware-sheet.ts'
import { unmarked } from './marked-values.ts'

/** A text of a hardware sheet, in every language in which the sheet has it. */
export interface SheetText {
  readonly kind: 'sheet text'
  readonly sheet: string
  readonly version: string
  /** In the sheet's own language: what stands in the sheet, values in braces where it marks them; it tells one text from another. */
  readonly own: string
  readonly language: Language
  readonly others: Readonly<Partial<Record<Language, string>>>
}

type Texts = Pick<HardwareSheet, 'id' | 'version' | 'language' | 'translations'>

/** `own`, which stands in the sheet, to be said. */
export function sheetText({ id, version, language = 'en', translations = {} }: Texts, own: string): SheetText {
  const others = languages.flatMap((one) => {
    const text = translations[one]?.[own]
    return text === undefined ? [] : [[one, text] as const]
  })
  return { kind: 'sheet text', sheet: id, version, own, language, others: Object.fromEntries(others) }
}

/** What the sheet is called, to be said. */
export const nameOf = (sheet: Texts & Pick<HardwareSheet, 'name'>): SheetText => sheetText(sheet, sheet.name)

/**
 * The same for two sayings that say the same: texts of sheets by what stands in the sheet, whichever sheet or edition it
 * is, whatever other languages that has it in, and whether its values are marked or not.
 */
export const contentOf = (said: unknown): string =>
  JSON.stringify(said, (_, value: unknown) => (isSheetText(value) ? unmarked(value.own) : value))

const isSheetText = (value: unknown): value is SheetText =>
  typeof value === 'object' && value !== null && 'kind' in value && value.kind === 'sheet text'
