import type { Requirement, RequirementChoice } from '../../core/requirements/requirement.ts'
import { choicesDrawn } from '../../drawing/views/figures/choices-drawn.ts'

/**
 * The right choice and its usual wrong twin, then the rest as the sheet has them. The two stand in the order of their own
 * names, which know nothing of right and wrong: the right one is not always first, and what is the same stands at the
 * same side at each place, also where it is wrong.
 */
export function orderedChoices(look: Requirement['look']): {
  readonly pair: readonly RequirementChoice[]
  readonly others: readonly RequirementChoice[]
} {
  if (look.kind !== 'choose') return { pair: [], others: [] }
  const { right, wrong } = choicesDrawn(look)
  const pair = [right, wrong].filter((one) => one !== null).sort((a, b) => (a.id < b.id ? -1 : 1))
  return { pair, others: look.choices.filter((one) => !pair.includes(one)) }
}
