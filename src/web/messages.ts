import { inBothUnits } from '../words/in-both-units.ts'
import type { Said } from '../words/said.ts'
import { type Language, speak } from './language.ts'
import { en, type Messages } from './messages/en.ts'

/** The words of the page, in the language in force: a live binding, so it is read when a view is drawn, never before. */
export let m: Messages = en
/** A sentence of the model in the language in force, and what of it nobody translated. */
export let sayWithRest: (sentence: string) => Said = asItIs

/** Fetches the words of a language and puts them in force. */
export async function setLanguage(next: Language): Promise<void> {
  if (next === 'es') {
    const [{ es }, spanish] = await Promise.all([
      import('./messages/es.ts'),
      import('../words/spanish/say-in-spanish.ts'),
    ])
    m = es
    sayWithRest = spanish.sayWithRest
  } else {
    m = en
    sayWithRest = asItIs
  }
  speak(next)
  document.documentElement.lang = next
}

/**
 * A sentence of the model in the language in force; as it is where nobody translated it.
 * @param units  of the run or site: a length in the other system is followed by the same in these
 */
export function say(sentence: string, units?: 'us' | 'metric'): string {
  const { text } = sayWithRest(sentence)
  return units === undefined ? text : inBothUnits(text, units)
}

function asItIs(sentence: string): Said {
  return { text: sentence, left: [sentence] }
}
