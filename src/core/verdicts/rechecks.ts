import type { Reading } from '../measurement/reading.ts'
import type { Requirement } from '../requirements/requirement.ts'
import { restsOn } from '../requirements/rests-on.ts'

/** The requirements that findings are named by. */
export type RequirementById = ReadonlyMap<string, Pick<Requirement, 'topic' | 'place'>>

/**
 * The finding that the reading puts to the proof for the requirement, or null. A recheck counts only for a finding that
 * its reading can prove put right: one that stands on what was read, or on what is computed from it.
 */
export function recheckedFinding(
  { of, rechecks }: Pick<Reading, 'of' | 'rechecks'>,
  requirement: Requirement,
  byId: RequirementById,
): string | null {
  if (rechecks === null || !canStandOn(rechecks, requirement, byId)) return null
  return restsOn(requirement).includes(of) ? rechecks : null
}

/**
 * Whether a finding of that name can stand on the requirement. What has one cause is one finding, named by the first
 * requirement that it stands on: rail and stub of a post, two neighbouring spaces, wrong panels and their splices.
 */
function canStandOn(finding: string, { id, topic, place }: Requirement, byId: RequirementById): boolean {
  if (finding === id) return true
  const named = byId.get(finding)
  if (named === undefined) return false
  const isUpTo = named.place.number <= place.number
  switch (topic) {
    case 'stub-height':
      return named.topic === 'rail-height' && named.place.id === place.id
    case 'spacing':
      // Posts that are off together are one finding, however many stand between its spaces.
      return named.topic === 'spacing'
    case 'panel-length':
    case 'slotted-panel':
      return named.topic === 'panel-length' && isUpTo
    case 'splice-position':
      return named.topic === 'panel-length' || (named.topic === 'splice-position' && isUpTo)
    default:
      return false
  }
}
