import type { Place } from '../requirements/requirement.ts'
import type { Acceptance, Verdict } from './verdict.ts'

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

/** The acceptance in words: `acceptable except for 2 set aside by J. Okafor, M. Reyes`. */
export function describeAcceptance(acceptance: Acceptance): string {
  return acceptance.kind === 'acceptable except'
    ? `acceptable except for ${acceptance.setAside} set aside by ${acceptance.by.join(', ')}`
    : acceptance.kind
}
