import type { Result } from '../core/result.ts'
import { standingOf } from '../core/verdicts/free-findings.ts'
import type { ArchiveBody } from '../formats/entry/entry-kinds.ts'
import type { InputProblem } from '../formats/input-problem.ts'
import type { RunFile } from '../formats/run/run-file.ts'
import type { RunSummary } from '../protocol/runs.ts'
import { countVerdicts } from './count-verdicts.ts'
import type { JudgedRun } from './judge-readings.ts'
import { runFace } from './run-face.ts'

/** A run in the list, with its problems as data. */
export interface SummarisedRun extends Omit<RunSummary, 'problems'> {
  readonly problems: readonly InputProblem[]
}

/** An entry that put the run away or brought it back. */
export interface ArchiveEntry {
  readonly author: string
  readonly capturedAt: string
  readonly body: unknown
}

interface SummarisedFacts {
  readonly id: string
  /** Where the store has it: what it is listed under as long as the run itself says nothing. */
  readonly project: string
  readonly run: RunFile
  /** In the order that counts: the last one holds. */
  readonly archive: readonly ArchiveEntry[]
}

/** What a list shows of a run: its verdicts in numbers, or why it cannot be judged. */
export function summariseRun(
  { id, project, run, archive }: SummarisedFacts,
  judged: Result<JudgedRun, readonly InputProblem[]>,
): SummarisedRun {
  const { name, road } = run
  const named = { id, project: run.project ?? project, name, route: road.route, station: road.datumStation }
  const archived = archivedBy(archive)
  if (!judged.ok) return { ...named, judged: null, lastVisit: null, archived, problems: judged.error }
  const { model, judgement, log } = judged.value
  const { acceptance, verdicts, findings, freeFindings } = judgement
  const inNumbers = {
    acceptance,
    counts: countVerdicts(verdicts),
    findings: findings.length + standingOf(freeFindings).length,
    face: runFace(model, verdicts),
  }
  return { ...named, judged: inNumbers, lastVisit: lastVisitIn(log), archived, problems: [] }
}

/** A run whose entries cannot be read, by what its first one says. */
export const summariseUnread = (
  { id, project, name, archive }: Omit<SummarisedFacts, 'run'> & { readonly name: string },
  problems: readonly InputProblem[],
): SummarisedRun => ({
  ...{ id, project, name, route: null, station: null, judged: null, lastVisit: null },
  ...{ archived: archivedBy(archive), problems },
})

function archivedBy(entries: readonly ArchiveEntry[]): RunSummary['archived'] {
  const last = entries.at(-1)
  if (last === undefined) return null
  const body = last.body as ArchiveBody
  return body.archived ? { at: last.capturedAt, by: last.author, reason: body.reason } : null
}

function lastVisitIn(log: JudgedRun['log']): RunSummary['lastVisit'] {
  let last: JudgedRun['log'][number] | null = null
  for (const reading of log) if (last === null || Date.parse(reading.at) >= Date.parse(last.at)) last = reading
  return last && { at: last.at, by: last.by }
}
