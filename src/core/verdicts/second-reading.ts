import type { Dimension } from '../hardware/hardware-sheet.ts'
import { type Steps, stepsPer, type Unit, valueIn } from '../units/quantity-kinds.ts'
import { doubtfulBands } from './doubtful-bands.ts'
import { stepAbove, stepAfter, stepBefore, stepBelow } from './readable.ts'
import type { DecisionRule, Measured } from './verdict.ts'

/** What another reading would have to say to settle a value that is too close to its limit; numbers in `unit`. */
export interface SecondReading {
  readonly unit: Unit
  /** The value at hand. */
  readonly value: number
  /** Readings as doubtful as the first that meet, to a step that can be read; null when no value is far enough inside. */
  readonly meets: { readonly from: number | null; readonly to: number | null } | null
  /** Readings as doubtful as the first that fail: these values and those beyond. */
  readonly fails: { readonly atMost: number | null; readonly atLeast: number | null }
  /**
   * The same value again, read more finely: with a standard uncertainty (k = 1) of at most `uncertainty` it would be
   * decided this way. Null for a value on the limit itself, which a finer reading of the same value cannot move.
   */
  readonly finer: { readonly uncertainty: number; readonly verdict: 'meets' | 'fails' } | null
}

/**
 * What a second reading would settle. It takes the place of the first, it is not averaged with it: the latest reading
 * governs.
 *
 * With the guard band g = multiple · 2u (JCGM 106:2012, 8.3) a value meets from low + g to high − g and fails below
 * low − g and above high + g, with g that of the value itself where it grows with it; the value at hand is decided once g is no larger than its margin.
 * @returns null when simple acceptance leaves nothing too close
 */
export function secondReading(because: Measured, limits: Dimension<Unit>, rule: DecisionRule): SecondReading | null {
  if (rule.kind === 'simple' || Math.abs(because.margin) > because.guard) return null
  const { unit } = limits
  const { fixed, relative } = because.doubt ?? { fixed: because.uncertainty, relative: 0 }
  const { low, high } = doubtfulBands(limits, { fixed: fixed * stepsPer(unit), relative }, rule)
  const inUnit = (steps: Steps): number | null => (Number.isFinite(steps) ? valueIn(steps, unit) : null)
  const from = low === null ? null : stepAbove(low.to, unit)
  const to = high === null ? null : stepBelow(high.from, unit)
  return {
    unit,
    value: because.value,
    meets:
      (from ?? Number.NEGATIVE_INFINITY) > (to ?? Number.POSITIVE_INFINITY) || from === Number.POSITIVE_INFINITY
        ? null
        : { from: from === null ? null : inUnit(from), to: to === null ? null : inUnit(to) },
    fails: {
      atMost: low === null ? null : inUnit(stepBefore(low.from, unit)),
      atLeast: high === null ? null : inUnit(stepAfter(high.to, unit)),
    },
    finer:
      because.margin === 0
        ? null
        : {
            uncertainty: Math.abs(because.margin) / (2 * rule.multiple),
            verdict: because.margin > 0 ? 'meets' : 'fails',
          },
  }
}
