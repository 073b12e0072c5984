import type { InputProblem } from '../../formats/input-problem.ts'
import { runFromValue } from '../../formats/run/run-file.ts'
import { editChoices } from '../../operations/edit-run.ts'
import type { LaidOut } from '../../operations/lay-out-run.ts'
import { placeOfRefusal } from '../../operations/place-of-refusal.ts'
import type { RequiredRun } from '../../operations/require-by.ts'
import type { Draft } from '../form/draft.ts'
import type { Offered } from './layouts-beside.tsx'
import type { Tried } from './use-layouts.ts'

/** The draft as a run, or what is wrong with it. */
export const runOf = (draft: Draft) => runFromValue('run', draft)

/** What can be chosen for a draft that was laid out; null where it was not, or what was laid out is wrong. */
export function offerOf(tried: Tried | null, before: Pick<RequiredRun, 'request' | 'model'> | null): Offered | null {
  if (tried === null || !tried.answer.ok || !tried.answer.value.ok) return null
  const run = runOf(tried.draft)
  if (!run.ok) return null
  const laid: LaidOut = tried.answer.value.value
  const { request, more, refused } = laid
  const choices = before === null ? { layouts: laid.layouts, asIs: null } : editChoices(before, laid)
  return { run: run.value, request, more, refused, ...choices }
}

/** Why no layout is lawful, each reason at the field that it follows from. */
export function refusalsAsProblems({ run, layouts, refused }: Offered): readonly InputProblem[] {
  if (layouts.length > 0) return []
  // How an end may not be joined is refused of every run; it is a reason only where there is no other.
  const joining = ['splice position', 'panel not of this unit']
  const others = refused.filter(({ kind }) => !joining.includes(kind))
  return (others.length > 0 ? others : refused).map((reason) => ({
    file: 'run',
    place: placeOfRefusal(reason, run),
    expected: { kind: 'lawful run' },
    found: { kind: 'no lawful run', reasons: [reason] },
  }))
}

/** The layout that is chosen until somebody chooses: the one that stands so far, where it still is lawful. */
export const firstChoice = ({ asIs }: Pick<Offered, 'asIs'>): number => asIs ?? 0
