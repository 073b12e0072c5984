import { randomFrom } from './random.ts'
import { textNumber } from './text-number.ts'

/**
 * By how many standard uncertainties one reading is off: the same for the same drill, place, instrument and attempt on every
 * device. The sum of twelve numbers from 0 to 1, less 6, has a standard deviation of 1 and is nearly normal, and needs only
 * whole numbers: a logarithm would not come out alike everywhere.
 *
 * @param attempt  from 0: somebody who measures again gets another reading
 */
export function readingError(seed: number, of: string, instrument: string, attempt: number): number {
  const random = randomFrom(seed, textNumber(`${of} ${instrument} ${attempt}`))
  let sum = 0
  for (let i = 0; i < 12; i++) sum += random.below(65536)
  return sum / 65536 - 6
}
