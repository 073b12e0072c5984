import { correctionsIn } from '../measurement/corrections.ts'
import type { Reading } from '../measurement/reading.ts'
import type { Requirement } from '../requirements/requirement.ts'
import { restsOn } from '../requirements/rests-on.ts'
import { type JudgingRules, judgeRequirements } from './judge-requirements.ts'
import { type RequirementById, recheckedFinding } from './rechecks.ts'
import type { FailureHistory, ReadVerdict, Verdict } from './verdict.ts'

/**
 * Every requirement that fails or once failed by a reading that nobody corrected, by its id. A failure that came of
 * readings not yet complete, as of half a line, and that no reading was taken back for, is none.
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
    const read = restsOn(requirement)
    // Of most nothing was read twice: they have failed if they fail.
    if (verdicts[i]!.verdict !== 'fails' && read.every((of) => (places.get(of)?.length ?? 0) < 2)) continue
    const events = read
      .flatMap((of) => places.get(of) ?? [])
      .sort((a, b) => a - b)
      .map((at) => readings[at]!)
    const history = historyOf(requirement, events, rules, byId)
    if (history !== null) histories.set(requirement.id, history)
  }
  return histories
}

function historyOf(
  requirement: Requirement,
  events: readonly Reading[],
  rules: JudgingRules,
  byId: RequirementById,
): FailureHistory | null {
  let history: FailureHistory | null = null
  for (let i = firstThatCounts(requirement, events); i < events.length; i++) {
    const verdict = judgeRequirements([requirement], events.slice(0, i + 1), rules)[0]!
    history = after(history, { reading: events[i]!, verdict }, requirement, events, byId)
  }
  return history
}

/**
 * Without a second reading of anything only the state at the end can be a failure; with one, the state before the first
 * reading that can answer a failure: until then a failure ends with the next reading, as of a line not yet complete.
 */
function firstThatCounts({ id }: Requirement, events: readonly Reading[]): number {
  const seen = new Set<string>()
  let isReread = false
  let answer: number | null = null
  for (const [i, { of }] of events.entries()) {
    isReread ||= seen.has(of)
    if (i > 0 && (seen.has(of) || of === id)) answer ??= i
    seen.add(of)
  }
  return isReread ? answer! - 1 : Math.max(events.length - 1, 0)
}

function after(
  before: FailureHistory | null,
  now: ReadVerdict,
  requirement: Requirement,
  events: readonly Reading[],
  byId: RequirementById,
): FailureHistory | null {
  const { reading, verdict } = now
  if (verdict.verdict === 'fails') return { requirement: verdict.requirement, failed: now, since: null, closedBy: null }
  if (before === null) return null
  const rested = new Set(before.failed.verdict.readings)
  const isAgain = events.some(({ id, of }) => rested.has(id) && of === reading.of)
  if (before.since === null && !isAgain && reading.of !== verdict.requirement) return null
  const isProof = verdict.verdict === 'meets' || verdict.verdict === 'does not apply'
  const closes = isProof && recheckedFinding(reading, requirement, byId) !== null
  return { ...before, since: now, closedBy: closes ? now : before.closedBy }
}
