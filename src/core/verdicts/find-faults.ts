import type { Requirement } from '../requirements/requirement.ts'
import type { RunModel } from '../requirements/run-model.ts'
import { heightFaults } from './height-faults.ts'
import type { Judged } from './judged.ts'
import { panelFaults } from './panel-faults.ts'
import { plainFault } from './plain-faults.ts'
import type { Proof } from './proof.ts'
import { spacingFaults } from './spacing-faults.ts'
import type { Finding, Verdict } from './verdict.ts'

/** A finding for every fault, with its remedy; what has one cause is one finding. In walking order. */
export function findFaults(
  model: RunModel,
  requirements: readonly Requirement[],
  verdicts: readonly Verdict[],
  proof: Proof,
): readonly Finding[] {
  const judged = requirements.map((requirement, i) => ({ requirement, verdict: verdicts[i]! }))
  const failed = judged.filter(({ verdict }) => verdict.verdict === 'fails')
  if (failed.length === 0) return []
  const byId = new Map(judged.map((one) => [one.requirement.id, one]))
  const ofTopic = (...topics: readonly string[]): readonly Judged[] =>
    failed.filter(({ requirement }) => topics.includes(requirement.topic))
  const panels = panelFaults(model, byId)
  const grouped = new Set(panels.flatMap(({ requirements: ids }) => ids))
  const isPlain = ({ requirement }: Judged): boolean =>
    !['rail-height', 'stub-height', 'spacing'].includes(requirement.topic) && !grouped.has(requirement.id)
  const spaces = ofTopic('spacing')
  const isMeasured = ({ verdict }: Judged): boolean => verdict.because.kind === 'measured'
  const findings = [
    ...heightFaults(ofTopic('rail-height', 'stub-height'), byId, proof),
    ...(spaces.some(isMeasured) ? spacingFaults(model, byId, proof) : []),
    ...panels,
    ...[...spaces.filter((one) => !isMeasured(one)), ...failed.filter(isPlain)].map((one) => plainFault(one, proof)),
  ]
  return findings.sort((a, b) => a.place.alongInches - b.place.alongInches)
}
