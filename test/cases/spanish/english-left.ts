import { tables } from '../../../src/words/spanish/tables.ts'
import { withoutNames } from './same-in-both.ts'

const wordsIn = (text: string): readonly string[] => text.toLowerCase().match(/\p{L}{2,}/gu) ?? []

const spanishWords = new Set(
  tables.flatMap(({ sentences, patterns }) =>
    [...Object.values(sentences), ...patterns.map(([, spanish]) => spanish)].flatMap(wordsIn),
  ),
)

/** Words that the tables have in English and never in Spanish: where one is left over, something was not said. */
const englishWords = new Set(
  tables
    .flatMap(({ sentences, patterns }) => [...Object.keys(sentences), ...patterns.map(([english]) => english)])
    .flatMap(wordsIn)
    .filter((word) => !spanishWords.has(word)),
)

/** Words and names that both languages spell alike. */
const cognates = new Set([
  'cable',
  'compare',
  'control',
  'digital',
  'factor',
  'ft',
  'gnss',
  'inspector',
  'iso',
  'jcgm',
  'json',
  'lateral',
  'manual',
  'material',
  'no',
  'nominal',
  'panel',
  'sha',
  'simple',
  'terminal',
  'total',
  'vertical',
  'zinc',
])

/** Words that stand in both texts, names and titles aside: where one does, a printer left it in English. */
export const sharedWords = (inEnglish: string, inSpanish: string): readonly string[] => {
  const own = new Set(wordsIn(withoutNames(withoutUnits(inEnglish))))
  return [...new Set(wordsIn(withoutNames(withoutUnits(inSpanish))))].filter(
    (word) => own.has(word) && !cognates.has(word),
  )
}

const withoutUnits = (text: string): string =>
  text.replaceAll(/(?<=\d[ -])(?:in|ft|mm|m|mi\/h|km\/h)\b|\((?:in|ft)\)/g, '')

/** The texts in which a word stands that the tables have in English only, names and titles aside. */
export const englishIn = (texts: readonly string[]): readonly string[] =>
  [...new Set(texts)].filter((text) => wordsIn(withoutNames(text)).some((word) => englishWords.has(word)))
