import type { Place } from '../requirements/requirement.ts'
import type { Verdict } from './verdict.ts'

/** A requirement that a person took out of judging, as its sheet allows. */
export interface SetAside {
  readonly requirement: string
  readonly place: Place
  readonly by: string
  readonly because: string
}

/** All that was validly set aside, in the order of the verdicts. */
export const setAsideIn = (verdicts: readonly Verdict[]): readonly SetAside[] =>
  verdicts.flatMap(({ requirement, place, because }) =>
    because.kind === 'set aside' ? [{ requirement, place, by: because.by, because: because.because }] : [],
  )
