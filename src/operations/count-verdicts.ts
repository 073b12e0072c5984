import type { VerdictWord } from '../core/verdicts/verdict.ts'

/** How many of `judged` have each verdict. */
export function countVerdicts(
  judged: readonly { readonly verdict: VerdictWord }[],
): Readonly<Record<VerdictWord, number>> {
  const counts: Record<VerdictWord, number> = { fails: 0, 'too close': 0, unread: 0, meets: 0, 'does not apply': 0 }
  for (const { verdict } of judged) counts[verdict] += 1
  return counts
}
