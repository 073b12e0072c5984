import { useMemo, useState } from 'preact/hooks'
import { seenVersion } from '../../core/record/version.ts'
import type { DayReport } from '../../documents/day-report.ts'
import type { DayLogBody } from '../../formats/entry/entry-kinds.ts'
import { dayReport } from '../../operations/day-report.ts'
import { entriesInForce } from '../../operations/entries-in-force.ts'
import type { JudgedRun } from '../../operations/judge-readings.ts'
import { postsNearMarks, ticketOn } from '../../operations/locate-warnings.ts'
import { loggedPieces } from '../../operations/logged-pieces.ts'
import { parseNumbers, printNumbers } from '../../operations/number-list.ts'
import { placedTickets } from '../../operations/placed-tickets.ts'
import { rememberedVisit } from '../data/device.ts'
import type { KeptEntry, RunSource, Trouble } from '../data/run-source.ts'
import { dayWords } from '../entry/reading-words.ts'
import { dayOf, today } from '../fieldwork/days.ts'
import { NearMarks, TicketNote } from '../fieldwork/locate-notes.tsx'
import { LocateTickets } from '../fieldwork/locate-tickets.tsx'
import type { SideEntries } from '../fieldwork/use-side-entries.ts'
import { asWritten, m } from '../messages.ts'
import { TroubleNote } from '../parts/trouble-note.tsx'
import { DayReportView } from './day-report-view.tsx'

interface Props {
  readonly source: RunSource
  readonly judged: JudgedRun
  readonly side: SideEntries
  readonly sideAgain: () => Promise<void>
  readonly run: string
}

/** One day: its log, the utility-locate tickets, and the report that comes out of all entries of that day. */
export function DayPane({ source, judged, side, sideAgain, run }: Props) {
  const [day, setDay] = useState(today)
  const report = useMemo(() => dayReport(judged, side, day, dayOf), [judged, side, day])
  const logged = useMemo(
    () => [...new Set(entriesInForce(side.logs).map(({ body }) => body.day))].sort().toReversed(),
    [side.logs],
  )
  return (
    <section class="sheet day">
      <div class="no-print day-entry">
        <h2>{m.day.title}</h2>
        {side.trouble !== null && (
          <TroubleNote title={m.trouble.side} trouble={side.trouble} again={() => void sideAgain()} />
        )}
        <div class="fields">
          <label>
            <span>{m.day.day}</span>
            <input
              type="date"
              value={day}
              required
              onInput={({ currentTarget }) => currentTarget.value !== '' && setDay(currentTarget.value)}
            />
          </label>
          {logged.length > 0 && (
            <label>
              <span>{m.day.logged}</span>
              <select
                value={logged.includes(day) ? day : ''}
                onChange={({ currentTarget }) => setDay(currentTarget.value)}
              >
                {!logged.includes(day) && <option value="">{m.day.choose}</option>}
                {logged.map((one) => (
                  <option key={one} value={one}>
                    {one}
                  </option>
                ))}
              </select>
            </label>
          )}
        </div>
        {side.isLoaded && (
          <LogForm
            key={`${day} ${report.logs.map(({ id }) => id).join()}`}
            source={source}
            judged={judged}
            side={side}
            run={run}
            day={day}
            report={report}
            saved={sideAgain}
          />
        )}
        {side.isLoaded && (
          <LocateTickets source={source} judged={judged} tickets={side.tickets} run={run} day={day} saved={sideAgain} />
        )}
      </div>
      <DayReportView judged={judged} report={report} />
    </section>
  )
}

interface FormProps {
  readonly source: RunSource
  readonly judged: JudgedRun
  readonly side: SideEntries
  readonly run: string
  readonly day: string
  readonly report: DayReport
  readonly saved: () => Promise<void>
}

const idsOf = (pieces: readonly { readonly id: string }[], numbers: readonly number[]): readonly string[] =>
  numbers.map((number) => pieces[number - 1]!.id)

