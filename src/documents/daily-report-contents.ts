import { remedyOf } from '../core/verdicts/saying.ts'
import type { DayReport } from './day-report.ts'
import { ticketOnDayText } from './locate-ticket-text.ts'
import { alongText, numberedText } from './places-text.ts'
import { timeText } from './printed-time.ts'
import type { RecordInput } from './record-input.ts'
import type { Fact } from './run-facts.ts'
import { type TitleBlockContents, titleBlockContents } from './title-block.ts'
import { documentWords } from './words/document-words.ts'

/** One day's work on the run, for any writer. */
export interface DailyReportContents {
  readonly title: string
  readonly run: string
  readonly titleBlock: TitleBlockContents | null
  readonly day: string
  readonly facts: readonly Pick<Fact, 'name' | 'value'>[]
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
  const words = documentWords(print).dailyReport
  const { theirs } = print
  // Without a log nobody said that nothing was done.
  const noPieces = logs.length === 0 ? words.notSaid : words.none
  const facts: (readonly [string, string])[] = [
    [words.facts.route, run.road.route === null ? words.notSaid : theirs(run.road.route)],
    [words.facts.crew, crew.map(theirs).join(', ') || words.notSaid],
    [words.facts.postsDriven, numberedText('post', postsDriven, print) || noPieces],
    [words.facts.panelsHung, numberedText('panel', panelsHung, print) || noPieces],
    ...(gone.length === 0 ? [] : [[words.facts.gone, gone.map(print.say).join('; ')] as const]),
    [
      words.facts.soFar,
      words.progress(progress.posts.done, progress.posts.of, progress.panels.done, progress.panels.of),
    ],
    [words.facts.readings, readings.map(({ by, count }) => words.readBy(count, theirs(by))).join(', ') || words.none],
    [words.facts.photos, photos === 0 ? words.none : `${photos}`],
    [words.facts.openEnds, words.ends[openEnds]],
  ]
  return {
    title: words.title(day),
    run: theirs(run.name),
    titleBlock: titleBlockContents(run, print),
    day,
    facts: facts.map(([name, value]) => ({ name, value })),
    logs: logs.map(({ author, capturedAt, body }) => ({
      by: theirs(author),
      at: timeText(capturedAt),
      done: body.done
        .split(/\n+/)
        .filter((line) => line.trim() !== '')
        .map(theirs),
      openEndsNote: body.openEndsNote === null ? null : theirs(body.openEndsNote),
    })),
    ticket: postsDriven.length === 0 && ticket.kind === 'none' ? null : ticketOnDayText(day, ticket, print),
    nearMarks: report.nearMarks.map(({ post, mark, ticket, apart }) =>
      words.nearMark(post, alongText(run, Math.abs(apart)), theirs(mark), theirs(ticket)),
    ),
    findings: report.findings.map((finding) => ({
      place: print.say(finding.place),
      what: print.say(finding.what),
      remedy: print.say(remedyOf(finding)),
    })),
    acceptance: print.say(judgement.acceptance),
    clock: words.clock(zone),
  }
}
