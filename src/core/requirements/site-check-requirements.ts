import type { FitCheck } from '../fit/fit-check.ts'
import { siteCheckTopic } from './derived-topics.ts'
import { runPlace } from './places.ts'
import { fromRecord } from './record-requirements.ts'
import type { Requirement } from './requirement.ts'
import type { RunModel } from './run-model.ts'

/**
 * What failed of the site that the run was made of, as it was found then: no reading answers it and nothing computes it
 * anew. It stands until a named person sets it aside with a reason, as that the ground was graded since.
 */
export const siteCheckRequirements = (model: RunModel): readonly Requirement[] =>
  (model.siteChecks ?? []).flatMap((check, i) =>
    check.verdict === 'fails' ? [siteCheckRequirement(model, check, siteCheckTopic(i + 1))] : [],
  )

function siteCheckRequirement({ system }: RunModel, check: FitCheck, topic: string): Requirement {
  const { what, limit, smallestChange, source, confirmation } = check
  const place = runPlace()
  return {
    ...fromRecord(system, place, 'site-check'),
    ...{ id: `${place.id}/${topic}`, topic, maySetAside: true, source, confirmation },
    must: { kind: 'must', of: 'site-check', what, limit },
    look: { kind: 'record', rule: { kind: 'site check', check } },
    how: { kind: 'how to look', of: 'site-check' },
    why: { kind: 'why it matters', of: 'site-check' },
    remedy: { kind: 'if it fails', of: 'site-check', change: smallestChange },
  }
}
