import { summaryRule } from '../../operations/summary-rule.ts'
import { listOf, type RunList } from './choose-runs.ts'
import type { DeviceStore } from './device-store.ts'
import type { Summaries } from './held-summaries.ts'
import { type ListWish, printWish } from './list-wish.ts'

export interface ShownList {
  /** What the list showed when it was opened last, as long as nothing was kept since; else null. */
  before(wish: ListWish, most: number): Promise<RunList | null>
  /** The list of what is at hand, kept for the next time. */
  of(summaries: Summaries, wish: ListWish, most: number): RunList
}

/**
 * The first screens of the list are kept as a whole: of thousands of runs they are there before the summaries are read.
 * Only of the list as it is opened, with nothing searched or chosen.
 */
export function shownList(store: DeviceStore): ShownList {
  /** What is kept already is not written again. */
  let keptUpTo = -1
  return {
    async before(wish, most) {
      if (printWish(wish) !== '') return null
      const kept = await store.listShown()
      // What fails here fails again where the summaries are read, and is said there.
      if (!kept.ok || kept.value?.rule !== summaryRule || kept.value.most !== most) return null
      keptUpTo = kept.value.upTo
      return kept.value.list
    },
    of({ upTo, runs }, wish, most) {
      const list = listOf(runs, wish, most)
      if (printWish(wish) === '' && upTo !== keptUpTo && runs.length > 0) {
        keptUpTo = upTo
        void store.set('listShown', { upTo, rule: summaryRule, most, list })
      }
      return list
    },
  }
}
