import type { Dimension } from '../hardware/hardware-sheet.ts'
import { doubt, doubtAt } from '../measurement/doubt.ts'
import { type Instrument, instrumentOf, instrumentsReading, isNotStated } from '../measurement/instruments.ts'
import type { Requirement } from '../requirements/requirement.ts'
import { kindOf, type Steps, stepsPer, type Unit } from '../units/quantity-kinds.ts'
import { guardBand } from '../verdicts/judge-measured.ts'
import { defaultRule } from '../verdicts/judge-requirements.ts'

/**
 * What a careful person takes to measure this: a level for the height of rail, a string for a line, a tape for other lengths,
 * and the first at hand of another kind. Our judgement.
 */
export function usualInstrument(
  { topic }: Pick<Requirement, 'topic'>,
  limits: Dimension<Unit>,
  instruments: readonly Instrument[],
): Instrument {
  const kind = kindOf(limits.unit)
  if (kind === 'length') return instrumentOf(instruments, lengthTools[topic] ?? 'tape', kind)
  return instrumentsReading(instruments, kind).find((one) => !isNotStated(one)) ?? instrumentOf(instruments, null, kind)
}

const lengthTools: Readonly<Record<string, string>> = {
  'rail-height': 'tape-and-level',
  straightness: 'string-line',
  'flare-offset': 'string-line',
}

/** How far off a reading may be besides its rounding, in standard uncertainties of the instrument; our judgement. */
export const mostError = 2

/** What the instrument itself is off by for a value like this one (k = 1), without the rounding of the reading. */
export const ownDoubt = ({ unit, standardUncertainty, relativeUncertainty = 0 }: Instrument, near: Steps): Steps =>
  Math.hypot(standardUncertainty * stepsPer(unit), relativeUncertainty * near)

export const stepOf = ({ readTo, unit }: Instrument): Steps => readTo * stepsPer(unit)

/** The guard band of one reading of a value like this one. */
export function guardOf(instrument: Instrument, near: Steps): Steps {
  const guard = guardBand(doubt(instrument, { uncertainty: null, resolution: null }), defaultRule)
  return doubtAt(guard, near)
}

/** How far from its limit a value has to lie so that one reading decides it, as far off as a reading may be. */
export const sureOf = (instrument: Instrument, near: Steps): Steps =>
  Math.ceil(guardOf(instrument, near) + mostError * ownDoubt(instrument, near) + stepOf(instrument) / 2)
