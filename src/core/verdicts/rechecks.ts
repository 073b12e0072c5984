import type { Reading } from '../measurement/reading.ts'
import type { Requirement } from '../requirements/requirement.ts'
import { restsOn } from '../requirements/rests-on.ts'

/**
 * The finding that the reading puts to the proof for the requirement, or null. A recheck counts only for a finding that
 * its reading can prove put right: one that stands on what was read, or on what is computed from it.
 */
export function recheckedFinding(
  { of, rechecks }: Pick<Reading, 'of' | 'rechecks'>,
  requirement: Requirement,
): string | null {
  if (rechecks === null || !canStandOn(rechecks, requirement)) return null
  return restsOn(requirement).includes(of) ? rechecks : null
}

/**
 * Whether a finding of that name can stand on the requirement. What has one cause is one finding, named by the first
 * requirement that it stands on: rail and stub of a post, two neighbouring spaces, wrong panels and their splices.
 */
function canStandOn(finding: string, { id, topic, place: { number } }: Requirement): boolean {
  if (finding === id) return true
  switch (topic) {
    case 'stub-height':
      return finding === `post-${number}/rail-height`
    case 'spacing':
      // Posts that are off together are one finding, however many stand between its spaces.
      return /^space-\d+\/spacing$/.test(finding)
    case 'panel-length':
    case 'slotted-panel':
      return isUpTo(number, /^panel-(\d+)\/panel-length$/.exec(finding))
    case 'splice-position':
      return (
        /^panel-\d+\/panel-length$/.test(finding) || isUpTo(number, /^splice-(\d+)\/splice-position$/.exec(finding))
      )
    default:
      return false
  }
}

const isUpTo = (last: number, found: RegExpExecArray | null): boolean => found !== null && Number(found[1]) <= last
