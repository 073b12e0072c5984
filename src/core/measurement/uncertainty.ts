import { type Nanometres, nanometresPer } from '../units/exact-length.ts'
import type { Instrument } from './instruments.ts'
import type { Answer, Reading } from './reading.ts'

/**
 * Standard uncertainty of a length reading, nm: what the reader stated, or else the instrument's together with the
 * rounding of the reading, a rectangular distribution of the smallest step read.
 * @source JCGM 100:2008 (GUM), 4.3.7 and F.2.2.1: resolution / sqrt(12)
 */
export function standardUncertainty(
  reading: Pick<Reading, 'uncertainty'>,
  answer: Extract<Answer, { kind: 'length' }>,
  instrument: Instrument,
): Nanometres {
  if (reading.uncertainty !== null) return reading.uncertainty.value * nanometresPer[reading.uncertainty.unit]
  const own = instrument.standardUncertainty * nanometresPer[instrument.unit]
  const step = answer.resolution ?? instrument.readTo * nanometresPer[instrument.unit]
  return Math.sqrt(own * own + (step * step) / 12)
}
