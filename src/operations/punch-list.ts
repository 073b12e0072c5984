import type { Stated } from '../core/hardware/hardware-sheet.ts'
import { type Rated, severityRank, worstSeverity } from '../core/hardware/severity.ts'
import type { Place } from '../core/requirements/requirement.ts'
import { recheckedFinding } from '../core/verdicts/rechecks.ts'
import type { FailureHistory, Finding, ReadVerdict } from '../core/verdicts/verdict.ts'
import type { JudgedRun } from './judge-readings.ts'

/** What was read for one requirement when it failed, and what since. */
export interface OldAndNew {
  readonly requirement: string
  readonly old: ReadVerdict | null
  readonly new: ReadVerdict | null
}

/**
 * - `open`: it fails now.
 * - `not rechecked`: a later reading does not fail, but none that names the finding proves that it was put right.
 * - `closed`: a reading that names it proves it.
 */
export type PunchState = 'open' | 'not rechecked' | 'closed'

export interface PunchItem {
  /** Of the finding: its first requirement. */
  readonly id: string
  readonly place: Place
  readonly state: PunchState
  /** What is wrong and its remedy, while it is open. */
  readonly finding: Finding | null
  /** The worst of what it stands or stood on. */
  readonly severity: Stated<Rated>
  readonly readings: readonly OldAndNew[]
}

/** Every finding that the run ever had: those that stand before those that are closed, the worst first, then along the rail. */
export function punchList({ judgement, requirements }: JudgedRun): readonly PunchItem[] {
  const { findings, failures } = judgement
  const open = findings.map(
    (finding): PunchItem => ({
      id: finding.id,
      place: finding.place,
      state: 'open',
      finding,
      severity: finding.severity,
      readings: finding.requirements.map((id) => ({
        requirement: id,
        old: failures.get(id)?.failed ?? null,
        new: null,
      })),
    }),
  )
  const byId = new Map(requirements.map((requirement) => [requirement.id, requirement]))
  const past = new Map<string, FailureHistory[]>()
  for (const history of failures.values()) {
    if (history.since === null) continue
    const requirement = byId.get(history.requirement)!
    const finding = recheckedFinding((history.closedBy ?? history.since).reading, requirement, byId) ?? requirement.id
    past.set(finding, [...(past.get(finding) ?? []), history])
  }
  const rest = [...past].map(([id, histories]): PunchItem => {
    const { place } = byId.get(id) ?? byId.get(histories[0]!.requirement)!
    const isClosed = histories.every(({ closedBy }) => closedBy !== null)
    const readings = histories.map(({ requirement, failed, since }) => ({ requirement, old: failed, new: since }))
    const severity = worstSeverity(histories.map(({ requirement }) => byId.get(requirement)!.severity))
    return { id, place, state: isClosed ? 'closed' : 'not rechecked', finding: null, severity, readings }
  })
  const order: Readonly<Record<PunchState, number>> = { open: 0, 'not rechecked': 1, closed: 2 }
  return [...open, ...rest].sort(
    (a, b) =>
      order[a.state] - order[b.state] ||
      severityRank(a.severity) - severityRank(b.severity) ||
      a.place.alongInches - b.place.alongInches,
  )
}
