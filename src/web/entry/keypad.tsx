import { useState } from 'preact/hooks'
import { isSigned, kindOf, otherUnits, type QuantityKind, type Unit } from '../../core/units/quantity-kinds.ts'
import { m } from '../messages.ts'

interface Props {
  /** Of what is read, which tells its kind. */
  readonly unit: Unit
  /** Puts a text in where the caret stands. */
  readonly insert: (text: string) => void
  readonly erase: () => void
  readonly units: 'us' | 'metric'
}

const eighths = ['⅛', '¼', '⅜', '½', '⅝', '¾', '⅞', '/']
const sixteenths = ['1/16', '3/16', '5/16', '7/16', '9/16', '11/16', '13/16', '15/16']

/**
 * Digits at the left; at the right what a phone's own keypad lacks: fractions of an inch and its units below them, or the
 * units of what else is read. A count has digits alone, and only what can be below nothing has a minus.
 */
export function Keypad({ unit, insert, erase, units }: Props) {
  const [isFine, setFine] = useState(false)
  const fractions = isFine ? sixteenths : eighths
  const kind = kindOf(unit)
  const isLength = kind === 'length'
  // Nobody reads eighths of a millimetre; a tape in inches is still typed on the keyboard.
  const hasFractions = isLength && units === 'us'
  const unitKeys = isLength ? (units === 'us' ? ['ft', 'in'] : ['m', 'mm']) : unitsOf(kind)
  const key = (label: string, text = label) => (
    <button key={label} type="button" class="key" onClick={() => insert(text)}>
      {label}
    </button>
  )
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset would be a group of fields
    <div
      class={hasFractions ? 'keypad' : 'keypad plain-keys'}
      role="group"
      aria-label={m.entry.keypad}
      // The caret stays where it is in the field.
      onMouseDown={(event) => event.preventDefault()}
    >
      <div class="keys">
        {['1', '2', '3', '4', '5', '6', '7', '8', '9', ...(kind === 'count' ? [] : ['.']), '0'].map((digit) =>
          key(digit),
        )}
        <button type="button" class="key" aria-label={m.key.erase} onClick={erase}>
          ⌫
        </button>
      </div>
      <div class="keys">
        {hasFractions && fractions.map((fraction) => key(fraction, isFine ? ` ${fraction}` : fraction))}
        {hasFractions && (
          <button type="button" class="key word" aria-pressed={isFine} onClick={() => setFine(!isFine)}>
            {isFine ? m.key.eighths : m.key.sixteenths}
          </button>
        )}
        {unitKeys.map((one) => key(one, ` ${one} `))}
        {(isLength || isSigned(kind)) && (
          <button type="button" class="key" aria-label={m.key.minus} onClick={() => insert('-')}>
            −
          </button>
        )}
      </div>
    </div>
  )
}

const unitsOf = (kind: QuantityKind): readonly Unit[] =>
  otherUnits.filter((unit) => unit !== 'count' && kindOf(unit) === kind)
