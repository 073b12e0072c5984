import type { Answer, Side } from '../../core/measurement/reading.ts'
import type { RequirementLook } from '../../core/requirements/requirement.ts'
import { err, ok, type Result } from '../../core/result.ts'
import { kindOf, type Unit } from '../../core/units/quantity-kinds.ts'
import type { ValueProblem } from '../../core/units/value-problem.ts'
import { parseValue } from '../../core/units/value-text.ts'

/** What somebody has entered and not yet saved. */
export interface Draft {
  readonly mode: 'answer' | 'cannot see' | 'does not apply'
  readonly text: string
  /** Of an offset: nothing is chosen for anybody. */
  readonly side: Side | null
  readonly choice: string | null
  readonly yes: boolean | null
  readonly because: string
  /** What is said beside the answer. */
  readonly note: string
  /** Id of the reading that this one corrects. */
  readonly corrects: string | null
}

export const emptyDraft: Draft = {
  mode: 'answer',
  text: '',
  side: null,
  choice: null,
  yes: null,
  because: '',
  note: '',
  corrects: null,
}

export const isEmpty = ({ mode, text, side, choice, yes, because, note, corrects }: Draft): boolean =>
  mode === 'answer' &&
  text === '' &&
  side === null &&
  choice === null &&
  yes === null &&
  because === '' &&
  note === '' &&
  corrects === null

export type DraftProblem =
  | { readonly kind: 'nothing given' }
  | { readonly kind: 'no reason given' }
  | { readonly kind: 'no value'; readonly problem: ValueProblem }
  | { readonly kind: 'another quantity' }
  | { readonly kind: 'no side given' }
  | { readonly kind: 'offset below zero' }

/**
 * The answer that the draft gives; a number without a unit is in `bareUnit`, whose kind of quantity is asked for.
 * @param isSided  whether it is an offset, which is on one side of its line or on the other
 */
export function draftAnswer(
  draft: Draft,
  kind: RequirementLook['kind'],
  bareUnit: Unit,
  isSided: boolean,
): Result<Answer, DraftProblem> {
  if (draft.mode === 'cannot see') return ok({ kind: 'cannot see' })
  if (draft.mode === 'does not apply') {
    const because = draft.because.trim()
    return because === '' ? err({ kind: 'no reason given' }) : ok({ kind: 'does not apply', because })
  }
  if (kind === 'choose' && draft.choice !== null) return ok({ kind: 'choice', choice: draft.choice })
  if (kind === 'confirm' && draft.yes !== null) return ok({ kind: 'confirmed', yes: draft.yes })
  if (kind !== 'measure' || draft.text.trim() === '') return err({ kind: 'nothing given' })
  const parsed = parseValue(draft.text, bareUnit)
  if (!parsed.ok) return err({ kind: 'no value', problem: parsed.error })
  const { value, unit } = parsed.value
  if (kindOf(unit) !== kindOf(bareUnit)) return err({ kind: 'another quantity' })
  const answer = { kind: 'measured', value, unit, resolution: null } as const
  if (!isSided || value === 0) return ok(answer)
  if (value < 0) return err({ kind: 'offset below zero' })
  return draft.side === null ? err({ kind: 'no side given' }) : ok({ ...answer, side: draft.side })
}
