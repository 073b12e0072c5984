import type { Layout, RunEnd } from '../layout/layout.ts'

/** A chosen layout with what closes its ends. */
export interface Barrier {
  readonly layout: Layout
  readonly first: RunEnd
  readonly second: RunEnd
}
