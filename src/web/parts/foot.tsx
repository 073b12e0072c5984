import { useState } from 'preact/hooks'
import { cautions } from '../../documents/cautions.ts'
import { preferences, setPreferences } from '../fieldwork/preferences.ts'
import { m, printIn } from '../messages.ts'

/**
 * The cautions, under every view: in full until somebody said that they were understood, and where a run is signed or
 * its record made; else one line that opens.
 */
export function Foot({ isFull }: { readonly isFull: boolean }) {
  const [isUnderstood, setUnderstood] = useState(() => preferences().areCautionsUnderstood)
  return (
    <footer class="page-foot">
      <details open={isFull || !isUnderstood}>
        <summary>
          <h2>{m.page.cautions}</h2> <span>{m.page.cautionsLine}</span>
        </summary>
        <ul>
          {cautions(printIn(null)).map((caution) => (
            <li key={caution}>{caution}</li>
          ))}
        </ul>
        {!isUnderstood && (
          <button
            type="button"
            class="button"
            onClick={() => {
              setPreferences({ areCautionsUnderstood: true })
              setUnderstood(true)
            }}
          >
            {m.page.understood}
          </button>
        )}
      </details>
    </footer>
  )
}
