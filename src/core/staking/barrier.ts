import type { Layout, RunEnd } from '../layout/layout.ts'
import type { RunFlare } from '../layout/run-flare.ts'

/** A chosen layout with what closes its ends. */
export interface Barrier {
  readonly layout: Layout
  readonly first: RunEnd
  readonly second: RunEnd
  readonly flare: RunFlare | null
}
