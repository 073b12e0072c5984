import type { Dimension, Stated } from '../hardware/hardware-sheet.ts'
import { type Doubt, doubtfulAround } from '../measurement/doubt.ts'
import { exactValue, type Steps, type Unit } from '../units/quantity-kinds.ts'
import { guardBand } from './judge-measured.ts'
import type { DecisionRule } from './verdict.ts'

/** Values about a limit that are too close to it; at either edge a value is decided. */
export interface DoubtfulBand {
  readonly from: Steps
  readonly to: Steps
}

/**
 * Which values with this doubt are too close to the limits that are stated; nothing wide under simple acceptance. Below
 * the one about the low limit and above the one about the high limit they fail, between the two they meet.
 */
export function doubtfulBands(
  { low, high, unit }: Dimension<Unit>,
  doubt: Doubt,
  rule: DecisionRule,
): { readonly low: DoubtfulBand | null; readonly high: DoubtfulBand | null } {
  const guard = guardBand(doubt, rule)
  const around = (limit: Stated<number>): DoubtfulBand | null =>
    limit === 'notStated' ? null : doubtfulAround(exactValue(limit, unit), guard)
  return { low: around(low), high: around(high) }
}
