import type { LongitudinalSheet } from '../hardware/hardware-sheet.ts'
import type { Layout, RunEnd } from '../layout/layout.ts'
import type { RunFlare } from '../layout/run-flare.ts'

/** A chosen layout with the sheets by which it is made. */
export interface Barrier {
  readonly layout: Layout
  readonly system: LongitudinalSheet
  readonly first: RunEnd
  readonly second: RunEnd
  readonly flare: RunFlare | null
}
