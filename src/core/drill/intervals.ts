/** A share of times with where it may lie. */
export interface Rate {
  readonly times: number
  readonly of: number
  /** `times` by `of`; null of nothing. */
  readonly rate: number | null
  readonly low: number
  readonly high: number
}

/** Two-sided 95 %. */
export const usualZ = 1.959963984540054

/**
 * A share with its score interval, which keeps its width where every time or none came out so.
 *
 * @source E. B. Wilson, Probable inference, the law of succession, and statistical inference, J. Am. Stat. Assoc. 22, 1927;
 *   method 3 in R. G. Newcombe, Statistics in Medicine 17, 1998, 857-872
 */
export function rateOf(times: number, of: number, z: number = usualZ): Rate {
  if (of === 0) return { times, of, rate: null, low: 0, high: 1 }
  const p = times / of
  const middle = (p + (z * z) / (2 * of)) / (1 + (z * z) / of)
  const half = (z / (1 + (z * z) / of)) * Math.sqrt((p * (1 - p)) / of + (z * z) / (4 * of * of))
  return { times, of, rate: p, low: times === 0 ? 0 : middle - half, high: times === of ? 1 : middle + half }
}

/**
 * How many times one has to look so that the interval of a share about like this one is no wider; the least whole number.
 *
 * @param width  of the interval, above 0 and below 1
 * @example timesForWidth(0.9, 0.2)  // 37
 */
export function timesForWidth(rate: number, width: number, z: number = usualZ): number {
  const widthAt = (n: number): number => {
    const { low, high } = rateOf(rate * n, n, z)
    return high - low
  }
  let n = 1
  while (widthAt(n) > width) n++
  return n
}
