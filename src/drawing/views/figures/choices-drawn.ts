import type { Requirement, RequirementChoice } from '../../../core/requirements/requirement.ts'

/**
 * The two choices that a figure draws. Of the wrong lengths of a panel it is the usual one: the panel of which every
 * yard has most, and next to one of those the piece that is nearest to it in length (common practice).
 */
export function choicesDrawn(look: Requirement['look']): {
  readonly right: RequirementChoice | null
  readonly wrong: RequirementChoice | null
} {
  if (look.kind !== 'choose') return { right: null, wrong: null }
  const right = look.choices.find((choice) => choice.right) ?? null
  const others = look.choices.filter((choice) => !choice.right)
  const length = right === null ? null : panelLengthOf(right)
  if (length === null) return { right, wrong: others[0] ?? null }
  const asWrong = (choice: RequirementChoice): number => {
    const other = panelLengthOf(choice)
    return other === null ? Number.MAX_VALUE : other === usualPanel ? 0 : Math.abs(other - length)
  }
  return { right, wrong: others.toSorted((a, b) => asWrong(a) - asWrong(b))[0] ?? null }
}

/** 12 ft 6 in, inches; common practice. */
const usualPanel = 150

/** Inches; null of what is no panel of a known length. */
export const panelLengthOf = ({ label }: RequirementChoice): number | null =>
  label.kind === 'choice of panel' ? label.inches : null
