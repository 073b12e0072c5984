import { useState } from 'preact/hooks'
import { rememberedVisit, rememberVisit } from '../data/device.ts'
import { m } from '../messages.ts'

/**
 * In whose name something is kept: the one that this device remembers of the visit, and never somebody else's. Where it
 * knows none, `name` gives null and `field` asks for it from then on.
 */
export function useWhoReads() {
  const [isAsked, setAsked] = useState(false)
  const [by, setBy] = useState(() => rememberedVisit().by)
  const name = (): string | null => {
    const known = rememberedVisit().by.trim()
    if (known === '') setAsked(true)
    return known === '' ? null : known
  }
  const change = (words: string): void => {
    setBy(words)
    rememberVisit({ ...rememberedVisit(), by: words })
  }
  const field = isAsked && (
    <>
      <label>
        <span>{m.entry.by}</span>
        <input
          autocomplete="name"
          maxLength={200}
          value={by}
          onInput={({ currentTarget }) => change(currentTarget.value)}
        />
      </label>
      {by.trim() === '' && (
        <p class="trouble" role="alert">
          {m.entry.byMissing}
        </p>
      )}
    </>
  )
  return { name, field }
}
