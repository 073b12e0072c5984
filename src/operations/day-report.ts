import type { Reading } from '../core/measurement/reading.ts'
import { recheckedFinding } from '../core/verdicts/rechecks.ts'
import type { DayReport } from '../documents/day-report.ts'
import type { DayLogBody, EntryOf, LocateTicketBody, PhotoBody } from '../formats/entry/entry-kinds.ts'
import { entriesInForce } from './entries-in-force.ts'
import type { JudgedRun } from './judge-readings.ts'
import { postsNearMarks, ticketOn } from './locate-warnings.ts'

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
  const tickets = entriesInForce(entries.tickets).map(({ body }) => body)
  const readings = judged.log.filter(({ at }) => dayOf(at) === day)
  const postsDriven = numbersOf(logs, 'postsDriven')
  const { posts, panels } = judged.model.layout
  const byId = new Map(judged.requirements.map((requirement) => [requirement.id, requirement]))
  return {
    day,
    logs,
    crew: [...new Set(logs.flatMap(({ body }) => body.crew))],
    postsDriven,
    panelsHung: numbersOf(logs, 'panelsHung'),
    progress: {
      posts: { done: numbersOf(sofar, 'postsDriven').length, of: posts.length },
      panels: { done: numbersOf(sofar, 'panelsHung').length, of: panels.length },
    },
    openEnds: worstEnds(logs),
    ticket: ticketOn(day, tickets),
    nearMarks: postsNearMarks(
      posts.filter(({ number }) => postsDriven.includes(number)),
      tickets,
    ),
    readings: countBy(readings),
    photos: entries.photos.filter(({ capturedAt, body }) => dayOf(body.takenAt ?? capturedAt) === day).length,
    findings: judged.judgement.findings.filter(({ requirements }) => {
      const standsOn = judged.requirements.filter(({ id }) => requirements.includes(id))
      return readings.some((reading) =>
        standsOn.some((one) => one.id === reading.of || recheckedFinding(reading, one, byId) !== null),
      )
    }),
  }
}

function numbersOf(logs: readonly EntryOf<DayLogBody>[], what: 'postsDriven' | 'panelsHung'): readonly number[] {
  return [...new Set(logs.flatMap(({ body }) => body[what]))].sort((a, b) => a - b)
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
