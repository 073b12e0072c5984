import type { ComponentChildren } from 'preact'
import { useLayoutEffect, useMemo, useRef } from 'preact/hooks'
import { kindOf, type Unit } from '../../core/units/quantity-kinds.ts'
import { parseValue } from '../../core/units/value-text.ts'
import { m, say } from '../messages.ts'
import { echoValue } from './echo-value.ts'
import { Keypad } from './keypad.tsx'

interface Props {
  readonly text: string
  /** Of a number that names none; it tells what kind of quantity is asked for. */
  readonly unit: Unit
  readonly units: 'us' | 'metric'
  /** What else was understood of it, in words. */
  readonly after: string | null
  readonly change: (text: string) => void
  /** Whether the keyboard of the device comes up beside the keypad. */
  readonly hasDeviceKeyboard: boolean
  /** What is asked beside the field. */
  readonly beside: ComponentChildren
  /** Stands between field and keypad. */
  readonly children: ComponentChildren
}

/** A value in any way the trade writes it, by keyboard or keypad, and what was understood of it. */
export function ValueField({ text, unit, units, after, change, hasDeviceKeyboard, beside, children }: Props) {
  const field = useRef<HTMLInputElement>(null)
  const label = labelWords(unit)
  const kind = kindOf(unit)
  const parsed = parseValue(text, unit)
  const isRight = parsed.ok && kindOf(parsed.value.unit) === kind

  // The keypad is drawn once and reaches what is typed through this.
  const latest = useRef({ text, change })
  latest.current = { text, change }
  const caret = useRef<number | null>(null)
  // Written once all else of the page stands: the browser lays the page out when a field is written.
  useLayoutEffect(() => {
    const input = field.current!
    const at = caret.current
    caret.current = null
    const isWritten = input.value !== text
    if (isWritten) input.value = text
    // A field that was written has its caret at the end already.
    if (at !== null && !(isWritten && at === text.length)) input.setSelectionRange(at, at)
  })
  const put = (from: number, to: number, insertion: string): void => {
    const { text, change } = latest.current
    const next = (text.slice(0, from) + insertion + text.slice(to)).replace(/^ +/, '').replace(/ {2,}/g, ' ')
    caret.current = next.length - (text.length - to)
    change(next)
  }
  const selection = (): readonly [number, number] => {
    const { selectionStart, selectionEnd } = field.current!
    const end = latest.current.text.length
    return [selectionStart ?? end, selectionEnd ?? end]
  }
  const keypad = useMemo(
    () => (
      <Keypad
        unit={unit}
        units={units}
        insert={(insertion) => put(...selection(), insertion)}
        erase={() => {
          const [from, to] = selection()
          put(from === to ? Math.max(0, from - 1) : from, to, '')
        }}
      />
    ),
    [unit, units, m],
  )
  return (
    <div class="value">
      <label class="unseen" for="value">
        {label}
      </label>
      <div class="value-row">
        <input
          ref={field}
          id="value"
          class="value-text"
          data-first
          inputMode={hasDeviceKeyboard ? 'text' : 'none'}
          autocomplete="off"
          spellcheck={false}
          aria-describedby="value-echo"
          aria-invalid={text !== '' && !isRight}
          onInput={({ currentTarget }) => change(currentTarget.value)}
        />
        {beside}
      </div>
      <p class={text !== '' && !isRight ? 'echo refused' : 'echo'} id="value-echo" aria-live="polite">
        {text.trim() === ''
          ? label
          : !parsed.ok
            ? `${m.entry.notUnderstood}. ${say({ kind: 'no value', problem: parsed.error })}`
            : isRight
              ? `${m.entry.understood}: ${echoValue(parsed.value.value, parsed.value.unit)}${after === null ? '' : `, ${after}`}`
              : m.entry.otherKind(m.entry.kinds[kind], unit)}
      </p>
      {children}
      {keypad}
    </div>
  )
}

const labelWords = (unit: Unit): string => {
  const kind = kindOf(unit)
  return kind === 'count' ? m.entry.kinds.count : m.entry.valueIn(m.entry.kinds[kind], m.entry.units[unit])
}
