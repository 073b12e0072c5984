import { useEffect, useRef, useState } from 'preact/hooks'
import type { EntryKind } from '../../formats/entry/entry-kinds.ts'
import type { Imported, RunSource, Trouble, Weighed } from '../data/run-source.ts'
import { asWritten } from '../messages.ts'
import { TroubleNote } from '../parts/trouble-note.tsx'
import { LackedList, LeftList } from './left-list.tsx'
import { words } from './words.ts'
import './transfer.css'

type State =
  | { readonly is: 'looking' }
  | { readonly is: 'seen'; readonly weighed: Weighed }
  | { readonly is: 'taking' }
  | { readonly is: 'taken'; readonly taken: Imported }
  | { readonly is: 'failed'; readonly trouble: Trouble }

interface Props {
  readonly source: RunSource
  readonly file: File
  /** Nobody wants to see it any longer. */
  readonly close: () => void
}

/** Shows what a file would change on this device, and takes it in when somebody says so. */
export function TakeIn({ source, file, close }: Props) {
  const w = words()
  const [state, setState] = useState<State>({ is: 'looking' })
  /** Another file may be chosen while this one is taken in. */
  const latest = useRef(file)
  latest.current = file
  useEffect(() => {
    let isWanted = true
    setState({ is: 'looking' })
    void source.weighFile(file).then((answer) => {
      if (isWanted)
        setState(answer.ok ? { is: 'seen', weighed: answer.value } : { is: 'failed', trouble: answer.error })
    })
    return () => {
      isWanted = false
    }
  }, [source, file])
  const take = async (): Promise<void> => {
    setState({ is: 'taking' })
    const answer = await source.takeInFile(file)
    if (latest.current !== file) return
    setState(answer.ok ? { is: 'taken', taken: answer.value } : { is: 'failed', trouble: answer.error })
  }
  return (
    <div class="take-in">
      {state.is === 'looking' && <p role="status">{w.looking(asWritten(file.name))}</p>}
      {state.is === 'seen' && <Seen file={file.name} weighed={state.weighed} take={() => void take()} close={close} />}
      {state.is === 'taking' && <p role="status">{w.merging}</p>}
      {state.is === 'taken' && <Taken taken={state.taken} />}
      {state.is === 'failed' && <TroubleNote title={w.failed} trouble={state.trouble} />}
    </div>
  )
}

function Seen(props: { readonly file: string; readonly weighed: Weighed; take(): void; close(): void }) {
  const w = words()
  const { file, weighed, take, close } = props
  const { runs, fresh, photos, lacks, already, left } = weighed
  const kinds = Object.entries(fresh) as [EntryKind, number][]
  const isAny = kinds.length > 0 || photos > 0
  return (
    <>
      <p role="status">{isAny || left.length > 0 ? w.brings(asWritten(file)) : w.nothing(asWritten(file))}</p>
      <ul>
        {runs.map(({ id, name, isNew }) => (
          <li key={id}>
            <b>{name === null ? w.unnamedRun : isNew ? w.newRun(asWritten(name)) : w.knownRun(asWritten(name))}</b>
          </li>
        ))}
        {kinds.map(([kind, n]) => (
          <li key={kind}>{w.kinds[kind](n)}</li>
        ))}
        {photos > 0 && <li>{w.pictures(photos)}</li>}
        {already > 0 && <li>{w.already(already)}</li>}
      </ul>
      {lacks.length > 0 && (
        <>
          <p>{w.lacksThere(lacks.length)}</p>
          <LackedList lacks={lacks} />
        </>
      )}
      {left.length > 0 && (
        <>
          <p>{w.willLeave(left.length)}</p>
          <LeftList left={left} />
        </>
      )}
      <div class="buttons">
        {(isAny || left.length > 0) && (
          <button type="button" class="button main" onClick={take}>
            {w.merge}
          </button>
        )}
        <button type="button" class="button" onClick={close}>
          {w.drop}
        </button>
      </div>
    </>
  )
}

function Taken({ taken: { entries, photos, already, left } }: { readonly taken: Imported }) {
  const w = words()
  return (
    <>
      <p role="status">{w.taken(entries, photos, already)}</p>
      {left.length > 0 && (
        <div class="trouble" role="alert">
          <p>{w.left(left.length)}</p>
          <LeftList left={left} />
        </div>
      )}
    </>
  )
}
