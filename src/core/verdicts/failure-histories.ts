import { correctionsIn } from '../measurement/corrections.ts'
import type { Reading } from '../measurement/reading.ts'
import type { Requirement } from '../requirements/requirement.ts'
import { restsOn } from '../requirements/rests-on.ts'
import { type JudgingRules, judgeRequirements } from './judge-requirements.ts'
import { type RequirementById, recheckedFinding } from './rechecks.ts'
import type { FailureHistory, ReadVerdict, Verdict } from './verdict.ts'

/**
 * Every requirement that fails or once failed, by its id: by a reading that nobody corrected, or by the count of what
 * stands. A failure that came of readings not yet complete, as of half a line, and that nothing was read for, is none.
 *
 * @param verdicts  on all of the readings, in the order of the requirements
 */
export function failureHistories(
  requirements: readonly Requirement[],
  verdicts: readonly Verdict[],
  readings: readonly Reading[],
  rules: JudgingRules,
): ReadonlyMap<string, FailureHistory> {
  const corrected = correctionsIn(readings)
  const byId = new Map(requirements.map((requirement) => [requirement.id, requirement]))
  const places = new Map<string, number[]>()
  for (const [i, { id, of }] of readings.entries()) {
    if (corrected.has(id)) continue
    const list = places.get(of)
    if (list === undefined) places.set(of, [i])
    else list.push(i)
  }
  const histories = new Map<string, FailureHistory>()
  for (const [i, requirement] of requirements.entries()) {
    if (verdicts[i]!.verdict !== 'fails' && hasNoAnswer(requirement, places)) continue
    const events = restsOn(requirement)
      .flatMap((of) => places.get(of) ?? [])
      .sort((a, b) => a - b)
      .map((at) => readings[at]!)
    const history = historyOf(requirement, events, rules, byId)
    if (history !== null) histories.set(requirement.id, history)
  }
  return histories
}

/** Of most nothing was counted, nor read twice or in two ways: they have failed if they fail. */
function hasNoAnswer(requirement: Requirement, places: ReadonlyMap<string, readonly number[]>): boolean {
  if (countedAt(requirement) !== undefined) return false
  const [own = 0, ...inputs] = restsOn(requirement).map((of) => places.get(of)?.length ?? 0)
  return own < 2 && inputs.every((times) => times < (own === 0 ? 2 : 1))
}

function historyOf(
  requirement: Requirement,
  events: readonly Reading[],
  rules: JudgingRules,
  byId: RequirementById,
): FailureHistory | null {
  let history = failedByCount(requirement, rules)
  for (let i = firstThatCounts(requirement, events); i < events.length; i++) {
    const verdict = judgeRequirements([requirement], events.slice(0, i + 1), rules)[0]!
    history = after(history, { reading: events[i]!, verdict }, requirement, events, byId)
  }
  return history
}

/** What fails before anything is read of it. */
function failedByCount(requirement: Requirement, rules: JudgingRules): FailureHistory | null {
  if (countedAt(requirement) === undefined) return null
  const { verdict } = judgeRequirements([requirement], [], rules)[0]!
  return verdict === 'fails' ? { requirement: requirement.id, failed: null, since: null, closedBy: null } : null
}

const countedAt = ({ look }: Requirement): string | number | undefined =>
  look.kind === 'choose' || look.kind === 'measure' ? look.counted : undefined

/**
 * The state before the first reading that can answer a failure: one of what was read already, or of the requirement
 * itself. Until then a failure ends with the next reading, as of a line not yet complete; without such a reading only the
 * state at the end can be one.
 */
function firstThatCounts({ id }: Requirement, events: readonly Reading[]): number {
  const seen = new Set<string>()
  for (const [i, { of }] of events.entries()) {
    if (i > 0 && (seen.has(of) || of === id)) return i - 1
    seen.add(of)
  }
  return Math.max(events.length - 1, 0)
}

function after(
  before: FailureHistory | null,
  now: ReadVerdict,
  requirement: Requirement,
  events: readonly Reading[],
  byId: RequirementById,
): FailureHistory | null {
  const { reading, verdict } = now
  if (verdict.verdict === 'fails') {
    const failed = verdict.readings.length > 0 ? now : null
    return { requirement: requirement.id, failed, since: null, closedBy: null }
  }
  if (before === null) return null
  if (before.since === null && !isAnswer(reading, before, events)) return null
  const isProof = verdict.verdict === 'meets' || verdict.verdict === 'does not apply'
  const closes = isProof && recheckedFinding(reading, requirement, byId) !== null
  return { ...before, since: now, closedBy: closes ? now : before.closedBy }
}

/** Whether the reading is of what failed, or of what it was computed from. Any reading of it answers a count. */
function isAnswer({ of }: Reading, { requirement, failed }: FailureHistory, events: readonly Reading[]): boolean {
  if (failed === null || of === requirement) return true
  const rested = new Set(failed.verdict.readings)
  return events.some((event) => rested.has(event.id) && event.of === of)
}
