/** A sequence of numbers that looks like chance and is the same on every device for the same seed and stream. */
export interface Random {
  /** A whole number from 0 up to 2^32 - 1. */
  next(): number
  /** A whole number from 0 up to, not including, `bound`, each as likely. */
  below(bound: number): number
  pick<T>(list: readonly T[]): T
  /** The list in an order in which every order is as likely (Fisher and Yates, from the end down). */
  shuffled<T>(list: readonly T[]): readonly T[]
}

const word = (1n << 64n) - 1n
const multiplier = 6364136223846793005n

/**
 * The generator PCG32 (XSH RR 64/32) with the seeding and the bounded numbers of its reference program: whole numbers only,
 * so that no device rounds otherwise.
 *
 * @param seed    whole, from 0; its `initstate`
 * @param stream  whole, from 0; its `initseq`: another stream of one seed is another sequence
 * @source M. E. O'Neill, PCG: A Family of Simple Fast Space-Efficient Statistically Good Algorithms for Random Number
 *   Generation, HMC-CS-2014-0905, 2014, with the reference program pcg-c-basic
 */
export function randomFrom(seed: number, stream: number): Random {
  const increment = ((BigInt(stream) << 1n) | 1n) & word
  let state = (increment + BigInt(seed)) & word
  const next = (): number => {
    const old = state
    state = (old * multiplier + increment) & word
    const shifted = Number((((old >> 18n) ^ old) >> 27n) & 0xffffffffn)
    const turn = Number(old >> 59n)
    return ((shifted >>> turn) | (shifted << (-turn & 31))) >>> 0
  }
  next()
  const below = (bound: number): number => {
    // What would make the first remainders likelier is thrown away.
    const threshold = (2 ** 32 - bound) % bound
    for (;;) {
      const value = next()
      if (value >= threshold) return value % bound
    }
  }
  const shuffled = <T>(list: readonly T[]): readonly T[] => {
    const order = [...list]
    for (let left = order.length; left > 1; left--) {
      const chosen = below(left)
      const last = order[left - 1]!
      order[left - 1] = order[chosen]!
      order[chosen] = last
    }
    return order
  }
  return { next, below, pick: (list) => list[below(list.length)]!, shuffled }
}
