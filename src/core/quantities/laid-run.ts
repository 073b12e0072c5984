import type { LongitudinalSheet } from '../hardware/hardware-sheet.ts'
import type { Barrier } from '../staking/barrier.ts'

/** A run as it is laid out, with the sheet of its system. */
export interface LaidRun extends Barrier {
  readonly system: LongitudinalSheet
}
