import { randomFrom } from './random.ts'

/**
 * By how many standard uncertainties one reading is off: the same for the same drill, place, instrument and attempt on every
 * device. The sum of twelve numbers from 0 to 1, less 6, has a standard deviation of 1 and is nearly normal, and needs only
 * whole numbers: a logarithm would not come out alike everywhere.
 *
 * @param attempt  from 0: somebody who measures again gets another reading
 */
export function readingError(seed: number, of: string, instrument: string, attempt: number): number {
  const random = randomFrom(seed, streamOf(`${of} ${instrument} ${attempt}`))
  let sum = 0
  for (let i = 0; i < 12; i++) sum += random.below(65536)
  return sum / 65536 - 6
}

/**
 * A number of a text whose characters are one byte each: FNV-1a, 32 bits.
 * @source G. Fowler, L. Noll, K.-P. Vo; draft-eastlake-fnv: offset basis 2166136261, prime 16777619; "foobar" is 0xbf9cf968
 * @example streamOf('foobar')  // 3214735720
 */
function streamOf(text: string): number {
  let hash = 2166136261
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 16777619) >>> 0
  return hash
}
