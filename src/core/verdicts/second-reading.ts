import type { Dimension } from '../hardware/hardware-sheet.ts'
import { exactLength, type LengthUnit, type Nanometres, nanometresPer } from '../units/exact-length.ts'
import type { DecisionRule, Measured } from './verdict.ts'

/** What another reading would have to say to settle a value that is too close to its limit; numbers in `unit`. */
export interface SecondReading {
  readonly unit: LengthUnit
  /** Readings as doubtful as the first that meet, to the step of `readable`; null when no value is far enough inside. */
  readonly meets: { readonly from: number | null; readonly to: number | null } | null
  /** Readings as doubtful as the first that fail: these values and those beyond. */
  readonly fails: { readonly atMost: number | null; readonly atLeast: number | null }
  /**
   * The same value again, read more finely: with a standard uncertainty (k = 1) of at most `uncertainty` it would be
   * decided this way. Null for a value on the limit itself, which a finer reading of the same value cannot move.
   */
  readonly finer: { readonly uncertainty: number; readonly verdict: 'meets' | 'fails' } | null
}

/** Steps to which values are given back, so that they can be read on a tape: our judgement. */
export const readable: Readonly<Record<LengthUnit, Nanometres>> = {
  in: nanometresPer.in / 16,
  ft: nanometresPer.ft / 100,
  mm: nanometresPer.mm,
  m: nanometresPer.m / 1000,
}

/**
 * What a second reading would settle. It takes the place of the first, it is not averaged with it: the latest reading
 * governs.
 *
 * With the guard band g = multiple · 2u (JCGM 106:2012, 8.3) a value meets from low + g to high − g and fails below
 * low − g and above high + g; the value at hand is decided once g is no larger than its margin.
 * @returns null when simple acceptance leaves nothing too close
 */
export function secondReading(because: Measured, limits: Dimension, rule: DecisionRule): SecondReading | null {
  if (rule.kind === 'simple' || Math.abs(because.margin) > because.guard) return null
  const { unit } = limits
  const guard = because.guard * nanometresPer[unit]
  const step = readable[unit]
  const low = limits.low === 'notStated' ? null : exactLength(limits.low, unit)
  const high = limits.high === 'notStated' ? null : exactLength(limits.high, unit)
  const inUnit = (steps: number): number => (steps * step) / nanometresPer[unit]
  const from = low === null ? null : Math.ceil((low + guard) / step)
  const to = high === null ? null : Math.floor((high - guard) / step)
  return {
    unit,
    meets:
      from !== null && to !== null && from > to
        ? null
        : { from: from === null ? null : inUnit(from), to: to === null ? null : inUnit(to) },
    fails: {
      atMost: low === null ? null : inUnit(Math.ceil((low - guard) / step) - 1),
      atLeast: high === null ? null : inUnit(Math.floor((high + guard) / step) + 1),
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
