import { useState } from 'preact/hooks'
import { timeText } from '../../documents/printed-time.ts'
import type { SummarisedRun } from '../../operations/summarise-run.ts'
import { newId, rememberedVisit } from '../data/device.ts'
import type { RunSource, Trouble } from '../data/run-source.ts'
import { asWritten, m } from '../messages.ts'
import { ProgressBar } from '../parts/progress-bar.tsx'
import { RunFaceView } from '../parts/run-face.tsx'
import { ProblemList, TroubleNote } from '../parts/trouble-note.tsx'
import { AcceptanceMark } from '../parts/verdict-sign.tsx'
import { goTo, panePath } from '../route.ts'

interface Props {
  readonly source: RunSource
  readonly run: SummarisedRun
  /** After the run was put away or brought back. */
  readonly again: () => void
}

/** A run in the list: what it is, how it stands, when somebody was there, and its face. */
export function RunRow({ source, run, again }: Props) {
  const { id, name, route, station, judged, lastVisit, archived } = run
  const place = [route === null ? m.runs.noRoute : asWritten(route), ...(station === null ? [] : [station])]
  const visited = lastVisit === null ? m.runs.noVisit : m.runs.visit(timeText(lastVisit.at), asWritten(lastVisit.by))
  return (
    <li class="run-row">
      <a class="run-link" href={panePath(id, 'walk')}>
        {asWritten(name)}
      </a>
      {judged === null ? (
        <b class="run-state">{m.runs.cannotLayOut}</b>
      ) : (
        <span class="run-state">
          <AcceptanceMark acceptance={judged.acceptance} />
        </span>
      )}
      <p class="hint">{[...place, visited].join(' · ')}</p>
      {archived !== null && (
        <p class="hint">
          {m.runs.archivedBy(timeText(archived.at), asWritten(archived.by), asWritten(archived.reason))}
        </p>
      )}
      {judged === null ? (
        <ProblemList problems={run.problems} />
      ) : (
        <>
          <p class="run-numbers">{numbersOf(judged)}</p>
          <RunFaceView face={judged.face} />
          <ProgressBar counts={judged.counts} />
        </>
      )}
      <RunActs source={source} run={run} again={again} />
    </li>
  )
}

function numbersOf({ counts, findings }: NonNullable<SummarisedRun['judged']>): string {
  const all = counts.fails + counts['too close'] + counts.unread + counts.meets
  return m.runs.numbers(findings, counts.unread, all)
}

/** What can be done to a run from the list; folded, since most come to open it. */
function RunActs({ source, run, again }: Props) {
  const [isOpen, setOpen] = useState(false)
  const [reason, setReason] = useState('')
  const [trouble, setTrouble] = useState<Trouble | null>(null)
  const by = () => rememberedVisit().by || m.runs.authorNotSaid
  const move = async (body: { archived: true; reason: string } | { archived: false }): Promise<void> => {
    const answer = await source.appendEntry(run.id, 'archive', body, by(), null)
    if (answer.ok) again()
    else setTrouble(answer.error)
  }
  const copy = async (): Promise<void> => {
    const id = newId()
    const answer = await source.copyRun(run.id, id, m.runs.copyOf(run.name), by())
    if (answer.ok) goTo(panePath(id, 'walk'))
    else setTrouble(answer.error)
  }
  return (
    <details class="run-acts" onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
      <summary aria-label={m.runs.actsOf(asWritten(run.name))}>{m.runs.acts}</summary>
      {isOpen && (
        <form
          onSubmit={(event) => {
            event.preventDefault()
            void move({ archived: true, reason: reason.trim() })
          }}
        >
          {run.judged !== null && (
            <button type="button" class="button" onClick={() => void copy()}>
              {m.runs.copy}
            </button>
          )}
          {run.archived === null ? (
            <>
              <label>
                <span>{m.runs.reason}</span>
                <input
                  required
                  pattern=".*\S.*"
                  maxLength={4000}
                  value={reason}
                  onInput={({ currentTarget }) => setReason(currentTarget.value)}
                />
              </label>
              <button type="submit" class="button">
                {m.runs.archive}
              </button>
            </>
          ) : (
            <button type="button" class="button" onClick={() => void move({ archived: false })}>
              {m.runs.bringBack}
            </button>
          )}
          {trouble !== null && <TroubleNote title={m.runs.notDone} trouble={trouble} />}
        </form>
      )}
    </details>
  )
}
