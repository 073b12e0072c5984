/** What each of several people said of one thing, in the same order of people; null where one said nothing. */
export type Said = readonly (string | null)[]

/**
 * Agreement of two people beyond chance: (po - pe) / (1 - pe), on what both said something of.
 *
 * @returns null where nothing was said by both, or where both always said one and the same
 * @source J. Cohen, A coefficient of agreement for nominal scales, Educational and Psychological Measurement 20, 1960, 37-46
 */
export function cohenKappa(said: readonly Said[]): number | null {
  const both = said.filter((one) => one[0] !== null && one[1] !== null)
  if (both.length === 0) return null
  const same = both.filter(([a, b]) => a === b).length / both.length
  const share = (who: 0 | 1, word: string): number => both.filter((one) => one[who] === word).length / both.length
  const byChance = wordsOf(both).reduce((sum, word) => sum + share(0, word) * share(1, word), 0)
  return beyondChance(same, byChance)
}

/**
 * Agreement of as many people for each thing, on all that everybody said something of.
 *
 * @returns null where that is nothing, or where all always said one and the same
 * @source J. L. Fleiss, Measuring nominal scale agreement among many raters, Psychological Bulletin 76, 1971, 378-382
 */
export function fleissKappa(said: readonly Said[]): number | null {
  const whole = said.filter((one) => one.length > 1 && !one.includes(null))
  if (whole.length === 0) return null
  const words = wordsOf(whole)
  const count = (one: Said, word: string): number => one.filter((each) => each === word).length
  const all = whole.reduce((sum, one) => sum + one.length, 0)
  const within = whole.map((one) => {
    const pairs = words.reduce((sum, word) => sum + count(one, word) * (count(one, word) - 1), 0)
    return pairs / (one.length * (one.length - 1))
  })
  const same = within.reduce((sum, one) => sum + one, 0) / whole.length
  const byChance = words.reduce((sum, word) => sum + (whole.reduce((n, one) => n + count(one, word), 0) / all) ** 2, 0)
  return beyondChance(same, byChance)
}

const beyondChance = (same: number, byChance: number): number | null =>
  byChance < 1 ? (same - byChance) / (1 - byChance) : null

/**
 * Agreement of any number of people, of whom not everybody has to have said something: 1 - Do / De for nominal words, from
 * the coincidences of what was said of one thing.
 *
 * @returns null where no two said something of one thing, or where all always said one and the same
 * @source K. Krippendorff, Computing Krippendorff's alpha-reliability, 2011, sections A to C
 */
export function krippendorffAlpha(said: readonly Said[]): number | null {
  const paired = said.map((one) => one.filter((each) => each !== null)).filter((one) => one.length > 1)
  const words = wordsOf(paired)
  const total = paired.reduce((sum, one) => sum + one.length, 0)
  const sums = words.map((word) => paired.reduce((sum, one) => sum + one.filter((each) => each === word).length, 0))
  const alike = words.reduce((sum, word) => {
    return (
      sum +
      paired.reduce((inner, one) => {
        const n = one.filter((each) => each === word).length
        return inner + (n * (n - 1)) / (one.length - 1)
      }, 0)
    )
  }, 0)
  const byChance = sums.reduce((sum, n) => sum + n * (n - 1), 0)
  const all = total * (total - 1)
  // alpha = ((n - 1) sum of o_cc - sum of n_c (n_c - 1)) / (n (n - 1) - sum of n_c (n_c - 1))
  return all > byChance ? ((total - 1) * alike - byChance) / (all - byChance) : null
}

const wordsOf = (said: readonly Said[]): readonly string[] => [
  ...new Set(said.flat().filter((word): word is string => word !== null)),
]
