import type { Random } from './random.ts'

/** Of one kind of fault: how many were there so far, and how many of them were found. */
export interface KindRecord {
  readonly kind: string
  readonly there: number
  readonly found: number
}

/** Out of how many drills the next one is chosen. Our judgement. */
const candidates = 24

/**
 * The seed of the next drill, weighted to what was missed. Rule: draw 24 seeds; of each add up, over the faults of its drill,
 * the chance that a fault of that kind is missed, (misses + 1) / (times + 2), which is a half for a kind never seen; take the
 * drill with the largest sum, the earlier of two alike. The drill stays one that its number alone gives.
 *
 * @param kindsOf  the kinds of faults in the drill of a seed
 * @param seeds    seeds lie from 0 up to, not including, this
 * @source (misses + 1) / (times + 2): Laplace's rule of succession; the rest is our judgement
 */
export function nextSeed(
  records: readonly KindRecord[],
  kindsOf: (seed: number) => readonly string[],
  seeds: number,
  random: Random,
): number {
  const known = new Map(records.map((one) => [one.kind, one]))
  const chance = (kind: string): number => {
    const { there, found } = known.get(kind) ?? { there: 0, found: 0 }
    return (there - found + 1) / (there + 2)
  }
  const worth = (seed: number): number => kindsOf(seed).reduce((sum, kind) => sum + chance(kind), 0)
  let best = { seed: random.below(seeds), worth: Number.NEGATIVE_INFINITY }
  for (let i = 0; i < candidates; i++) {
    const seed = random.below(seeds)
    const value = worth(seed)
    if (value > best.worth) best = { seed, worth: value }
  }
  return best.seed
}
