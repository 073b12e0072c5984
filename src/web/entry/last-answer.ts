import type { Answer, Reading } from '../../core/measurement/reading.ts'
import type { Requirement } from '../../core/requirements/requirement.ts'
import { kindOf } from '../../core/units/quantity-kinds.ts'
import { valueToText } from '../../formats/written-value.ts'
import type { Draft } from './draft.ts'

/**
 * The answer last given to a requirement of the same topic at another place that can be given here too: a length where
 * one is measured, or a choice that is on offer.
 */
export function lastAnswer(
  requirement: Requirement,
  requirements: ReadonlyMap<string, Requirement>,
  readings: readonly Reading[],
): Answer | null {
  for (let i = readings.length - 1; i >= 0; i--) {
    const { of, answer } = readings[i]!
    if (of === requirement.id || requirements.get(of)?.topic !== requirement.topic) continue
    if (fits(answer, requirement)) return answer
  }
  return null
}

function fits(answer: Answer, { look }: Requirement): boolean {
  switch (answer.kind) {
    case 'measured':
      return look.kind === 'measure' && kindOf(answer.unit) === kindOf(look.limits.unit)
    case 'choice':
      return look.kind === 'choose' && look.choices.some(({ id }) => id === answer.choice)
    case 'confirmed':
      return look.kind === 'confirm'
    case 'cannot see':
    case 'does not apply':
      return false
  }
}

/** What has to be entered to give that answer. */
export function draftOf(answer: Answer): Partial<Draft> {
  switch (answer.kind) {
    case 'measured': {
      const written = valueToText(answer) as { value: string | number; unit?: string }
      const text =
        typeof written.value === 'string' || answer.unit === 'count'
          ? `${written.value}`
          : `${written.value} ${written.unit}`
      return { mode: 'answer', text, side: answer.side ?? null }
    }
    case 'choice':
      return { mode: 'answer', choice: answer.choice }
    case 'confirmed':
      return { mode: 'answer', yes: answer.yes }
    case 'cannot see':
      return { mode: 'cannot see' }
    case 'does not apply':
      return { mode: 'does not apply', because: answer.because }
  }
}
