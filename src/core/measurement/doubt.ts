import { kindOf, type Steps, stepsPer } from '../units/quantity-kinds.ts'
import { type Instrument, instrumentOf } from './instruments.ts'
import type { MeasuredAnswer, Reading } from './reading.ts'

/** A standard uncertainty, or a multiple of one: a part that is the same for every value, and one that grows with it. */
export interface Doubt {
  readonly fixed: Steps
  /** As a fraction of the value. */
  readonly relative: number
}

export const noDoubt: Doubt = { fixed: 0, relative: 0 }

/**
 * Standard uncertainty (k = 1) of a reading: what the reader stated, or else the instrument's together with the
 * rounding of the reading, a rectangular distribution of the smallest step read. What is counted is not rounded.
 * @source JCGM 100:2008 (GUM), 4.3.7 and F.2.2.1: resolution / sqrt(12)
 */
export function doubt(
  instrument: Instrument,
  { uncertainty, resolution }: Pick<Reading, 'uncertainty'> & Pick<MeasuredAnswer, 'resolution'>,
): Doubt {
  if (uncertainty !== null) return { fixed: uncertainty.value * stepsPer(uncertainty.unit), relative: 0 }
  const { unit, standardUncertainty, readTo, relativeUncertainty: relative = 0 } = instrument
  const own = standardUncertainty * stepsPer(unit)
  const step = kindOf(unit) === 'count' ? 0 : (resolution ?? readTo * stepsPer(unit))
  return { fixed: Math.sqrt(own * own + (step * step) / 12), relative }
}

/** The doubt of a reading with this answer, taken with one of `instruments`. */
export const doubtOfReading = (
  { unit, resolution }: MeasuredAnswer,
  { instrument, uncertainty }: Pick<Reading, 'instrument' | 'uncertainty'>,
  instruments: readonly Instrument[],
): Doubt => doubt(instrumentOf(instruments, instrument, kindOf(unit)), { uncertainty, resolution })

/** What a doubt comes to at `value`: its two parts are independent (JCGM 100:2008, 5.1.2). */
export const doubtAt = ({ fixed, relative }: Doubt, value: Steps): Steps =>
  relative === 0 ? fixed : Math.hypot(fixed, relative * value)

export const timesDoubt = ({ fixed, relative }: Doubt, factor: number): Doubt => ({
  fixed: factor * fixed,
  relative: factor * relative,
})

/**
 * The values that lie exactly what is doubtful at them below and above `limit`, v + g(v) = limit and v - g(v) = limit;
 * infinite where the doubt grows faster than the value.
 */
export function doubtfulAround(limit: Steps, { fixed, relative }: Doubt): { readonly from: Steps; readonly to: Steps } {
  if (relative === 0) return { from: limit - fixed, to: limit + fixed }
  if (relative >= 1) return { from: Number.NEGATIVE_INFINITY, to: Number.POSITIVE_INFINITY }
  // (v - limit)² = fixed² + relative² v², both roots.
  const rest = 1 - relative * relative
  const root = Math.sqrt(limit * limit * relative * relative + fixed * fixed * rest)
  return { from: (limit - root) / rest, to: (limit + root) / rest }
}
