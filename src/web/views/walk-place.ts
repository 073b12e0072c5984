import type { WalkWish } from './walk-groups.ts'

/** Where somebody is in the list of a run. */
export interface WalkPlace extends WalkWish {
  /** Groups that a hand opened or folded, by id. */
  readonly folds: ReadonlyMap<string, boolean>
  /** How far the list was scrolled, pixels. */
  readonly top: number
  /** Id of the requirement that was open last. */
  readonly last: string | null
  /**
   * How far below the top of what scrolls its row was when it was pressed, pixels; null when it was opened
   * otherwise, or the list was scrolled since.
   */
  readonly lastAt: number | null
}

const atFirst: WalkPlace = { search: '', verdict: null, folds: new Map(), top: 0, last: null, lastAt: null }

/** As long as the page is open: somebody who comes back to a list finds it as it was left. */
const places = new Map<string, WalkPlace>()

export const walkPlace = (run: string): WalkPlace => places.get(run) ?? atFirst

export const keepWalkPlace = (run: string, changes: Partial<WalkPlace>): void => {
  places.set(run, { ...walkPlace(run), ...changes })
}
