import type { Reading } from '../core/measurement/reading.ts'
import type { Finding } from '../core/verdicts/verdict.ts'
import type { DayLogBody, LocateTicketBody, PhotoBody } from '../formats/entry/entry-kinds.ts'
import { type EntryOf, entriesInForce } from './entries-in-force.ts'
import type { JudgedRun } from './judge-readings.ts'
import { type NearMark, postsNearMarks, type TicketOnDay, ticketOn } from './locate-warnings.ts'

export interface DayEntries {
  readonly logs: readonly EntryOf<DayLogBody>[]
  readonly tickets: readonly EntryOf<LocateTicketBody>[]
  readonly photos: readonly EntryOf<PhotoBody>[]
}

/** Everything that the entries of a run say of one day. */
export interface DayReport {
  readonly day: string
  /** Logs in force of this day; more than one where two people wrote one each. */
  readonly logs: readonly EntryOf<DayLogBody>[]
  readonly crew: readonly string[]
  readonly postsDriven: readonly number[]
  readonly panelsHung: readonly number[]
  /** Up to and with this day, of all the run has. */
  readonly progress: { readonly posts: Count; readonly panels: Count }
  /** Not asked for, and so not known, while the day has no log. */
  readonly openEnds: 'not said' | DayLogBody['openEnds']
  readonly ticket: TicketOnDay
  /** Posts driven on this day that stand near a mark. */
  readonly nearMarks: readonly NearMark[]
  readonly readings: readonly { readonly by: string; readonly count: number }[]
  readonly photos: number
  /** Findings as they stand now whose requirements were read on this day. */
  readonly findings: readonly Finding[]
}

interface Count {
  readonly done: number
  readonly of: number
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
  const readings = judged.readings.filter(({ at }) => dayOf(at) === day)
  const postsDriven = numbersOf(logs, 'postsDriven')
  const { posts, panels } = judged.model.layout
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
    findings: judged.judgement.findings.filter(({ requirements }) =>
      readings.some(
        ({ of, rechecks }) => requirements.includes(of) || (rechecks !== null && requirements.includes(rechecks)),
      ),
    ),
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
