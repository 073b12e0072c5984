import { setImmediate as nextTurn } from 'node:timers/promises'
import { err, ok, type Result } from '../core/result.ts'
import { groupBy } from '../documents/group-by.ts'
import { inLogOrder } from '../formats/entry/log-order.ts'
import type { InputProblem } from '../formats/input-problem.ts'
import type { JudgedRun } from '../operations/judge-readings.ts'
import { type ArchiveEntry, type SummarisedRun, summariseRun, summariseUnread } from '../operations/summarise-run.ts'
import { summaryRule } from '../operations/summary-rule.ts'
import type { RunSummary } from '../protocol/runs.ts'
import type { Store } from '../store/store.ts'
import type { KeptSummaries, NewSummary } from '../store/summaries.ts'
import { problemTold, type Refusal, unavailable } from './refusal.ts'
import {
  everyEntry,
  isRead,
  judgeStored,
  readingsOfRuns,
  requiredRun,
  type StoredReadings,
  type StoredRun,
  storedRuns,
} from './stored-runs.ts'

/** Runs judged between two looks at what is kept: what was made is on the disk before more is read. */
const runsAtOnce = 200

/**
 * The summaries of all runs as JSON texts with commas between, in the order of storing. Only runs of which something was
 * stored since, or whose summary was made by another rule, are read and judged anew, and theirs is kept: a list in which
 * nothing changed is one question to the store, whatever its length.
 */
export async function listRuns(store: Store): Promise<Result<string, Refusal>> {
  const kept = await store.summaries(summaryRule)
  if (!kept.ok) return err(unavailable(kept.error.reason))
  const { old } = kept.value
  if (old.length === 0) return ok(kept.value.list)
  const made = new Map<string, string>()
  for (let start = 0; start < old.length; start += runsAtOnce) {
    const summaries = await summarise(store, old.slice(start, start + runsAtOnce))
    if (!summaries.ok) return summaries
    const keeping = await store.keepSummaries(summaries.value)
    if (!keeping.ok) return err(unavailable(keeping.error.reason))
    for (const { run, content } of summaries.value) made.set(run, content)
  }
  const all = await store.summaries(summaryRule)
  if (!all.ok) return err(unavailable(all.error.reason))
  // Where something was stored meanwhile, what was made just now was true as it was made.
  const overtaken = all.value.old.map(({ run }) => made.get(run) ?? noRun).filter((content) => content !== noRun)
  return ok([...(all.value.list === '' ? [] : [all.value.list]), ...overtaken].join(','))
}

/** Of what is recorded at a run that is not stored itself. */
const noRun = 'null'

async function summarise(store: Store, old: KeptSummaries['old']): Promise<Result<readonly NewSummary[], Refusal>> {
  const ids = old.map(({ run }) => run)
  const runs = await storedRuns(store, ids)
  if (!runs.ok) return runs
  const readings = await readingsOfRuns(store, runs.value.filter(isRead))
  if (!readings.ok) return readings
  const archives = await everyEntry(store, { runs: ids, kinds: ['archive'] })
  if (!archives.ok) return archives
  const archiveOf = new Map(
    groupBy(archives.value, ({ run }) => run ?? '').map((all) => [all[0]!.run, inLogOrder(all)]),
  )
  const contents = new Map<string, string>()
  for (const run of runs.value) {
    const archive = archiveOf.get(run.id) ?? []
    const summary = isRead(run)
      ? summaryOfRead(run, archive, readings.value(run))
      : summariseUnread({ ...run, archive }, run.problems)
    contents.set(run.id, JSON.stringify(summaryTold(summary)))
    // Others are answered between two runs that had to be judged.
    await nextTurn()
  }
  return ok(
    old.map(({ run, newest }) => ({ run, upTo: newest, rule: summaryRule, content: contents.get(run) ?? noRun })),
  )
}

const summaryTold = ({ problems, ...summary }: SummarisedRun): RunSummary => ({
  ...summary,
  problems: problems.map(problemTold),
})

function summaryOfRead(
  run: StoredRun,
  archive: readonly ArchiveEntry[],
  read: Result<StoredReadings, readonly InputProblem[]>,
): SummarisedRun {
  return summariseRun({ ...run, archive }, judgedRun(run, read))
}

function judgedRun(
  run: StoredRun,
  read: Result<StoredReadings, readonly InputProblem[]>,
): Result<JudgedRun, readonly InputProblem[]> {
  if (!read.ok) return read
  const required = requiredRun(run)
  return required.ok ? ok(judgeStored(run, required.value, read.value)) : required
}
