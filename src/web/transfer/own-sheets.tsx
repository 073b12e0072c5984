import { useState } from 'preact/hooks'
import { nameOf } from '../../core/hardware/sheet-text.ts'
import { d } from '../data/messages.ts'
import { readJsonFile } from '../data/read-json-file.ts'
import type { RunSource, Trouble } from '../data/run-source.ts'
import type { OwnSheet } from '../data/shelf-of.ts'
import { say } from '../messages.ts'
import { FoldByItself } from '../parts/fold.tsx'
import { ProblemList, TroubleNote } from '../parts/trouble-note.tsx'
import { words } from './words.ts'

interface Props {
  readonly source: RunSource
  readonly own: readonly OwnSheet[]
}

/** The hardware sheets that were put on the shelf of this device: another one from its file, and each taken off. */
export const OwnSheets = ({ source, own }: Props) => (
  <FoldByItself
    title={words().sheets.title}
    level={2}
    beside={<span class="tag">{own.length}</span>}
    opensFirst={false}
  >
    {() => (
      <div class="own-sheets">
        <AddSheet source={source} />
        <ul class="plain">
          {own.map((one) => (
            <Own key={`${one.id} ${one.version}`} source={source} own={one} />
          ))}
        </ul>
      </div>
    )}
  </FoldByItself>
)

interface Failed {
  readonly file: string
  readonly trouble: Pick<Trouble, 'message' | 'problems'>
}

function AddSheet({ source }: Pick<Props, 'source'>) {
  const w = words().sheets
  const [failed, setFailed] = useState<Failed | null>(null)
  const [said, setSaid] = useState('')
  const add = async (file: File): Promise<void> => {
    setSaid('')
    setFailed(null)
    const fail = (trouble: Failed['trouble']): void => setFailed({ file: file.name, trouble })
    const read = await readJsonFile(file, d.trouble.notSheetFile(file.name))
    if (!read.ok) return fail(read.error)
    const answer = await source.addSheet(file.name, read.value)
    if (answer.ok) setSaid(answer.value === 'stored' ? w.added(file.name) : w.already(file.name))
    else fail(answer.error)
  }
  return (
    <>
      <p class="hint">{w.how}</p>
      <label>
        <span>{w.add}</span>
        <input
          type="file"
          accept=".json,application/json"
          onChange={({ currentTarget }) => {
            const file = currentTarget.files?.[0]
            if (file !== undefined) void add(file)
            currentTarget.value = ''
          }}
        />
      </label>
      <p role="status">{said}</p>
      {failed !== null && <TroubleNote title={w.notAdded(failed.file)} trouble={failed.trouble} />}
    </>
  )
}

function Own({ source, own: { id, version, sheet } }: { readonly source: RunSource; readonly own: OwnSheet }) {
  const w = words().sheets
  const [isSure, setSure] = useState(false)
  const [trouble, setTrouble] = useState<Trouble | null>(null)
  const drop = async (): Promise<void> => {
    if (!isSure) return setSure(true)
    const answer = await source.dropSheet(id, version)
    if (!answer.ok) setTrouble(answer.error)
  }
  return (
    <li>
      <p>
        {sheet.ok ? say(nameOf(sheet.value)) : id} <span class="hint">{w.edition(version)}</span>
      </p>
      {!sheet.ok && (
        <>
          <p>{w.unreadable}</p>
          <ProblemList problems={sheet.error} />
        </>
      )}
      <button type="button" class="button small" onClick={() => void drop()}>
        {isSure ? w.sureDrop : w.drop}
      </button>
      {trouble !== null && <TroubleNote title={w.notDropped} trouble={trouble} />}
    </li>
  )
}
