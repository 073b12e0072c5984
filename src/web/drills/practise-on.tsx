import { useState } from 'preact/hooks'
import type { RunFile } from '../../formats/run/run-file.ts'
import { practiceSource } from '../data/practice-source.ts'
import type { Trouble } from '../data/run-source.ts'
import { TroubleNote } from '../parts/trouble-note.tsx'
import { practiseOn } from './begin-drill.ts'
import { words } from './words.ts'

/** One touch from a run of this device to a copy with hidden faults. */
export function PractiseOn({ run }: { readonly run: RunFile }) {
  const w = words()
  const [trouble, setTrouble] = useState<Trouble | null>(null)
  return (
    <section class="sheet">
      <h2>{w.bar}</h2>
      <p>{w.practiseHow}</p>
      {trouble !== null && <TroubleNote title={w.notBegun} trouble={trouble} />}
      <p>
        <button type="button" class="button" onClick={() => void practiseOn(practiceSource(), run).then(setTrouble)}>
          {w.practise}
        </button>
      </p>
    </section>
  )
}
