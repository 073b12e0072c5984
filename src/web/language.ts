export const languages = { en: 'English', es: 'Español' } as const
export type Language = keyof typeof languages

let current: Language = 'en'

/** The language in force, here in the page or here in its worker. */
export const language = (): Language => current

/** Puts a language in force whose words are here. */
export function speak(next: Language): void {
  current = next
}
