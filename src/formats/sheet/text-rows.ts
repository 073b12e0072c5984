import type { HardwareSheet, Translated } from '../../core/hardware/hardware-sheet.ts'
import { type Language, languages } from '../../core/language.ts'
import { type PlacedText, placedTexts } from './sheet-texts.ts'

/** A text of a sheet with what another language says of it. */
export interface TextRow extends PlacedText {
  readonly said: string | null
  /** What was said of it before it was changed. */
  readonly before: Translated | null
  /** `source` is a title that may stay as it is. */
  readonly state: 'missing' | 'changed' | 'translated' | 'source'
}

/** Languages into which a sheet can be translated. */
export const languagesBeside = ({ language = 'en' }: Pick<HardwareSheet, 'language'>): readonly Language[] =>
  languages.filter((one) => one !== language)

/** Each text of the sheet once, where it stands first. */
export function textRows(
  sheet: Pick<HardwareSheet, 'translations' | 'earlierTranslations'>,
  to: Language,
): readonly TextRow[] {
  const texts = placedTexts(sheet).filter(({ text }) => text !== '')
  const firsts = new Map(texts.toReversed().map((one) => [one.text, one]))
  return texts
    .filter((one) => firsts.get(one.text) === one)
    .map((one) => {
      const said = sheet.translations?.[to]?.[one.text] ?? null
      const before = said === null ? (sheet.earlierTranslations?.[to]?.[one.text] ?? null) : null
      return { ...one, said, before, state: stateOf(one, said, before) }
    })
}

function stateOf({ isOfSource }: PlacedText, said: string | null, before: Translated | null): TextRow['state'] {
  if (said !== null) return 'translated'
  if (before !== null) return 'changed'
  return isOfSource ? 'source' : 'missing'
}
