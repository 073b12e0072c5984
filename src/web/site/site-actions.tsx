import { useRef, useState } from 'preact/hooks'
import type { FitCheck } from '../../core/fit/fit-check.ts'
import { checkShape, parseJson } from '../../formats/read-json.ts'
import { siteFromValue } from '../../formats/site/read-site.ts'
import { siteSchema } from '../../formats/site/site-file.ts'
import { newId, rememberedVisit } from '../data/device.ts'
import type { RunSource, Trouble } from '../data/run-source.ts'
import { type Draft, textOf, unitsOf } from '../form/draft.ts'
import { m, say } from '../messages.ts'
import { TroubleNote } from '../parts/trouble-note.tsx'
import { goTo, panePath } from '../route.ts'
import { exampleSite } from './example-site.ts'
import type { SiteResults } from './solve-site.ts'
import { words } from './words.ts'

interface Props {
  readonly source: RunSource
  readonly draft: Draft
  /** Null where there is no need. */
  readonly results: SiteResults | 'to come' | null
  readonly sweep: (change: (draft: Draft) => Draft, said: () => string) => void
}

type Notice = { readonly title: string; readonly trouble: Pick<Trouble, 'message' | 'problems'> }

/** What can be done with the site as a whole. */
export function SiteActions({ source, draft, results, sweep }: Props) {
  const { actions } = words()
  const [notice, notify] = useState<Notice | null>(null)
  const open = async (file: File): Promise<void> => {
    const text = await file.text().catch(() => null)
    const read = text === null ? null : readDraft(file.name, text)
    if (read?.ok === true) {
      notify(null)
      sweep(
        () => read.value,
        () => actions.opened(file.name),
      )
    } else {
      const trouble =
        read === null ? { message: actions.unreadable, problems: [] } : { message: '', problems: read.error }
      notify({ title: actions.notOpened(file.name), trouble })
    }
  }
  const saveName = textOf(draft.name).replaceAll(/[^\p{L}\p{N}]+/gu, '-') || actions.fileName
  const saved = `data:application/json;charset=utf-8,${encodeURIComponent(`${JSON.stringify(draft, null, 2)}\n`)}`
  return (
    <section class="site-actions" aria-label={actions.title}>
      <MakeRun source={source} draft={draft} results={results} notify={notify} />
      <a class="button" href={saved} download={`${saveName}.json`}>
        {actions.save}
      </a>
      <details class="site-file">
        <summary>{actions.file}</summary>
        <label for="site-file">{actions.open}</label>
        <input
          id="site-file"
          type="file"
          accept=".json,application/json"
          aria-describedby="site-file-how"
          onChange={({ currentTarget }) => {
            const file = currentTarget.files?.[0]
            if (file !== undefined) void open(file)
            currentTarget.value = ''
          }}
        />
        <span class="hint" id="site-file-how">
          {actions.openHow}
        </span>
        <button
          type="button"
          class="button"
          onClick={() =>
            sweep(
              () => exampleSite,
              () => actions.exampleDone,
            )
          }
        >
          {actions.example}
        </button>
      </details>
      {notice !== null && <TroubleNote title={notice.title} trouble={notice.trouble} />}
    </section>
  )
}

/** The site file with everything in it that it left out; only a file without problems is opened. */
function readDraft(file: string, text: string) {
  const parsed = parseJson(file, text)
  if (!parsed.ok) return parsed
  const read = siteFromValue(file, parsed.value)
  if (!read.ok) return read
  return checkShape(file, parsed.value, siteSchema) as { readonly ok: true; readonly value: Draft & object }
}

interface MakeRunProps extends Omit<Props, 'sweep'> {
  readonly notify: (notice: Notice | null) => void
}

function MakeRun({ source, draft, results, notify }: MakeRunProps) {
  const { actions } = words()
  const [isMaking, setMaking] = useState(false)
  /** The same run keeps its id, so that trying again cannot make a second one. */
  const made = useRef({ id: newId(), text: '' })
  const run = results === 'to come' ? null : (results?.report.run ?? null)
  const why = results === 'to come' ? null : whyNot(results)
  const isOff = run === null || why !== null
  const failing = results === null || results === 'to come' ? [] : results.checks.filter(isFailing)
  const asking = JSON.stringify(failing.map(({ what }) => what))
  const [asked, setAsked] = useState<string | null>(null)
  const isAsked = failing.length > 0 && asked === asking
  const make = async (): Promise<void> => {
    if (isOff || isMaking) return
    if (failing.length > 0 && !isAsked) return setAsked(asking)
    const name = textOf(draft.name) || actions.newRun
    const named = { ...(run as object), name }
    const text = JSON.stringify(named)
    if (made.current.text !== text) made.current = { id: newId(), text }
    setMaking(true)
    const { id } = made.current
    const answer = await source.addRun(id, name, named, rememberedVisit().by || m.runs.authorNotSaid)
    setMaking(false)
    notify(answer.ok ? null : { title: actions.notMade, trouble: answer.error })
    if (answer.ok) goTo(panePath(id, 'layout'))
  }
  return (
    <div class="site-make">
      {isAsked && (
        <div class="site-ask" role="alert">
          <p>{actions.fails}</p>
          <ul>
            {failing.map(({ what, smallestChange }) => (
              <li key={JSON.stringify(what)}>
                {say(what, unitsOf(draft))}
                {smallestChange !== null && `: ${say(smallestChange, unitsOf(draft))}`}
              </li>
            ))}
          </ul>
        </div>
      )}
      <button
        type="button"
        class={isOff ? 'button main off' : 'button main'}
        aria-disabled={isOff || isMaking}
        aria-describedby={why === null ? undefined : 'site-make-how'}
        onClick={() => void make()}
      >
        {isMaking ? actions.making : isAsked ? actions.makeAllTheSame : actions.make}
      </button>
      {why !== null && (
        <span class="hint" id="site-make-how">
          {why}
        </span>
      )}
    </div>
  )
}

const isFailing = ({ verdict }: FitCheck): boolean => verdict === 'fails'

/** Why no run can be made of the site; null where one can. */
function whyNot(results: SiteResults | null): string | null {
  const { actions } = words()
  if (results === null) return actions.cannotProblems
  if (results.report.run === null) return actions.cannotChoose
  return results.layoutProblems.length > 0 ? actions.cannotLayOut.replace(/:$/, '.') : null
}
