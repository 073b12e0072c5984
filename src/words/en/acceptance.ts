import type { Acceptance } from '../../core/verdicts/verdict.ts'
import type { Printers } from '../print.ts'

/** How a run stands: all that a list says of it. */
export const acceptance: Printers<Acceptance> = {
  acceptable: ({ freeFindings }) => `acceptable${standing(freeFindings)}`,
  'acceptable except': ({ setAside, by, freeFindings }, print) =>
    `acceptable except for ${setAside} set aside by ${by.map(print.theirs).join(', ')}${standing(freeFindings)}`,
  'not acceptable': ({ freeFindings }) => `not acceptable${standing(freeFindings)}`,
  'not yet known': ({ freeFindings }) => `not yet known${standing(freeFindings)}`,
}

/** What is said of the free findings that stand beside the requirements. */
const standing = (count = 0): string =>
  count === 0 ? '' : count === 1 ? '; 1 free finding stands' : `; ${count} free findings stand`
