import type { HardwareSheet, Translated } from '../core/hardware/hardware-sheet.ts'
import { withEarlier, withTranslation } from '../core/hardware/translate-text.ts'
import { type Language, languages } from '../core/language.ts'
import { placedTexts } from '../formats/sheet/sheet-texts.ts'

type Texts = Pick<HardwareSheet, 'translations' | 'earlierTranslations'>

/**
 * The changed sheet without translations of texts that no longer stand in it. Where a text stood that says something else now, its
 * translation is kept as the earlier one; one that stands as it was translated before is said so again.
 *
 * @param from  the sheet before it was changed
 * @param to    the changed one, of which anything may still be missing
 */
export function followTexts<S extends Texts>(from: Texts, to: S): S {
  const [before, placed] = [placedTexts(from), placedTexts(to)]
  const texts = new Set(placed.map(({ text }) => text))
  const was = new Map(before.map(({ place, text }) => [place, text]))
  return languages.reduce((into, language) => {
    const moved = placed.flatMap(({ place, text }) => {
      const stood = was.get(place)
      if (stood === undefined || stood === text || text === '') return []
      const known = earlierOf(to, language, stood) ?? earlierOf(from, language, stood)
      const isSaid = to.translations?.[language]?.[text] !== undefined
      return isSaid || known === null ? [] : [{ text, known }]
    })
    return moved.reduce(
      (next, { text, known }) =>
        text === known.text
          ? withTranslation(next, language, text, known.said)
          : withEarlier(next, language, text, known),
      without(into, language, texts),
    )
  }, to)
}

/** What was said of a text, which is what to say of it earlier once it says something else. */
function earlierOf({ translations, earlierTranslations }: Texts, to: Language, text: string): Translated | null {
  const said = translations?.[to]?.[text]
  return said === undefined ? (earlierTranslations?.[to]?.[text] ?? null) : { text, said }
}

function without<S extends Texts>(sheet: S, to: Language, texts: ReadonlySet<string>): S {
  const standing = <T>(said: Readonly<Record<string, T>>): Readonly<Record<string, T>> =>
    Object.fromEntries(Object.entries(said).filter(([text]) => texts.has(text)))
  const { translations, earlierTranslations } = sheet
  return {
    ...sheet,
    ...(translations?.[to] && { translations: { ...translations, [to]: standing(translations[to]) } }),
    ...(earlierTranslations?.[to] && {
      earlierTranslations: { ...earlierTranslations, [to]: standing(earlierTranslations[to]) },
    }),
  }
}
