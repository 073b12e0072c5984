import { useState } from 'preact/hooks'
import type { HeldRow } from '../data/device-tables.ts'
import type { RunSource, Trouble } from '../data/run-source.ts'
import { download } from '../parts/download.ts'
import { TroubleNote } from '../parts/trouble-note.tsx'
import { rescuePath } from '../route.ts'
import { HeldFiles } from './held-files.tsx'
import { TakeIn } from './take-in.tsx'
import { words } from './words.ts'
import './transfer.css'

interface Props {
  readonly source: RunSource
  readonly held: readonly HeldRow[]
}

/** The way out and in without a server. */
export function FilesPane({ source, held }: Props) {
  const w = words()
  const [file, setFile] = useState<File | null>(null)
  const [trouble, setTrouble] = useState<Trouble | null>(null)
  const save = async (): Promise<void> => {
    const answer = await source.exportDevice()
    setTrouble(answer.ok ? null : answer.error)
    if (answer.ok) download(answer.value, `lapwise-${new Date().toISOString().slice(0, 10)}.json`)
  }
  return (
    <section class="device-transfer" aria-label={w.title}>
      <button type="button" class="button small" onClick={() => void save()}>
        {w.save}
      </button>
      {trouble !== null && <TroubleNote title={w.failed} trouble={trouble} />}
      <label>
        <span>{w.take}</span>
        <input
          type="file"
          accept=".json,application/json"
          onChange={({ currentTarget }) => {
            const chosen = currentTarget.files?.[0]
            if (chosen !== undefined) setFile(chosen)
            currentTarget.value = ''
          }}
        />
      </label>
      {file !== null && <TakeIn source={source} file={file} close={() => setFile(null)} />}
      {held.length > 0 && <HeldFiles source={source} held={held} />}
      <a href={rescuePath} target="_top">
        {w.rescue}
      </a>
    </section>
  )
}
