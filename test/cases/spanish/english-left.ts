import { landedTexts } from '../../../src/words/es/landed-sheets.ts'
import { withoutNames } from './same-in-both.ts'

const wordsIn = (text: string): readonly string[] => text.toLowerCase().match(/\p{L}{2,}/gu) ?? []

const spanishWords = new Set(Object.values(landedTexts).flatMap(wordsIn))

/** More words of the model's English that no text in Spanish has: of places, sources, tests and ends. */
const moreWords = `
  an angle answer answers approach asking barrier beside blocks checked common counted crash crashworthy departure
  document doubled exactly eye facts family fast generation goes half handbook hardware how identification
  inspection limits names nothing number numbers older passed practice prints public question questions reading
  recalled receiver size spacing span speed standing state stated static station steel systems tall tape terminals
  test torque trade width words work working writer
`

/** Words that the model has in English and never in Spanish: where one is left over, something was not said. */
const englishWords = new Set([
  ...Object.keys(landedTexts)
    .flatMap(wordsIn)
    .filter((word) => !spanishWords.has(word)),
  ...wordsIn(moreWords),
])

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
  'qr',
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

/** The texts in which a word stands that is English only, names and titles aside. */
export const englishIn = (texts: readonly string[]): readonly string[] =>
  [...new Set(texts)].filter((text) => wordsIn(withoutNames(text)).some((word) => englishWords.has(word)))
