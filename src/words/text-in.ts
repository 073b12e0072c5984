import type { SheetText } from '../core/hardware/sheet-text.ts'
import type { Language } from '../core/language.ts'

/** The text in `wanted`; if the sheet does not have it, as it stands there, marked with its language. */
export const textIn = ({ own, language, others }: SheetText, wanted: Language): string =>
  language === wanted ? own : (others[wanted] ?? `${own} (${language})`)
