import type { Acceptance } from '../../core/verdicts/verdict.ts'
import type { Printers } from '../print.ts'

/** How a run stands: all that a list says of it. */
export const acceptance: Printers<Acceptance> = {
  acceptable: ({ freeFindings }) => `aceptable${standing(freeFindings)}`,
  'acceptable except': ({ setAside, by, freeFindings }, print) =>
    `aceptable salvo ${setAside} ${setAside === 1 ? 'apartado' : 'apartados'} por ${by.map(print.theirs).join(', ')}${standing(freeFindings)}`,
  'not acceptable': ({ freeFindings }) => `no aceptable${standing(freeFindings)}`,
  'not yet known': ({ freeFindings }) => `aún no se sabe${standing(freeFindings)}`,
}

/** What is said of the free findings that stand beside the requirements. */
const standing = (count = 0): string =>
  count === 0 ? '' : count === 1 ? '; sigue en pie 1 hallazgo libre' : `; siguen en pie ${count} hallazgos libres`
