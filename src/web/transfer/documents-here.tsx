import { useState } from 'preact/hooks'
import type { RunFile } from '../../formats/run/run-file.ts'
import { documentFile } from '../../operations/document-file.ts'
import { rememberedVisit } from '../data/device.ts'
import type { DocumentWish, RunSource, Trouble } from '../data/run-source.ts'
import { today } from '../fieldwork/days.ts'
import { language } from '../language.ts'
import { m } from '../messages.ts'
import { LanguageField } from '../parts/language-field.tsx'
import { PageField } from '../parts/page-field.tsx'
import { TroubleNote } from '../parts/trouble-note.tsx'
import { ShareOrSave } from './share-or-save.tsx'
import { words } from './words.ts'

type State =
  | { readonly is: 'asked' }
  | { readonly is: 'making' }
  | { readonly is: 'made'; readonly file: File }
  | { readonly is: 'failed'; readonly trouble: Trouble }

interface Props {
  readonly source: RunSource
  readonly id: string
  readonly run: Pick<RunFile, 'name' | 'units' | 'version'>
  /** Which of them, the main one first. */
  readonly kinds: readonly DocumentWish['kind'][]
}

/** Documents of a run that this device makes itself: each is made, and then shared or saved. */
export function DocumentsHere({ source, id, run, kinds }: Props) {
  const w = words().documents
  const [wish, setWish] = useState<Omit<DocumentWish, 'kind'>>(() => ({
    language: language(),
    page: run.units === 'metric' ? 'A4' : 'letter',
    author: rememberedVisit().by,
  }))
  const [state, setState] = useState<State>({ is: 'asked' })
  const make = async (kind: DocumentWish['kind']): Promise<void> => {
    setState({ is: 'making' })
    const answer = await source.document(id, { ...wish, kind })
    const file = `${documentFile(run, kind, today())}.pdf`
    setState(
      answer.ok
        ? { is: 'made', file: new File([answer.value], file, { type: 'application/pdf' }) }
        : { is: 'failed', trouble: answer.error },
    )
  }
  const isMaking = state.is === 'making'
  return (
    <div class="documents">
      <p>{w.how}</p>
      <div class="fields">
        <PageField page={wish.page} choose={(page) => setWish({ ...wish, page })} />
        <LanguageField
          name={w.language}
          language={wish.language}
          choose={(language) => setWish({ ...wish, language })}
        />
        <label>
          <span>{m.record.author}</span>
          <input
            value={wish.author}
            autocomplete="name"
            maxLength={200}
            onInput={({ currentTarget }) => setWish({ ...wish, author: currentTarget.value })}
          />
        </label>
        {kinds.map((kind, i) => (
          <button
            key={kind}
            type="button"
            class={i === 0 ? 'button main' : 'button'}
            disabled={isMaking}
            onClick={() => void make(kind)}
          >
            {w.make[kind]}
          </button>
        ))}
      </div>
      <p role="status">
        {isMaking && w.making}
        {state.is === 'made' && w.made(state.file.name)}
      </p>
      {state.is === 'made' && <ShareOrSave file={state.file} />}
      {state.is === 'failed' && <TroubleNote title={w.notMade} trouble={state.trouble} />}
      <p class="hint">{w.archive}</p>
    </div>
  )
}
