import { useState } from 'preact/hooks'
import { m } from '../messages.ts'

interface Props {
  /** Puts a text in where the caret stands. */
  readonly insert: (text: string) => void
  readonly erase: () => void
  readonly units: 'us' | 'metric'
}

const eighths = ['⅛', '¼', '⅜', '½', '⅝', '¾', '⅞', '/']
const sixteenths = ['1/16', '3/16', '5/16', '7/16', '9/16', '11/16', '13/16', '15/16']

/** Digits at the left, fractions at the right, units below: what a phone's own keypad lacks for lengths. */
export function Keypad({ insert, erase, units }: Props) {
  const [isFine, setFine] = useState(false)
  const fractions = isFine ? sixteenths : eighths
  const unitKeys = units === 'us' ? ['ft', 'in'] : ['m', 'mm']
  const key = (label: string, text = label) => (
    <button key={label} type="button" class="key" onClick={() => insert(text)}>
      {label}
    </button>
  )
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset would be a group of fields
    <div
      class="keypad"
      role="group"
      aria-label={m.entry.keypad}
      // The caret stays where it is in the field.
      onMouseDown={(event) => event.preventDefault()}
    >
      <div class="keys">
        {['1', '2', '3', '4', '5', '6', '7', '8', '9', '.', '0'].map((digit) => key(digit))}
        <button type="button" class="key" aria-label={m.key.erase} onClick={erase}>
          ⌫
        </button>
      </div>
      <div class="keys">
        {fractions.map((fraction) => key(fraction, isFine ? ` ${fraction}` : fraction))}
        <button type="button" class="key word" aria-pressed={isFine} onClick={() => setFine(!isFine)}>
          {isFine ? m.key.eighths : m.key.sixteenths}
        </button>
        {unitKeys.map((unit) => key(unit, ` ${unit} `))}
        <button type="button" class="key" aria-label={m.key.minus} onClick={() => insert('-')}>
          −
        </button>
      </div>
    </div>
  )
}
