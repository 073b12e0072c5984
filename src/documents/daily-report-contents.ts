import { remedyOf } from '../core/verdicts/saying.ts'
import type { RunFile } from '../formats/run/run-file.ts'
import type { DayReport } from './day-report.ts'
import { ticketOnDayText } from './locate-ticket-text.ts'
import { alongText, numberedText } from './places-text.ts'
import { timeText } from './printed-time.ts'
import type { RecordInput } from './record-input.ts'
import type { Fact } from './run-facts.ts'

/** One day's work on the run, for any writer. */
export interface DailyReportContents {
  readonly title: string
  readonly run: string
  readonly day: string
  readonly facts: readonly Fact[]
  readonly logs: readonly DayLogLine[]
  /** Null where nothing was driven and nobody called. */
  readonly ticket: string | null
  readonly nearMarks: readonly string[]
  /** As they stand when it is printed. */
  readonly findings: readonly { readonly place: string; readonly what: string; readonly remedy: string }[]
  /** In words. */
  readonly acceptance: string
  /** Whose days they are. */
  readonly clock: string
}

interface DayLogLine {
  readonly by: string
  readonly at: string
  /** What was done, paragraph by paragraph. */
  readonly done: readonly string[]
  readonly openEndsNote: string | null
}

/** @param zone  IANA name of the zone whose days they are */
export function dailyReportContents(
  { run, judgement, print }: Pick<RecordInput, 'run' | 'judgement' | 'print'>,
  report: DayReport,
  zone: string,
): DailyReportContents {
  const { day, logs, crew, postsDriven, panelsHung, gone, progress, readings, photos, openEnds, ticket } = report
  const facts: (readonly [string, string])[] = [
    ['Route', run.road.route ?? 'not said'],
    ['Crew', crew.join(', ') || 'not said'],
    ['Posts driven', numberedText('post', 'posts', postsDriven) || 'none'],
    ['Panels hung', numberedText('panel', 'panels', panelsHung) || 'none'],
    ...(gone.length === 0 ? [] : [['No longer in the run', gone.join(', ')] as const]),
    [
      'Done so far',
      `${progress.posts.done} of ${progress.posts.of} posts, ${progress.panels.done} of ${progress.panels.of} panels`,
    ],
    ['Readings', readings.map(({ by, count }) => `${count} by ${by}`).join(', ') || 'none'],
    ['Photos', photos === 0 ? 'none' : `${photos}`],
    ['Open ends', openEndsText(openEnds)],
  ]
  return {
    title: `Daily report ${day}`,
    run: run.name,
    day,
    facts: facts.map(([name, value]) => ({ name, value })),
    logs: logs.map(({ author, capturedAt, body }) => ({
      by: author,
      at: timeText(capturedAt),
      done: body.done.split(/\n+/).filter((line) => line.trim() !== ''),
      openEndsNote: body.openEndsNote,
    })),
    ticket: postsDriven.length === 0 && ticket.kind === 'none' ? null : ticketOnDayText(day, ticket),
    nearMarks: nearMarkTexts(run, report),
    findings: report.findings.map((finding) => ({
      place: print.say(finding.place),
      what: print.say(finding.what),
      remedy: print.say(remedyOf(finding)),
    })),
    acceptance: print.say(judgement.acceptance),
    clock: `Days are those of ${zone}; a time that was written with its own offset keeps its day.`,
  }
}

function openEndsText(ends: DayReport['openEnds']): string {
  switch (ends) {
    case 'not said':
      return 'not said'
    case 'none':
      return 'none: no end and no gap was left open'
    case 'protected':
      return 'open, and protected'
    case 'exposed':
      return 'OPEN AND EXPOSED'
    default:
      return ends satisfies never
  }
}

const nearMarkTexts = (run: Pick<RunFile, 'units'>, { nearMarks }: DayReport): readonly string[] =>
  nearMarks.map(
    ({ post, mark, ticket, apart }) =>
      `Post ${post} was driven ${alongText(run, Math.abs(apart))} from a mark: ${mark}, ticket ${ticket}.`,
  )
