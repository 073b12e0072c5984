import { worstSeverity } from '../hardware/severity.ts'
import type { Requirement } from '../requirements/requirement.ts'
import type { RemedyStep } from './remedy.ts'
import type { Finding, FoundPart, Verdict } from './verdict.ts'

/** A requirement with what the readings say of it. */
export interface Judged {
  readonly requirement: Requirement
  readonly verdict: Verdict
}

export type JudgedById = ReadonlyMap<string, Judged>

/** A finding that stands on `stands`, the first of which names it. */
export function findingOf(
  stands: readonly Judged[],
  parts: readonly FoundPart[],
  steps: readonly RemedyStep[],
): Finding {
  const { id, place } = stands[0]!.requirement
  const requirements = stands.map(({ requirement }) => requirement.id)
  const severity = worstSeverity(stands.map(({ requirement }) => requirement.severity))
  return { id, place, what: { kind: 'found', parts }, steps, requirements, severity }
}

/** The rule that is not met, with what was read. */
export const againstRule = ({ requirement, verdict }: Judged): FoundPart => ({
  kind: 'against a rule',
  because: verdict.because,
  must: requirement.must,
})
