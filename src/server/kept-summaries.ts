import { setImmediate as nextTurn } from 'node:timers/promises'
import { ok, type Result } from '../core/result.ts'
import { judgeKnown } from '../operations/judge-readings.ts'
import type { Store } from '../store/store.ts'
import type { Refusal } from './refusal.ts'
import { type RunSummary, summaryOf, summaryOfUnread } from './run-summary.ts'
import { requiredRun, type StoredRun, storedReadings, type UnreadRun } from './stored-runs.ts'

/** Summaries for lists. A run is judged anew when something was read at it since, so that a long one holds up no list twice. */
export function keptSummaries(store: Store): {
  readonly of: (run: StoredRun | UnreadRun) => Promise<Result<RunSummary, Refusal>>
} {
  const kept = new Map<string, { readonly cursor: number; readonly summary: RunSummary }>()
  return {
    async of(run) {
      if ('problems' in run) return ok(summaryOfUnread(run))
      const read = await storedReadings(store, run)
      if (!read.ok)
        return read.error.status === 400 ? ok(summaryOf(run, { ok: false, error: read.error.problems })) : read
      const { cursor, readings } = read.value
      const known = kept.get(run.id)
      if (known?.cursor === cursor) return ok(known.summary)
      const required = requiredRun(run)
      const summary = summaryOf(run, required.ok ? ok(judgeKnown(required.value, readings)) : required)
      kept.set(run.id, { cursor, summary })
      // Others are answered between two runs that had to be judged.
      await nextTurn()
      return ok(summary)
    },
  }
}
