import { useState } from 'preact/hooks'
import { type PaperName, papers } from '../../drawing/paper.ts'
import type { JudgedRun } from '../../operations/judge-readings.ts'
import { rememberedVisit } from '../data/device.ts'
import type { RunSource, Trouble } from '../data/run-source.ts'
import { m } from '../messages.ts'
import { TroubleNote } from '../parts/trouble-note.tsx'
import { AcceptanceMark } from '../parts/verdict-sign.tsx'

interface Props {
  readonly source: RunSource
  readonly judged: JudgedRun
  readonly run: string
}

type Making =
  | { readonly state: 'idle' }
  | { readonly state: 'making' }
  | { readonly state: 'made'; readonly file: string }
  | { readonly state: 'failed'; readonly trouble: Trouble }

export function RecordPane({ source, judged, run }: Props) {
  const [page, setPage] = useState<PaperName>(judged.run.units === 'metric' ? 'A4' : 'letter')
  const [author, setAuthor] = useState(rememberedVisit().by)
  const [making, setMaking] = useState<Making>({ state: 'idle' })
  const make = async (): Promise<void> => {
    setMaking({ state: 'making' })
    const answer = await source.record(run, page, author)
    if (!answer.ok) {
      setMaking({ state: 'failed', trouble: answer.error })
      return
    }
    const file = `${judged.run.name.replaceAll(/[^\p{L}\p{N}]+/gu, '-')}-record.pdf`
    download(answer.value, file)
    setMaking({ state: 'made', file })
  }
  return (
    <section class="sheet">
      <h2>{m.record.title}</h2>
      <p>{m.record.how}</p>
      <p class="record-verdict">
        <AcceptanceMark acceptance={judged.judgement.acceptance} />
      </p>
      <form
        class="fields"
        onSubmit={(event) => {
          event.preventDefault()
          void make()
        }}
      >
        <label>
          <span>{m.record.page}</span>
          <select value={page} onChange={({ currentTarget }) => setPage(currentTarget.value as PaperName)}>
            {(Object.keys(papers) as PaperName[]).map((name) => (
              <option key={name} value={name}>
                {m.record.papers[name]}
              </option>
            ))}
          </select>
        </label>
        <label>
          <span>{m.record.author}</span>
          <input
            value={author}
            autocomplete="name"
            maxLength={200}
            onInput={({ currentTarget }) => setAuthor(currentTarget.value)}
          />
        </label>
        <button type="submit" class="button main" disabled={making.state === 'making'}>
          {m.record.make}
        </button>
      </form>
      <p role="status">
        {making.state === 'making' && m.record.making}
        {making.state === 'made' && m.record.made(making.file)}
      </p>
      {making.state === 'failed' && <TroubleNote title={m.record.failed} trouble={making.trouble} />}
    </section>
  )
}

function download(content: Blob, file: string): void {
  const address = URL.createObjectURL(content)
  const link = document.createElement('a')
  link.href = address
  link.download = file
  link.click()
  // The browser has taken the content over by then: our judgement.
  setTimeout(() => URL.revokeObjectURL(address), 60_000)
}
