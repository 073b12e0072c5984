import type { Dimension } from '../hardware/hardware-sheet.ts'
import { type Doubt, doubtAt, timesDoubt } from '../measurement/doubt.ts'
import { normalDistribution } from '../measurement/normal.ts'
import { exactValue, type Steps, stepsPer, type Unit, valueIn } from '../units/quantity-kinds.ts'
import type { DecisionRule, Measured, VerdictWord } from './verdict.ts'

export interface MeasuredVerdict {
  readonly verdict: Extract<VerdictWord, 'meets' | 'fails' | 'too close'>
  readonly because: Measured
}

/**
 * What a value with this doubt means against `limits`: it meets when it lies at least the guard band
 * inside every limit, fails when it lies more than that outside one, and is too close in between. With simple
 * acceptance the guard band is nothing.
 *
 * Value and limits are compared as whole steps of their kind, so that 27 3/4 in and 704.85 mm are the same.
 * @returns null when the sheet states neither a low nor a high limit
 * @source JCGM 106:2012, 8.2 (simple acceptance) and 8.3 (guard bands); U = 2u as in ILAC-G8:09/2019
 */
export function judgeMeasured(
  value: Steps,
  doubt: Doubt,
  limits: Dimension<Unit>,
  rule: DecisionRule,
  computed: boolean,
): MeasuredVerdict | null {
  const low = limitOf(limits.low, limits.unit)
  const high = limitOf(limits.high, limits.unit)
  if (low === null && high === null) return null
  const margin = Math.min(
    low === null ? Number.POSITIVE_INFINITY : value - low,
    high === null ? Number.POSITIVE_INFINITY : high - value,
  )
  const u = doubtAt(doubt, value)
  const guard = doubtAt(guardBand(doubt, rule), value)
  const verdict = margin >= guard ? 'meets' : margin < -guard ? 'fails' : 'too close'
  const { unit } = limits
  const per = stepsPer(unit)
  return {
    verdict,
    because: {
      kind: 'measured',
      value: valueIn(value, unit),
      unit,
      margin: valueIn(margin, unit),
      uncertainty: u / per,
      guard: guard / per,
      probability: probabilityWithin(value, u, low, high),
      computed,
      ...(doubt.relative === 0 ? {} : { doubt: { fixed: doubt.fixed / per, relative: doubt.relative } }),
    },
  }
}

/** How far inside a limit a value with this doubt has to lie to be accepted. */
export const guardBand = (doubt: Doubt, rule: DecisionRule): Doubt =>
  timesDoubt(doubt, rule.kind === 'simple' ? 0 : rule.multiple * 2)

const limitOf = (limit: number | 'notStated', unit: Unit): Steps | null =>
  limit === 'notStated' ? null : exactValue(limit, unit)

/**
 * Probability that the true value lies within the limits, for a normal distribution about the value and no earlier
 * knowledge; 1 or 0 when the uncertainty is nothing.
 * @source JCGM 106:2012, 7.2 and 7.4: p = Phi((value - low)/u) and Phi((high - value)/u); both limits, 7.4.2
 */
export function probabilityWithin(value: number, u: number, low: number | null, high: number | null): number {
  if (u === 0) return (low === null || value >= low) && (high === null || value <= high) ? 1 : 0
  const above = high === null ? 0 : normalDistribution((value - high) / u)
  const below = low === null ? 0 : normalDistribution((low - value) / u)
  return Math.max(0, 1 - above - below)
}
