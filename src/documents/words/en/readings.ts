import type { measurableTopics } from '../../../core/requirements/derived-topics.ts'

/** What was read of one thing, and what decides it. */
export const readings = {
  sideNotStated: (answer: string) => `${answer}, side not stated`,
  uncertainty: (size: string) => `u = ${size} (k = 1), stated`,
  confirmed: 'confirmed',
  notConfirmed: 'not confirmed',
  cannotSee: 'could not be seen',
  doesNotApply: (because: string) => `does not apply: ${because}`,
  readTo: (value: string, resolution: string) => `${value} (read to ${resolution})`,
  setAsideBy: (by: string) => `set aside by ${by}`,
  fromRunFile: 'from the run file',
  computedFrom: (places: string) => `computed from ${places}`,
  measuredAt: (what: (typeof measurableTopics)[number], posts: string) =>
    `${what === 'along' ? 'distance along the rail' : 'lateral offset'} at ${posts}`,
  confirmedOnSight: 'confirmed on sight',
}
