import { en, type Messages } from './messages/en.ts'

export const languages = { en: 'English', es: 'Español' } as const
export type Language = keyof typeof languages

/** The words of the page, in the language in force: a live binding, so it is read when a view is drawn, never before. */
export let m: Messages = en
/** A sentence of the rules in the language in force; as it is where nobody translated it. */
export let say: (sentence: string) => string = (sentence) => sentence
let current: Language = 'en'

export const language = (): Language => current

/** Fetches the words of a language and puts them in force. */
export async function setLanguage(next: Language): Promise<void> {
  if (next === 'es') {
    const [{ es }, { sayInSpanish }] = await Promise.all([
      import('./messages/es.ts'),
      import('../words/spanish/say-in-spanish.ts'),
    ])
    m = es
    say = sayInSpanish
  } else {
    m = en
    say = (sentence) => sentence
  }
  current = next
  document.documentElement.lang = next
}
