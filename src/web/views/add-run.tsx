import { useEffect, useState } from 'preact/hooks'
import { newId, rememberedVisit } from '../data/device.ts'
import { d } from '../data/messages.ts'
import { readJsonFile } from '../data/read-json-file.ts'
import type { RunSource, Trouble } from '../data/run-source.ts'
import { m } from '../messages.ts'
import { LaterPart, partOf } from '../parts/later-part.tsx'
import { TroubleNote } from '../parts/trouble-note.tsx'
import { goTo, panePath } from '../route.ts'

type Adding =
  | { readonly state: 'idle' }
  | { readonly state: 'adding'; readonly file: string }
  /** It is no run file but one from a device. */
  | { readonly state: 'from device'; readonly file: File }
  | { readonly state: 'failed'; readonly file: string; readonly trouble: Pick<Trouble, 'message' | 'problems'> }

const takeIn = partOf(() => import('../transfer/take-in.tsx'))

/** Takes in a run from its file, and opens it; or what a device handed over. A file may be dropped anywhere on the page. */
export function AddRun({ source }: { readonly source: RunSource }) {
  const [adding, setAdding] = useState<Adding>({ state: 'idle' })
  const add = async (file: File): Promise<void> => {
    setAdding({ state: 'adding', file: file.name })
    const fail = (trouble: Pick<Trouble, 'message' | 'problems'>): void =>
      setAdding({ state: 'failed', file: file.name, trouble })
    const first = await file
      .slice(0, 2)
      .text()
      .catch(() => '')
    if (first === 'PK') return setAdding({ state: 'from device', file })
    const read = await readJsonFile(file, d.trouble.notRunFile(file.name))
    if (!read.ok) return fail(read.error)
    if (isOfDevice(read.value)) return setAdding({ state: 'from device', file })
    const id = newId()
    const answer = await source.addRun(
      id,
      file.name,
      read.value as object,
      rememberedVisit().by || m.runs.authorNotSaid,
    )
    if (answer.ok) goTo(panePath(id, 'walk'))
    else fail(answer.error)
  }
  useEffect(() => {
    const over = (event: DragEvent): void => event.preventDefault()
    const drop = (event: DragEvent): void => {
      event.preventDefault()
      const file = event.dataTransfer?.files[0]
      if (file !== undefined) void add(file)
    }
    document.addEventListener('dragover', over)
    document.addEventListener('drop', drop)
    return () => {
      document.removeEventListener('dragover', over)
      document.removeEventListener('drop', drop)
    }
  }, [source])
  return (
    <div class="add-run" id="add-run">
      <label for="run-file">{m.runs.add}</label>
      <p class="hint" id="run-file-how">
        {m.runs.addHow}
      </p>
      <input
        id="run-file"
        type="file"
        accept=".json,.zip,application/json,application/zip"
        aria-describedby="run-file-how"
        onChange={({ currentTarget }) => {
          const file = currentTarget.files?.[0]
          if (file !== undefined) void add(file)
          currentTarget.value = ''
        }}
      />
      {adding.state === 'adding' && <p role="status">{m.runs.adding(adding.file)}</p>}
      {adding.state === 'from device' && (
        <LaterPart part={takeIn} title={m.runs.notAdded(adding.file.name)}>
          {({ TakeIn }) => <TakeIn source={source} file={adding.file} close={() => setAdding({ state: 'idle' })} />}
        </LaterPart>
      )}
      {adding.state === 'failed' && <TroubleNote title={m.runs.notAdded(adding.file)} trouble={adding.trouble} />}
    </div>
  )
}

const isOfDevice = (value: unknown): boolean =>
  typeof value === 'object' && value !== null && 'format' in value && String(value.format).startsWith('lapwise-device/')
