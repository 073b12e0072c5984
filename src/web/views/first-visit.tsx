import { useState } from 'preact/hooks'
import { preferences, setPreferences } from '../fieldwork/preferences.ts'
import { m } from '../messages.ts'

/** What this is, in three sentences, until somebody has put them away; nothing waits for it. */
export function FirstVisit() {
  const [isKnown, setKnown] = useState(() => preferences().isKnown)
  if (isKnown) return null
  return (
    <aside class="first-visit">
      <p>{m.doors.firstVisit}</p>
      <button
        type="button"
        class="button small"
        onClick={() => {
          setPreferences({ isKnown: true })
          setKnown(true)
        }}
      >
        {m.doors.known}
      </button>
    </aside>
  )
}