/** What was done on that day; a log that is written anew takes the place of the one before. */
function LogForm({ source, judged, side, run, day, report, saved }: FormProps) {
  const by = rememberedVisit().by.trim()
  const before = report.logs.at(-1) as KeptEntry<'day-log'> | undefined
  const [done, setDone] = useState(before?.body.done ?? '')
  const { layout } = judged.model
  const drivenBefore = loggedPieces(layout.posts, before?.body.postsDriven ?? [])
  const hungBefore = loggedPieces(layout.panels, before?.body.panelsHung ?? [])
  const [posts, setPosts] = useState(printNumbers(drivenBefore.numbers))
  const [panels, setPanels] = useState(printNumbers(hungBefore.numbers))
  const [crew, setCrew] = useState((before?.body.crew ?? (by === '' ? [] : [by])).join(', '))
  const [ends, setEnds] = useState<DayLogBody['openEnds'] | null>(before?.body.openEnds ?? null)
  const [note, setNote] = useState(before?.body.openEndsNote ?? '')
  const [complaint, setComplaint] = useState<string | null>(null)
  const [trouble, setTrouble] = useState<Trouble | null>(null)

  const tickets = useMemo(() => placedTickets(judged, entriesInForce(side.tickets)), [judged, side.tickets])
  const driven = parseNumbers(posts, layout.posts.length)
  const hung = parseNumbers(panels, layout.panels.length)
  const near = driven.ok
    ? postsNearMarks(
        layout.posts.filter(({ number }) => driven.value.includes(number)),
        tickets,
      )
    : []
  const save = async (): Promise<void> => {
    if (!driven.ok) return setComplaint(m.day.noNumber(m.day.postsDriven, driven.error, layout.posts.length))
    if (!hung.ok) return setComplaint(m.day.noNumber(m.day.panelsHung, hung.error, layout.panels.length))
    if (done.trim() === '') return setComplaint(m.day.doneMissing)
    const names = crew.split(/[,;\n]/).flatMap((name) => (name.trim() === '' ? [] : [name.trim()]))
    if (names.length === 0) return setComplaint(m.day.crewMissing)
    if (ends === null) return setComplaint(m.day.endsMissing)
    if (ends !== 'none' && note.trim() === '') return setComplaint(m.day.noteMissing)
    const body: DayLogBody = {
      day,
      done: done.trim(),
      ...seenVersion(judged.run.version),
      postsDriven: [...idsOf(layout.posts, driven.value), ...drivenBefore.gone],
      panelsHung: [...idsOf(layout.panels, hung.value), ...hungBefore.gone],
      crew: names,
      openEnds: ends,
      openEndsNote: note.trim() === '' ? null : note.trim(),
    }
    const answer = await source.appendEntry(run, 'day-log', body, by === '' ? names[0]! : by, before?.id ?? null)
    if (!answer.ok) return setTrouble(answer.error)
    await saved()
  }
  return (
    <form
      class="log-form"
      onSubmit={(event) => {
        event.preventDefault()
        void save()
      }}
    >
      {before !== undefined && <p class="hint">{m.day.replaces(asWritten(before.author))}</p>}
      <label class="because">
        <span>{m.day.done}</span>
        <textarea
          rows={3}
          maxLength={4000}
          value={done}
          onInput={({ currentTarget }) => setDone(currentTarget.value)}
        />
      </label>
      <div class="fields">
        <label>
          <span>{m.day.postsOf(layout.posts.length)}</span>
          <input
            value={posts}
            aria-describedby="numbers-how"
            onInput={({ currentTarget }) => setPosts(currentTarget.value)}
          />
        </label>
        <label>
          <span>{m.day.panelsOf(layout.panels.length)}</span>
          <input
            value={panels}
            aria-describedby="numbers-how"
            onInput={({ currentTarget }) => setPanels(currentTarget.value)}
          />
        </label>
        <label>
          <span>{m.day.crewField}</span>
          <input value={crew} onInput={({ currentTarget }) => setCrew(currentTarget.value)} />
        </label>
      </div>
      <p class="hint" id="numbers-how">
        {m.day.numbersHow}
      </p>
      {driven.ok && driven.value.length > 0 && <TicketNote day={day} on={ticketOn(day, tickets)} />}
      <NearMarks marks={near} units={judged.run.units} />
      <fieldset class="choices">
        <legend>{m.day.openEnds}</legend>
        {(['none', 'protected', 'exposed'] as const).map((one) => (
          <label key={one} class="choice">
            <input type="radio" name="ends" value={one} checked={ends === one} onChange={() => setEnds(one)} />
            <span>{m.day.ends[one]}</span>
          </label>
        ))}
      </fieldset>
      {ends !== null && ends !== 'none' && (
        <label class="because">
          <span>{m.day.endsNote}</span>
          <input value={note} maxLength={2000} onInput={({ currentTarget }) => setNote(currentTarget.value)} />
        </label>
      )}
      {ends === 'exposed' && (
        <p class="warning" role="alert">
          {m.day.exposed}
        </p>
      )}
      {complaint !== null && (
        <p class="trouble" role="alert">
          {complaint}
        </p>
      )}
      {trouble !== null && <TroubleNote title={m.day.notSaved} trouble={trouble} />}
      <button type="submit" class="button main">
        {m.day.save(dayWords(day))}
      </button>
    </form>
  )
}
