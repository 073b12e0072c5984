import { mutated, pick, randomFrom } from './mutate.ts'
import type { Subject } from './subjects.ts'

/** Input number `n` of a subject: the same for the same seed, in whatever process it is made. */
export function inputOf({ name, seeds }: Pick<Subject, 'name' | 'seeds'>, seed: number, n: number): Uint8Array {
  const salt = [...name].reduce((sum, letter) => Math.imul(sum, 31) + letter.charCodeAt(0), seed)
  const random = randomFrom(salt + Math.imul(n, 0x9e3779b1))
  return mutated(pick(random, seeds), random)
}
