import type { ComponentChildren } from 'preact'
import { useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks'
import { describeLengthProblem } from '../../core/units/length-problem.ts'
import { parseLength } from '../../core/units/length-text.ts'
import { m, say } from '../messages.ts'
import { echoLength } from './echo-length.ts'
import { Keypad } from './keypad.tsx'

interface Props {
  readonly text: string
  readonly units: 'us' | 'metric'
  /** What else was understood of it, in words. */
  readonly after: string | null
  readonly change: (text: string) => void
  /** Stands between field and keypad. */
  readonly children: ComponentChildren
}

const hasTouch = (): boolean => matchMedia('(pointer: coarse)').matches

/** A length in any way the trade writes it, by keyboard or keypad, and what was understood of it. */
export function LengthField({ text, units, after, change, children }: Props) {
  const field = useRef<HTMLInputElement>(null)
  const [isOwnKeypad, setOwnKeypad] = useState(hasTouch)
  const bareUnit = units === 'us' ? 'in' : 'mm'
  const parsed = parseLength(text, bareUnit)

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
        units={units}
        insert={(insertion) => put(...selection(), insertion)}
        erase={() => {
          const [from, to] = selection()
          put(from === to ? Math.max(0, from - 1) : from, to, '')
        }}
      />
    ),
    [units, m],
  )
  return (
    <div class="length">
      <label for="length">{m.entry.length[bareUnit]}</label>
      <input
        ref={field}
        id="length"
        class="length-text"
        data-first
        inputMode={isOwnKeypad ? 'none' : 'text'}
        autocomplete="off"
        spellcheck={false}
        aria-describedby="length-echo"
        aria-invalid={text !== '' && !parsed.ok}
        onInput={({ currentTarget }) => change(currentTarget.value)}
      />
      <p class={text !== '' && !parsed.ok ? 'echo refused' : 'echo'} id="length-echo" aria-live="polite">
        {text.trim() === ''
          ? ' '
          : parsed.ok
            ? `${m.entry.understood}: ${echoLength(parsed.value.nanometres, parsed.value.unit)}${after === null ? '' : `, ${after}`}`
            : `${m.entry.notUnderstood}. ${say(describeLengthProblem(parsed.error))}`}
      </p>
      {children}
      {keypad}
      {hasTouch() && (
        <label class="check">
          <input
            type="checkbox"
            checked={!isOwnKeypad}
            onChange={({ currentTarget }) => setOwnKeypad(!currentTarget.checked)}
          />
          {m.entry.keyboard}
        </label>
      )}
    </div>
  )
}
