import { correctionsIn } from '../../core/measurement/corrections.ts'
import type { Reading } from '../../core/measurement/reading.ts'
import type { Requirement } from '../../core/requirements/requirement.ts'
import { inputsOf } from '../../core/requirements/rests-on.ts'
import { currentReadings } from '../../core/verdicts/judge-requirements.ts'
import type { VerdictWord } from '../../core/verdicts/verdict.ts'
import type { JudgedRun } from '../../operations/judge-readings.ts'

/** A reading as the list of its visit shows it. */
export interface VisitRow {
  readonly reading: Reading
  /** What it answers, or the first that is computed from it. */
  readonly requirement: Requirement
  /** Of the requirement as it stands; null of a reading that does not count any more. */
  readonly verdict: VerdictWord | null
  readonly isCorrected: boolean
}

/** What one person read on one day. */
export interface Visit {
  readonly by: string
  readonly day: string
  /** The latest first. */
  readonly rows: readonly VisitRow[]
}

/** Every reading that is judged, by visit, the latest first. */
export function visitsOf({ readings, requirements, judgement }: JudgedRun): readonly Visit[] {
  const answered = new Map<string, Requirement>()
  for (const one of requirements)
    for (const of of [one.id, ...inputsOf(one)]) if (of === one.id || !answered.has(of)) answered.set(of, one)
  const verdictOf = new Map(judgement.verdicts.map(({ requirement, verdict }) => [requirement, verdict]))
  const current = currentReadings(readings)
  const corrected = correctionsIn(readings)
  const visits = new Map<string, { by: string; day: string; rows: VisitRow[] }>()
  for (const reading of readings.toReversed()) {
    const requirement = answered.get(reading.of)
    if (requirement === undefined) continue
    const { id, by, at, of } = reading
    const day = at.slice(0, 10)
    const visit = visits.get(`${day} ${by}`) ?? { by, day, rows: [] }
    const counts = current.get(of)?.id === id
    const verdict = counts ? (verdictOf.get(requirement.id) ?? null) : null
    visit.rows.push({ reading, requirement, verdict, isCorrected: corrected.has(id) })
    visits.set(`${day} ${by}`, visit)
  }
  return [...visits.values()]
}
