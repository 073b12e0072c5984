import { ok } from '../../core/result.ts'
import type { SummarisedRun } from '../../operations/summarise-run.ts'
import { summaryRule } from '../../operations/summary-rule.ts'
import type { DeviceStore } from './device-store.ts'
import type { SummaryRow } from './device-tables.ts'
import type { Answer } from './run-source.ts'
import { fromStore } from './store-trouble.ts'

interface Held {
  /** Of the store's answer that `runs` comes from. */
  readonly upTo: number
  /** By run, in the order of the store. */
  readonly runs: ReadonlyMap<string, { readonly upTo: number; readonly summary: SummarisedRun | null }>
  /** Kept of these is nothing that holds. */
  readonly old: readonly SummaryRow[]
}

export interface Summaries {
  /** The last entry, in the order of keeping, that they are made of. */
  readonly upTo: number
  /** Of every run of which something is here, in the order in which the runs were made. */
  readonly runs: readonly SummarisedRun[]
}

export interface HeldSummaries {
  summaries(): Answer<Summaries>
  /** Whether they were read since this was opened. */
  isHeld(): boolean
  /** Reads what is kept before somebody asks; what fails is said to who asks. */
  readAhead(): void
}

/**
 * What the list shows of each run, read once and held: thousands of runs are asked for again with each key of a search.
 * A run of which nothing was kept since has the very same summary as before.
 * @param summarise  makes one anew, and keeps it; null while the run's first version is not here
 */
export function heldSummaries(
  store: DeviceStore,
  summarise: (row: SummaryRow) => Answer<SummarisedRun | null>,
): HeldSummaries {
  let held: Held | null = null
  let reading: ReturnType<typeof read> | null = null

  async function read() {
    const before = held
    const kept = await store.summaries(before?.upTo)
    if (!kept.ok) return fromStore(kept.error)
    const { upTo, rows } = kept.value
    // No rows: nothing was kept since.
    if (rows === null) return ok(before!)
    const runs = new Map<string, { upTo: number; summary: SummarisedRun | null }>()
    const old: SummaryRow[] = []
    for (const row of rows) {
      const same = before?.runs.get(row.run)
      if (same?.upTo === row.upTo) runs.set(row.run, same)
      else if (row.made?.rule === summaryRule) runs.set(row.run, { upTo: row.upTo, summary: row.made.summary })
      else {
        // It keeps its place until it is made.
        runs.set(row.run, { upTo: -1, summary: null })
        old.push(row)
      }
    }
    held = { upTo, runs, old }
    return ok(held)
  }

  /** Who asks while it is read waits for that. */
  const readOnce = (): ReturnType<typeof read> => {
    reading ??= read().finally(() => {
      reading = null
    })
    return reading
  }

  return {
    isHeld: () => held !== null,
    readAhead: () => void readOnce(),
    async summaries() {
      const now = await readOnce()
      if (!now.ok) return now
      const { upTo, old } = now.value
      const runs = new Map(now.value.runs)
      for (const row of old) {
        const summary = await summarise(row)
        if (!summary.ok) return summary
        runs.set(row.run, { upTo: row.upTo, summary: summary.value })
      }
      if (held === now.value && old.length > 0) held = { upTo, runs, old: [] }
      return ok({ upTo, runs: [...runs.values()].flatMap(({ summary }) => summary ?? []) })
    },
  }
}
