import type { english } from '../words/english.ts'
import { firstEnglish } from '../words/first-english.ts'
import type { Print } from '../words/print.ts'
import type { Saying } from '../words/saying.ts'
import { en as deviceEn } from './data/messages/en.ts'
import { speakOfDevice } from './data/messages.ts'
import { type Language, speak } from './language.ts'
import { en, type Messages } from './messages/en.ts'
import { keepTogether } from './messages/keep-together.ts'
import type { RunFormWords } from './messages/run-form-en.ts'
import type { SiteWords } from './messages/site-en.ts'

/** The words of the page, in the language in force: a live binding, so it is read when a view is drawn, never before. */
export let m: Messages = en
/** Those of a site in another language than English; null in English, whose words come with the site. */
export let siteWords: SiteWords | null = null
/** The same of the form of a run. */
export let runFormWords: RunFormWords | null = null
/** What says the model's words in the language in force, lengths in the units of the run or site as well. */
export let printIn: (units: Print['units']) => Print = firstEnglish

/** All that the model says in English; null until it was fetched. */
let allEnglish: typeof english | null = null

/** Fetches all that the model says in English; of it only how runs stand can be said before. Another language comes whole. */
export async function fetchWords(): Promise<void> {
  if (haveWords()) return
  allEnglish ??= (await import('../words/english.ts')).english
  if (printIn === firstEnglish) printIn = allEnglish
}

export const haveWords = (): boolean => printIn !== firstEnglish

/** Fetches the words of a language and puts them in force. */
export async function setLanguage(next: Language): Promise<void> {
  if (next === 'es') {
    const [{ es }, { es: deviceEs }, { siteEs }, { runFormEs }, { spanish }] = await Promise.all([
      import('./messages/es.ts'),
      import('./data/messages/es.ts'),
      import('./messages/site-es.ts'),
      import('./messages/run-form-es.ts'),
      import('../words/spanish.ts'),
    ])
    m = es
    speakOfDevice(deviceEs)
    siteWords = siteEs
    runFormWords = runFormEs
    printIn = spanish
  } else {
    // What is drawn in another language already says more than a list does.
    if (haveWords()) allEnglish ??= (await import('../words/english.ts')).english
    m = en
    speakOfDevice(deviceEn)
    siteWords = null
    runFormWords = null
    printIn = allEnglish ?? firstEnglish
  }
  speak(next)
  document.documentElement.lang = next
}

/**
 * What the model says, in the language in force.
 * @param units  of the run or site, in which lengths are said first; without, as they are published
 */
export const say = (said: Saying, units?: 'us' | 'metric'): string => keepTogether(printIn(units ?? null).say(said))

/** What a person wrote, as it was written. */
export const asWritten = (text: string): string => printIn(null).theirs(text)

/** What went wrong; a text is in the words of the page, or of an older server, already. */
export const troubleWords = (said: Saying | string): string => (typeof said === 'string' ? said : say(said))
