import type { Reading } from '../core/measurement/reading.ts'
import { namesOfThings } from '../core/record/thing-read.ts'
import { recheckedFinding } from '../core/verdicts/rechecks.ts'
import type { DayReport } from '../documents/day-report.ts'
import type { DayLogBody, EntryOf, LocateTicketBody, PhotoBody } from '../formats/entry/entry-kinds.ts'
import { entriesInForce } from './entries-in-force.ts'
import type { JudgedRun } from './judge-readings.ts'
import { postsNearMarks, ticketOn } from './locate-warnings.ts'
import { loggedPieces } from './logged-pieces.ts'
import { placedTickets } from './placed-tickets.ts'

export interface DayEntries {
  readonly logs: readonly EntryOf<DayLogBody>[]
  readonly tickets: readonly EntryOf<LocateTicketBody>[]
  readonly photos: readonly EntryOf<PhotoBody>[]
}

/**
 * The daily report, out of the entries alone.
 * @param day    ISO date
 * @param dayOf  ISO date of a moment where the work is, since a moment in UTC may belong to the day before
 */
export function dayReport(
  judged: JudgedRun,
  entries: DayEntries,
  day: string,
  dayOf: (moment: string) => string,
): DayReport {
  const inForce = entriesInForce(entries.logs)
  const logs = inForce.filter(({ body }) => body.day === day)
  const sofar = inForce.filter(({ body }) => body.day <= day)
  const tickets = placedTickets(judged, entriesInForce(entries.tickets))
  const readings = judged.log.filter(({ at }) => dayOf(at) === day)
  const { posts, panels } = judged.model.layout
  const nameOf = namesOfThings(judged.model, judged.run.version, judged.versions)
  const seen = new Map(
    logs.flatMap(({ body: { version, postsDriven, panelsHung } }) =>
      [...postsDriven, ...panelsHung].map((id) => [id, version ?? null] as const),
    ),
  )
  const driven = (of: typeof logs) =>
    loggedPieces(
      posts,
      of.flatMap(({ body }) => body.postsDriven),
    )
  const hung = (of: typeof logs) =>
    loggedPieces(
      panels,
      of.flatMap(({ body }) => body.panelsHung),
    )
  const postsDriven = driven(logs).numbers
  const byId = new Map(judged.requirements.map((requirement) => [requirement.id, requirement]))
  return {
    day,
    logs,
    crew: [...new Set(logs.flatMap(({ body }) => body.crew))],
    postsDriven,
    panelsHung: hung(logs).numbers,
    gone: [...driven(logs).gone, ...hung(logs).gone].map((id) => nameOf(id, seen.get(id) ?? null)),
    progress: {
      posts: { done: driven(sofar).numbers.length, of: posts.length },
      panels: { done: hung(sofar).numbers.length, of: panels.length },
    },
    openEnds: worstEnds(logs),
    ticket: ticketOn(day, tickets),
    nearMarks: postsNearMarks(
      posts.filter(({ number }) => postsDriven.includes(number)),
      tickets,
    ),
    readings: countBy(readings),
    photos: entriesInForce(entries.photos).filter(({ capturedAt, body }) => dayOf(body.takenAt ?? capturedAt) === day)
      .length,
    findings: judged.judgement.findings.filter(({ requirements }) => {
      const standsOn = judged.requirements.filter(({ id }) => requirements.includes(id))
      return readings.some((reading) =>
        standsOn.some((one) => one.id === reading.of || recheckedFinding(reading, one, byId) !== null),
      )
    }),
  }
}

/** Of several logs of one day, the one that says the worst. */
function worstEnds(logs: readonly EntryOf<DayLogBody>[]): DayReport['openEnds'] {
  const said = new Set(logs.map(({ body }) => body.openEnds))
  return (['exposed', 'protected', 'none'] as const).find((ends) => said.has(ends)) ?? 'not said'
}

function countBy(readings: readonly Reading[]): readonly { by: string; count: number }[] {
  const counts = new Map<string, number>()
  for (const { by } of readings) counts.set(by, (counts.get(by) ?? 0) + 1)
  return [...counts].map(([by, count]) => ({ by, count }))
}
