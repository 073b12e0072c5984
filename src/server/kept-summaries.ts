import { setImmediate as nextTurn } from 'node:timers/promises'
import { err, ok, type Result } from '../core/result.ts'
import type { InputProblem } from '../formats/input-problem.ts'
import type { JudgedRun } from '../operations/judge-readings.ts'
import { summariseRun } from '../operations/summarise-run.ts'
import type { RunSummary } from '../protocol/runs.ts'
import type { Store } from '../store/store.ts'
import { problemTold, type Refusal, unavailable } from './refusal.ts'
import {
  isRead,
  judgeStored,
  readingsOfRuns,
  requiredRun,
  type StoredReadings,
  type StoredRun,
  storedRuns,
  type UnreadRun,
} from './stored-runs.ts'

/**
 * Summaries for lists, of every run in the order of storing. Only runs of which something was stored since are read and
 * judged anew, all of them in one go: a list of many asks the store no oftener than a list of one, and a long run holds
 * up no list twice.
 */
export function keptSummaries(store: Store): { readonly all: () => Promise<Result<readonly RunSummary[], Refusal>> } {
  /** By run, the `seq` of what was stored last of it; the largest of all is where to look on. */
  const newest = new Map<string, number>()
  let cursor = 0
  /** By run, its summary and what was stored last when it was made: of two lists at once the slower may be behind. */
  const kept = new Map<string, { readonly upTo: number; readonly summary: RunSummary }>()

  async function learnWhatIsNew(): Promise<Result<void, Refusal>> {
    const stored = await store.newestOfRuns({ kinds: ['run', 'reading'], after: cursor })
    if (!stored.ok) return err(unavailable(stored.error.reason))
    for (const { run, seq } of stored.value) {
      newest.set(run, Math.max(seq, newest.get(run) ?? 0))
      cursor = Math.max(cursor, seq)
    }
    return ok(undefined)
  }

  return {
    async all() {
      const learned = await learnWhatIsNew()
      if (!learned.ok) return learned
      const changed = new Map([...newest].filter(([run, seq]) => (kept.get(run)?.upTo ?? 0) < seq))
      const runs = await storedRuns(store, [...changed.keys()])
      if (!runs.ok) return runs
      const readings = await readingsOfRuns(store, runs.value.filter(isRead))
      if (!readings.ok) return readings
      for (const run of runs.value) {
        const summary = isRead(run) ? summaryOfRead(run, readings.value(run)) : summaryOfUnread(run)
        const upTo = changed.get(run.id)!
        if (upTo > (kept.get(run.id)?.upTo ?? 0)) kept.set(run.id, { upTo, summary })
        // Others are answered between two runs that had to be judged.
        await nextTurn()
      }
      return ok([...kept.values()].map(({ summary }) => summary))
    },
  }
}

const summaryOfUnread = ({ id, project, name, problems }: UnreadRun): RunSummary => ({
  ...{ id, project, name, route: null, judged: null, problems: problems.map(problemTold) },
})

function summaryOfRead(run: StoredRun, read: Result<StoredReadings, readonly InputProblem[]>): RunSummary {
  const { problems, ...summary } = summariseRun(run, judgedRun(run, read))
  return { ...summary, problems: problems.map(problemTold) }
}

function judgedRun(
  run: StoredRun,
  read: Result<StoredReadings, readonly InputProblem[]>,
): Result<JudgedRun, readonly InputProblem[]> {
  if (!read.ok) return read
  const required = requiredRun(run)
  return required.ok ? ok(judgeStored(run, required.value, read.value.readings)) : required
}
