import type { DayReport } from '../../documents/day-report.ts'
import type { JudgedRun } from '../../operations/judge-readings.ts'
import { printNumbers } from '../../operations/number-list.ts'
import { dayWords, momentWords, placeWords } from '../entry/reading-words.ts'
import { NearMarks, TicketNote } from '../fieldwork/locate-notes.tsx'
import { asWritten, m, say } from '../messages.ts'
import { AcceptanceMark } from '../parts/verdict-sign.tsx'

/** The daily report on paper: nothing in it is typed for it, all of it comes out of the entries of the day. */
export function DayReportView({ judged, report }: { readonly judged: JudgedRun; readonly report: DayReport }) {
  const { road, name } = judged.run
  const { progress } = report
  const numbers = (list: readonly number[]): string => (list.length === 0 ? m.day.nothing : printNumbers(list))
  const facts: readonly (readonly [string, string])[] = [
    [m.run.route, road.route === null ? m.run.notSaid : asWritten(road.route)],
    [m.day.crew, report.crew.map(asWritten).join(', ') || m.run.notSaid],
    [m.day.postsDriven, numbers(report.postsDriven)],
    [m.day.panelsHung, numbers(report.panelsHung)],
    ...(report.gone.length === 0
      ? []
      : [[m.day.gone, report.gone.map((one) => say(one, judged.run.units)).join('; ')] as const]),
    [m.day.soFar, m.day.progress(progress.posts.done, progress.posts.of, progress.panels.done, progress.panels.of)],
    [m.day.readings, report.readings.map(({ by, count }) => `${asWritten(by)}: ${count}`).join(', ') || m.day.nothing],
    [m.photo.title, String(report.photos)],
    [m.day.openEnds, report.openEnds === 'not said' ? m.run.notSaid : m.day.ends[report.openEnds]],
  ]
  return (
    <article class="day-report" aria-labelledby="day-report">
      <h2 id="day-report">
        {m.day.report}: {asWritten(name)}
      </h2>
      <p>
        <b>{dayWords(report.day)}</b>
      </p>
      <dl class="facts-list">
        {facts.map(([label, value]) => (
          <div key={label}>
            <dt>{label}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      {report.logs.length === 0 && <p>{m.day.noLog}</p>}
      {report.logs.map(({ id, author, capturedAt, body }) => (
        <section key={id}>
          <h3>{m.day.doneBy(asWritten(author), momentWords(capturedAt))}</h3>
          <p class="as-typed">{asWritten(body.done)}</p>
          {body.openEndsNote !== null && (
            <p>
              <b>{m.day.openEnds}:</b> {asWritten(body.openEndsNote)}
            </p>
          )}
        </section>
      ))}
      {report.postsDriven.length > 0 && <TicketNote day={report.day} on={report.ticket} />}
      <NearMarks marks={report.nearMarks} units={judged.run.units} />
      <h3>{m.run.withCount(m.findings.title, report.findings.length)}</h3>
      {report.findings.length === 0 && <p>{m.day.noFindings}</p>}
      <ul>
        {report.findings.map(({ id, place, what }) => (
          <li key={id}>
            <b>{placeWords(place, judged.run.units)}:</b> {say(what, judged.run.units)}
          </li>
        ))}
      </ul>
      <p>
        {m.day.now} <AcceptanceMark acceptance={judged.judgement.acceptance} />
      </p>
      <p class="signature-lines">
        <span>{m.day.signature}</span>
        <span>{m.day.date}</span>
      </p>
      <button type="button" class="button no-print" onClick={() => window.print()}>
        {m.day.print}
      </button>
    </article>
  )
}
