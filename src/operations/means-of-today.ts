import { solveLayout } from '../core/layout/solve-layout.ts'
import { type Shelf, shippedShelf } from './sheet-shelf.ts'

/** What a run is laid out by that is not pinned. */
export interface LayoutMeans {
  readonly shelf: Shelf
  readonly solve: typeof solveLayout
  /** Whether posts keep the usual clearance where the run states none; in runs of before they count as lines. */
  readonly keepsClear: boolean
}

export const meansOfToday: LayoutMeans = { shelf: shippedShelf, solve: solveLayout, keepsClear: true }
