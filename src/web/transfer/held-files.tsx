import { useState } from 'preact/hooks'
import type { Result } from '../../core/result.ts'
import type { HeldRow } from '../data/device-tables.ts'
import type { Imported, RunSource, Trouble } from '../data/run-source.ts'
import { momentWords } from '../entry/reading-words.ts'
import { asWritten } from '../messages.ts'
import { download } from '../parts/download.ts'
import { megabytes } from '../parts/megabytes.ts'
import { TroubleNote } from '../parts/trouble-note.tsx'
import { LeftList } from './left-list.tsx'
import { words } from './words.ts'

interface Props {
  readonly source: RunSource
  readonly held: readonly HeldRow[]
}

/** Files, or what is left of them, that wait on this device until they can be taken in. */
export function HeldFiles({ source, held }: Props) {
  const w = words()
  return (
    <>
      <h3>{w.held}</h3>
      <ul class="plain">
        {held.map((row) => (
          <Held key={row.id} source={source} row={row} />
        ))}
      </ul>
    </>
  )
}

function Held({ source, row }: { readonly source: RunSource; readonly row: HeldRow }) {
  const w = words()
  const [tried, setTried] = useState<Imported | null>(null)
  const [trouble, setTrouble] = useState<Trouble | null>(null)
  const [isSure, setSure] = useState(false)
  const note = <T,>(answer: Result<T, Trouble>): T | null => {
    setTrouble(answer.ok ? null : answer.error)
    return answer.ok ? answer.value : null
  }
  const save = async (): Promise<void> => {
    const file = note(await source.heldFile(row.id))
    if (file !== null) download(file, row.name)
  }
  return (
    <li>
      <p>
        {row.why.kind === 'newer format'
          ? w.heldNewer(asWritten(row.name), row.why.version)
          : w.heldRest(asWritten(row.name), row.why.count)}{' '}
        <span class="hint">{w.heldSize(megabytes(row.bytes), momentWords(row.heldAt))}</span>
      </p>
      <div class="buttons">
        <button
          type="button"
          class="button small"
          onClick={async () => setTried(note(await source.takeInHeld(row.id)))}
        >
          {w.again}
        </button>
        <button type="button" class="button small" onClick={() => void save()}>
          {w.saveHeld}
        </button>
        <button
          type="button"
          class="button small"
          onClick={async () => (isSure ? note(await source.dropHeld(row.id)) : setSure(true))}
        >
          {isSure ? w.sureDrop : w.dropHeld}
        </button>
      </div>
      {tried !== null && tried.left.length > 0 && <LeftList left={tried.left} />}
      {trouble !== null && <TroubleNote title={w.failed} trouble={trouble} />}
    </li>
  )
}
