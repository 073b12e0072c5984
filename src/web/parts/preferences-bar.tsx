import { useState } from 'preact/hooks'
import { type Hand, hands, type Light, lights, preferences, setPreferences } from '../fieldwork/preferences.ts'
import type { Language } from '../language.ts'
import { m } from '../messages.ts'
import { LanguageOptions } from './language-options.tsx'

interface Props {
  readonly language: Language
  readonly choose: (language: Language) => void
}

/** Language and light of the page, and the hand that it lies in. */
export function PreferencesBar({ language, choose }: Props) {
  const [light, setLight] = useState<Light>(() => preferences().light)
  const [hand, setHand] = useState<Hand>(() => preferences().hand)
  return (
    <div class="preferences">
      <label>
        <span class="unseen">{m.preferences.language}</span>
        <select
          aria-label={m.preferences.language}
          value={language}
          onChange={({ currentTarget }) => choose(currentTarget.value as Language)}
        >
          <LanguageOptions />
        </select>
      </label>
      <label>
        <span class="unseen">{m.preferences.light}</span>
        <select
          aria-label={m.preferences.light}
          value={light}
          onChange={({ currentTarget }) => {
            const next = currentTarget.value as Light
            setLight(next)
            setPreferences({ light: next })
          }}
        >
          {lights.map((one) => (
            <option key={one} value={one}>
              {m.preferences.lights[one]}
            </option>
          ))}
        </select>
      </label>
      <label>
        <span class="unseen">{m.preferences.hand}</span>
        <select
          aria-label={m.preferences.hand}
          value={hand}
          onChange={({ currentTarget }) => {
            const next = currentTarget.value as Hand
            setHand(next)
            setPreferences({ hand: next })
          }}
        >
          {hands.map((one) => (
            <option key={one} value={one}>
              {m.preferences.hands[one]}
            </option>
          ))}
        </select>
      </label>
    </div>
  )
}
