import { englishWords } from '../../src/words/english.ts'
import type { Print } from '../../src/words/print.ts'
import { printIn, type Words } from '../../src/words/print-in.ts'

/**
 * A language that nobody speaks: English in longer words, each text that is said in `⟦ ⟧`. Numbers stay as they are, what
 * a person wrote stands in `‹ ›`. What stands in no brackets was
 * not said at all.
 */
export const pseudo = (units: Print['units']): Print => ({
  ...printIn(words, units),
  theirs: asTheirs,
  moment: (at) => said(printIn(words, units).moment(at)),
  day: (day) => said(printIn(words, units).day(day)),
  pick: ({ en }) => saidMessages(en),
  own: (_, english) => saidMessages(english),
})

/** The text as it would be, had it been said. */
export const said = (text: string): string => `⟦${longer(text)}⟧`

const asTheirs = (text: string): string => `‹${text}›`

const words: Words = {
  language: 'en',
  printers: Object.fromEntries(
    Object.entries(englishWords.printers as Record<string, (saying: never, print: Print) => string>).map(
      ([kind, printer]) => [kind, inBrackets(kind, printer)],
    ),
  ) as unknown as Words['printers'],
  joints: { and: said('and'), or: said('or') },
  own: null,
}

/** What a person wrote is not a text of ours, and stands in its own brackets alone. */
function inBrackets(kind: string, printer: (saying: never, print: Print) => string) {
  return (saying: never, print: Print): string => {
    const text = printer(saying, { ...print, theirs: asTheirs, pick: ({ en }) => saidMessages(en) })
    return kind === 'theirs' ? text : said(text)
  }
}

/** Words of more than two letters by two fifths longer, outside of brackets that stand in the text already and of what is put in. */
function longer(text: string): string {
  let depth = 0
  return text
    .split(/([⟦⟧‹›]|\{\w+\})/)
    .map((part) => {
      if (/^[⟦‹]$/.test(part)) depth++
      else if (/^[⟧›]$/.test(part)) depth--
      else if (depth === 0 && !part.startsWith('{'))
        return part.replace(/\p{L}{3,}/gu, (word) => word + '~'.repeat(Math.ceil(word.length * 0.4)))
      return part
    })
    .join('')
}

/**
 * Words of the page, each said; what is given to one stays as it was said. The page that is built for it imports it.
 * @public
 */
export function saidMessages<T>(messages: T): T {
  if (typeof messages === 'string') return said(messages) as T
  if (typeof messages === 'function') return ((...given: unknown[]) => saidMessages(messages(...given))) as T
  if (Array.isArray(messages)) return messages.map(saidMessages) as T
  if (typeof messages !== 'object' || messages === null) return messages
  return Object.fromEntries(Object.entries(messages).map(([name, one]) => [name, saidMessages(one)])) as T
}
