import { useEffect, useState } from 'preact/hooks'
import { type Language, language, languages, setLanguage } from '../messages.ts'

/** `auto` follows the device; `sun` is light, `night` dark. */
export const lights = ['auto', 'sun', 'night'] as const
export type Light = (typeof lights)[number]

export interface Preferences {
  readonly language: Language
  readonly light: Light
  /** Whether the position of the device may be kept with a photo. */
  readonly position: boolean
}

const key = 'lapwise/preferences'

/** What a browser that keeps no storage forgets with the page. */
let unkept: Partial<Preferences> = {}

export function preferences(): Preferences {
  const first: Preferences = { language: deviceLanguage(), light: 'auto', position: false }
  try {
    return { ...first, ...JSON.parse(localStorage.getItem(key) ?? '{}'), ...unkept }
  } catch {
    return { ...first, ...unkept }
  }
}

export function setPreferences(changes: Partial<Preferences>): void {
  const next = { ...preferences(), ...changes }
  try {
    localStorage.setItem(key, JSON.stringify(next))
  } catch {
    unkept = next
  }
  showLight(next.light)
}

const deviceLanguage = (): Language =>
  (Object.keys(languages) as Language[]).find((one) => navigator.language.startsWith(one)) ?? 'en'

function showLight(light: Light): void {
  if (light === 'auto') delete document.documentElement.dataset.light
  else document.documentElement.dataset.light = light
}

/** The language in force once its words are here, null before; and the way to another. */
export function useLanguage(): readonly [Language | null, choose: (next: Language) => void] {
  const [shown, setShown] = useState<Language | null>(null)
  const show = (next: Language): void => {
    // Without its words, and without a connection to fetch them, the page stays in the language it is in.
    void setLanguage(next)
      .catch(() => undefined)
      .then(() => setShown(language()))
  }
  useEffect(() => {
    const wanted = preferences()
    showLight(wanted.light)
    show(wanted.language)
  }, [])
  return [
    shown,
    (next) => {
      setPreferences({ language: next })
      show(next)
    },
  ]
}
