import type { Reading } from '../measurement/reading.ts'
import type { Requirement } from '../requirements/requirement.ts'
import type { RunModel } from '../requirements/run-model.ts'
import { describeReason } from './describe-reason.ts'
import { findFaults } from './find-faults.ts'
import { type JudgingRules, judgeRequirements } from './judge-requirements.ts'
import type { Acceptance, Judgement, Unproven, Verdict } from './verdict.ts'

/** What the readings say of the whole run. */
export function judgeRun(
  model: RunModel,
  requirements: readonly Requirement[],
  readings: readonly Reading[],
  rules: JudgingRules,
): Judgement {
  const verdicts = judgeRequirements(requirements, readings, rules)
  return {
    acceptance: acceptanceOf(verdicts),
    verdicts,
    findings: findFaults(model, requirements, verdicts, readings),
    unproven: verdicts.filter(isUnproven).map(unprovenOf),
  }
}

/** Acceptable only when everything meets its requirement or is rightly set aside; never by default. */
function acceptanceOf(verdicts: readonly Verdict[]): Acceptance {
  if (verdicts.some(({ verdict }) => verdict === 'fails')) return 'not acceptable'
  const proven = verdicts.every(({ verdict }) => verdict === 'meets' || verdict === 'does not apply')
  return proven && verdicts.some(({ verdict }) => verdict === 'meets') ? 'acceptable' : 'not yet known'
}

const isUnproven = ({ verdict, because }: Verdict): boolean =>
  verdict === 'unread' || verdict === 'too close' || because.kind === 'set aside'

const unprovenOf = ({ requirement, place, because }: Verdict): Unproven => ({
  requirement,
  place,
  why: describeReason(because),
})
