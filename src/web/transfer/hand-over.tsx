import { useState } from 'preact/hooks'
import type { HandoverFile, LackedPhoto, RunSource, Trouble } from '../data/run-source.ts'
import { megabytes } from '../parts/megabytes.ts'
import { TroubleNote } from '../parts/trouble-note.tsx'
import { LackedList } from './left-list.tsx'
import { ShareOrSave } from './share-or-save.tsx'
import { words } from './words.ts'
import './transfer.css'

type State =
  | { readonly is: 'asked' }
  | { readonly is: 'making' }
  | { readonly is: 'made'; readonly file: File; readonly lacks: readonly LackedPhoto[] }
  | { readonly is: 'failed'; readonly trouble: Trouble }

interface Props {
  readonly source: RunSource
  /** Null for all runs of this device. */
  readonly run: string | null
  /** In the name of the file. */
  readonly name: string
}

/**
 * Makes a file of a run, and hands it to the system's sharing or saves it. It is made first: a browser shares only what
 * it is given at the touch itself.
 */
export function HandOver({ source, run, name }: Props) {
  const w = words()
  const [state, setState] = useState<State>({ is: 'asked' })
  const make = async (): Promise<void> => {
    setState({ is: 'making' })
    const answer = await source.handOver(run)
    setState(answer.ok ? made(answer.value, name) : { is: 'failed', trouble: answer.error })
  }
  return (
    <div class="hand-over">
      {run !== null && <p class="hint">{w.handOverHow}</p>}
      {state.is !== 'made' && (
        <button type="button" class="button" onClick={() => void make()}>
          {run === null ? w.handOverAll : w.handOver}
        </button>
      )}
      {state.is === 'making' && <p role="status">{w.making}</p>}
      {state.is === 'made' && <Made file={state.file} lacks={state.lacks} />}
      {state.is === 'failed' && <TroubleNote title={w.notMade} trouble={state.trouble} />}
    </div>
  )
}

function made({ content, lacks }: HandoverFile, name: string): State {
  const file = `lapwise-${name.replaceAll(/[^\p{L}\p{N}-]+/gu, '-')}.zip`
  return { is: 'made', file: new File([content], file, { type: 'application/zip' }), lacks }
}

function Made({ file, lacks }: { readonly file: File; readonly lacks: readonly LackedPhoto[] }) {
  const w = words()
  return (
    <>
      <p role="status">{w.made(megabytes(file.size))}</p>
      {lacks.length > 0 && (
        <div class="device-trouble">
          <p>{w.lacks(lacks.length)}</p>
          <LackedList lacks={lacks} />
        </div>
      )}
      <ShareOrSave file={file} />
    </>
  )
}
