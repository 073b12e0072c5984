import type { Reading } from '../../core/measurement/reading.ts'
import type { Draft } from '../entry/draft.ts'

/** What somebody has entered at a place and not saved, as it is kept on this device and nowhere else. */
export interface Begun {
  readonly run: string
  /** What is read, and the requirement at which it was entered. */
  readonly of: string
  readonly requirement: string
  /** Id of the version of the run that its person saw. */
  readonly version: string
  /** ISO 8601, of the last key. */
  readonly at: string
  readonly draft: Draft
}

/** Whether saving `reading` saved what was begun: what was typed after it was pressed, or for another purpose, stays. */
export const isSavedBy = ({ at, draft }: Begun, reading: Pick<Reading, 'at' | 'corrects'>): boolean =>
  at <= reading.at && draft.corrects === reading.corrects
