import { useState } from 'preact/hooks'
import { type Language, language, languages } from '../language.ts'
import { setLanguage } from '../messages.ts'

/** `auto` follows the device; `sun` is light, `night` dark. */
export const lights = ['auto', 'sun', 'night'] as const
export type Light = (typeof lights)[number]

/** The hand that holds the device, whose thumb presses. */
export const hands = ['right', 'left'] as const
export type Hand = (typeof hands)[number]

export interface Preferences {
  readonly language: Language
  readonly light: Light
  readonly hand: Hand
  /** Of a run that is begun on this device. */
  readonly units: 'us' | 'metric'
  /** Whether the position of the device may be kept with a photo. */
  readonly position: boolean
  readonly areCautionsUnderstood: boolean
  /** Whether what a first visit is told was put away. */
  readonly isKnown: boolean
  /** Whether an answer that a finger touched saves itself when it meets. */
  readonly goesOn: boolean
  /** Whether the screen is kept awake on a walk. */
  readonly staysAwake: boolean
  /** Whether the keyboard of the device comes up beside the keypad of the page, on a device that is touched. */
  readonly hasDeviceKeyboard: boolean
}

const key = 'lapwise/preferences'

/** What a browser that keeps no storage forgets with the page. */
let unkept: Partial<Preferences> = {}

export function preferences(): Preferences {
  const first: Preferences = {
    language: deviceLanguage(),
    light: 'auto',
    hand: 'right',
    units: 'us',
    position: false,
    areCautionsUnderstood: false,
    isKnown: false,
    goesOn: true,
    staysAwake: true,
    hasDeviceKeyboard: false,
  }
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
  showHand(next.hand)
}

const deviceLanguage = (): Language =>
  (Object.keys(languages) as Language[]).find((one) => navigator.language.startsWith(one)) ?? 'en'

function showLight(light: Light): void {
  if (light === 'auto') delete document.documentElement.dataset.light
  else document.documentElement.dataset.light = light
}

function showHand(hand: Hand): void {
  document.documentElement.dataset.hand = hand
}

/** Puts language, light and hand in force as they were chosen, before anything is drawn. */
export async function startPreferences(): Promise<void> {
  const { language: wanted, light, hand } = preferences()
  showLight(light)
  showHand(hand)
  await show(wanted)
}

/** Without its words, and without a connection to fetch them, the page stays in the language it is in. */
const show = (next: Language): Promise<void> => setLanguage(next).catch(() => undefined)

/** The language in force, and the way to another. */
export function useLanguage(): readonly [Language, choose: (next: Language) => void] {
  const [shown, setShown] = useState(language)
  return [
    shown,
    (next) => {
      setPreferences({ language: next })
      void show(next).then(() => setShown(language()))
    },
  ]
}
