import type { Language } from '../language.ts'
import type { HardwareSheet, Translated } from './hardware-sheet.ts'

type Texts = Pick<HardwareSheet, 'translations' | 'earlierTranslations'>

/** The sheet with `text` said in another language as `said`; an empty one takes what was said away. */
export function withTranslation<S extends Texts>(sheet: S, to: Language, text: string, said: string): S {
  const { [text]: _, ...others } = sheet.translations?.[to] ?? {}
  const { [text]: __, ...earlier } = sheet.earlierTranslations?.[to] ?? {}
  const isSaid = said.trim() !== ''
  return {
    ...sheet,
    translations: { ...sheet.translations, [to]: isSaid ? { ...others, [text]: said } : others },
    ...(isSaid && sheet.earlierTranslations !== undefined
      ? { earlierTranslations: { ...sheet.earlierTranslations, [to]: earlier } }
      : {}),
  }
}

/** The sheet with what was said of `text` while it stood otherwise, for who translates it anew. */
export const withEarlier = <S extends Texts>(sheet: S, to: Language, text: string, before: Translated): S => ({
  ...sheet,
  earlierTranslations: {
    ...sheet.earlierTranslations,
    [to]: { ...sheet.earlierTranslations?.[to], [text]: before },
  },
})
