import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Result } from '../src/core/result.ts'
import { summaryRule } from '../src/operations/summary-rule.ts'
import type { RunSummary } from '../src/protocol/runs.ts'
import { listRuns } from '../src/server/list-runs.ts'
import { openStore } from '../src/store/store.ts'
import { type BenchRow, figure, median } from './measure.ts'

const runs = 10_000
const times = 15

/** How long a server takes to answer with the list of many runs, in the embedded database, where nothing changed. */
export async function benchRunList(): Promise<readonly BenchRow[]> {
  const folder = await mkdtemp(join(tmpdir(), 'lapwise-bench-'))
  const store = must(await openStore({ kind: 'embedded', folder }))
  try {
    must(await store.createProject({ id: 'own', name: 'Own runs' }))
    const envelope = { project: 'own', kind: 'run', schemaVersion: 1, author: 'bench', device: 'bench' }
    for (let start = 0; start < runs; start += 1000) {
      const entries = Array.from({ length: 1000 }, (_, i) => `run-${start + i}`).map((id) => ({
        ...{ ...envelope, id, run: id, capturedAt: '2026-05-04T15:30:00.000Z', supersedes: null, body: {} },
      }))
      must(await store.append(entries))
    }
    const kept = must(await store.summaries(summaryRule))
    const made = kept.old.map(({ run, newest: upTo }) => ({
      ...{ run, upTo, rule: summaryRule, content: JSON.stringify(summaryOf(run)) },
    }))
    must(await store.keepSummaries(made))
    const taken: number[] = []
    let bytes = 0
    for (let i = 0; i < times; i++) {
      const began = performance.now()
      const list = must(await listRuns(store))
      bytes = `{"runs":[${list}]}`.length
      taken.push(performance.now() - began)
    }
    return [
      {
        what: `list of ${figure(runs)} runs on the server, ${figure(bytes / 1e6)} MB`,
        figure: `${figure(median(taken))} ms`,
        aim: 'under 100 ms',
      },
    ]
  } finally {
    await store.close()
    await rm(folder, { recursive: true })
  }
}

const summaryOf = (id: string): RunSummary => ({
  ...{ id, project: 'own', name: `Culvert ${id}, right side`, route: 'County Road 14', station: '208+40' },
  judged: {
    acceptance: { kind: 'not acceptable' },
    counts: { fails: 9, 'too close': 0, unread: 0, meets: 146, 'does not apply': 0 },
    findings: 4,
    face: { bends: { first: 0.2, second: null }, stretches: '0333003303330330' },
  },
  ...{ lastVisit: { at: '2026-05-12T10:05:00-06:00', by: 'R. Quist' }, archived: null, problems: [] },
})

function must<T>(answer: Result<T, unknown>): T {
  if (!answer.ok) throw new Error(JSON.stringify(answer.error))
  return answer.value
}
