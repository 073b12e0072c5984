import { partsOf } from '../core/hardware/marked-values.ts'
import type { SheetText } from '../core/hardware/sheet-text.ts'
import type { Language } from '../core/language.ts'
import type { Print } from './print.ts'

/** The text in `wanted`; if the sheet does not have it, as it stands there, marked with its language. */
export const textIn = ({ own, language, others }: SheetText, wanted: Language): string =>
  language === wanted ? own : (others[wanted] ?? `${own} (${language})`)

/** The text with each value that it marks in the units asked for; what it does not mark stays as it is written. */
export const withValues = (text: string, print: Print): string =>
  partsOf(text)
    .map((part) => (typeof part === 'string' ? part : print.written(part.written, part.value, part.unit)))
    .join('')
