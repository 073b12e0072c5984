import type { Reading } from '../measurement/reading.ts'
import type { Requirement } from '../requirements/requirement.ts'
import type { RunModel } from '../requirements/run-model.ts'
import { failureHistories } from './failure-histories.ts'
import { findFaults } from './find-faults.ts'
import { type FreeFinding, isGrave, type PlacedFreeFinding, placeFreeFindings, standingOf } from './free-findings.ts'
import { type JudgingRules, judgeRequirements } from './judge-requirements.ts'
import { proofOf } from './proof.ts'
import { setAsideIn } from './set-aside.ts'
import type { Acceptance, FailureHistory, Judgement, Unproven, Verdict } from './verdict.ts'
import { withoutEffect } from './without-effect.ts'

/** What the readings say of the whole run. */
export function judgeRun(
  model: RunModel,
  requirements: readonly Requirement[],
  readings: readonly Reading[],
  rules: JudgingRules,
  free: readonly FreeFinding[] = [],
): Judgement {
  const verdicts = judgeRequirements(requirements, readings, rules)
  const failures = failureHistories(requirements, verdicts, readings, rules)
  const open = new Set([...failures.values()].filter(isNotRechecked).map(({ requirement }) => requirement))
  const freeFindings = placeFreeFindings(model, free)
  return {
    acceptance: withFreeFindings(acceptanceOf(verdicts, open.size > 0), freeFindings),
    verdicts,
    findings: findFaults(model, requirements, verdicts, proofOf(readings, rules)),
    freeFindings,
    unproven: verdicts
      .filter((one) => isUnproven(one) || open.has(one.requirement))
      .map((one) => unprovenOf(one, open)),
    failures,
    withoutEffect: withoutEffect(requirements, readings),
  }
}

/** It was read again and no longer fails, but nothing says and proves that what was found is put right. */
const isNotRechecked = ({ since, closedBy }: FailureHistory): boolean => since !== null && closedBy === null

/**
 * Acceptable only when everything meets its requirement or is rightly set aside, every failure was rechecked and at
 * least one reading meets; never by default, nor by the run file alone.
 */
function acceptanceOf(verdicts: readonly Verdict[], isAnyNotRechecked: boolean): Acceptance {
  if (isAnyNotRechecked || verdicts.some(({ verdict }) => verdict === 'fails')) return { kind: 'not acceptable' }
  const isProven = verdicts.every(({ verdict }) => verdict === 'meets' || verdict === 'does not apply')
  if (!isProven || !verdicts.some(isMetByReading)) return { kind: 'not yet known' }
  const aside = setAsideIn(verdicts)
  if (aside.length === 0) return { kind: 'acceptable' }
  return { kind: 'acceptable except', setAside: aside.length, by: [...new Set(aside.map(({ by }) => by))] }
}

/** One that stands and can let the hardware fail keeps a run from being acceptable; of the others it is said. */
function withFreeFindings(acceptance: Acceptance, findings: readonly PlacedFreeFinding[]): Acceptance {
  const standing = standingOf(findings)
  if (standing.length === 0) return acceptance
  const kept = standing.some(isGrave) ? ({ kind: 'not acceptable' } as const) : acceptance
  return { ...kept, freeFindings: standing.length }
}

const isMetByReading = ({ verdict, readings }: Verdict): boolean => verdict === 'meets' && readings.length > 0

const isUnproven = ({ verdict, because }: Verdict): boolean =>
  verdict === 'unread' || verdict === 'too close' || because.kind === 'set aside'

const unprovenOf = ({ requirement, place, because }: Verdict, open: ReadonlySet<string>): Unproven => ({
  requirement,
  place,
  because: open.has(requirement) ? { kind: 'not rechecked' } : because,
})
