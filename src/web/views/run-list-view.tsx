import { useEffect, useState } from 'preact/hooks'
import type { SummarisedRun } from '../../operations/summarise-run.ts'
import { newId, rememberedVisit } from '../data/device.ts'
import type { RunSource, Trouble } from '../data/run-source.ts'
import { useLoaded } from '../data/use-loaded.ts'
import { m } from '../messages.ts'
import { ProblemList, TroubleNote } from '../parts/trouble-note.tsx'
import { AcceptanceMark } from '../parts/verdict-sign.tsx'
import { goTo, panePath } from '../route.ts'

export function RunListView({ source }: { readonly source: RunSource }) {
  const [loaded, again] = useLoaded('runs', source.runs)
  useEffect(
    () =>
      source.onChange(({ runs, isOwn }) => {
        if (!isOwn && runs.length > 0) again()
      }),
    [source, again],
  )
  useEffect(() => {
    document.title = `${m.runs.title} | ${m.page.name}`
  }, [])
  return (
    <section class="sheet">
      <h1>{m.runs.title}</h1>
      {loaded.state === 'loading' && (
        <p role="status" class="loading">
          {m.page.loading}
        </p>
      )}
      {loaded.state === 'failed' && <TroubleNote title={m.trouble.runs} trouble={loaded.trouble} again={again} />}
      {loaded.state === 'loaded' &&
        (loaded.value.length === 0 ? <p>{m.runs.none}</p> : <RunTable runs={loaded.value} />)}
      <AddRun source={source} />
    </section>
  )
}

const RunTable = ({ runs }: { readonly runs: readonly SummarisedRun[] }) => (
  <table class="runs">
    <thead>
      <tr>
        {[m.runs.run, m.runs.route, m.runs.acceptance, m.runs.findings, m.runs.unread].map((word) => (
          <th key={word} scope="col">
            {word}
          </th>
        ))}
      </tr>
    </thead>
    <tbody>
      {runs.map((run) => (
        <tr key={run.id}>
          <th scope="row">
            <a class="run-link" href={panePath(run.id, 'walk')}>
              {run.name}
            </a>
            {run.project === 'demo' && <span class="tag">{m.runs.demo}</span>}
          </th>
          <td data-label={m.runs.route}>{run.route ?? m.runs.noRoute}</td>
          {run.judged === null ? (
            <td colSpan={3} data-label={m.runs.acceptance}>
              {m.runs.cannotLayOut}
              <ProblemList problems={run.problems} />
            </td>
          ) : (
            <>
              <td data-label={m.runs.acceptance}>
                <AcceptanceMark acceptance={run.judged.acceptance} />
              </td>
              <td class="number" data-label={m.runs.findings}>
                {run.judged.findings}
              </td>
              <td class="number" data-label={m.runs.unread}>
                {run.judged.counts.unread}
              </td>
            </>
          )}
        </tr>
      ))}
    </tbody>
  </table>
)

type Adding =
  | { readonly state: 'idle' }
  | { readonly state: 'adding'; readonly file: string }
  | { readonly state: 'failed'; readonly file: string; readonly trouble: Pick<Trouble, 'message' | 'problems'> }

function AddRun({ source }: { readonly source: RunSource }) {
  const [adding, setAdding] = useState<Adding>({ state: 'idle' })
  const add = async (file: File): Promise<void> => {
    setAdding({ state: 'adding', file: file.name })
    const text = await file.text().catch(() => null)
    if (text === null) {
      const trouble = { message: m.runs.unreadableFile, problems: [] }
      setAdding({ state: 'failed', file: file.name, trouble })
      return
    }
    const id = newId()
    const answer = await source.addRun(id, file.name, text, rememberedVisit().by || m.runs.authorNotSaid)
    if (answer.ok) goTo(panePath(id, 'walk'))
    else setAdding({ state: 'failed', file: file.name, trouble: answer.error })
  }
  return (
    <div class="add-run">
      <label for="run-file">{m.runs.add}</label>
      <p class="hint" id="run-file-how">
        {m.runs.addHow}
      </p>
      <input
        id="run-file"
        type="file"
        accept=".json,application/json"
        aria-describedby="run-file-how"
        onChange={({ currentTarget }) => {
          const file = currentTarget.files?.[0]
          if (file !== undefined) void add(file)
          currentTarget.value = ''
        }}
      />
      {adding.state === 'adding' && <p role="status">{m.runs.adding(adding.file)}</p>}
      {adding.state === 'failed' && <TroubleNote title={m.runs.notAdded(adding.file)} trouble={adding.trouble} />}
    </div>
  )
}
