import { useState } from 'preact/hooks'
import { m } from '../messages.ts'

interface Props {
  readonly note: string
  readonly change: (note: string) => void
}

/** What somebody says beside an answer: a button as long as nothing is said. */
export function NoteField({ note, change }: Props) {
  const [isAsked, setAsked] = useState(false)
  if (!isAsked && note === '')
    return (
      <button type="button" class="button" onClick={() => setAsked(true)}>
        {m.entry.note}
      </button>
    )
  return (
    <label class="because">
      <span>{m.entry.note}</span>
      <textarea
        // Whoever pressed the button writes next.
        ref={(field) => {
          if (isAsked && note === '') field?.focus()
        }}
        rows={2}
        maxLength={4000}
        value={note}
        onInput={({ currentTarget }) => change(currentTarget.value)}
      />
    </label>
  )
}
