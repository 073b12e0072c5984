import type { Reading } from '../../core/measurement/reading.ts'

/** What was saved last. */
export interface Saved {
  /** Empty once nothing is said of it any more. */
  readonly words: string
  /** Milliseconds of the page's own clock. */
  readonly since: number
  /** What can be opened again, and the requirement at which it was entered; null where nothing can. */
  readonly undoable: { readonly reading: Reading; readonly requirement: string } | null
}

export const nothingSaved: Saved = { words: '', since: 0, undoable: null }
