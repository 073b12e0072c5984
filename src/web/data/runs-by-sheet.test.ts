import { expect, test } from 'vitest'
import type { SummarisedRun } from '../../operations/summarise-run.ts'
import type { DeviceEntry } from './merge-entries.ts'
import { runsBySheet } from './runs-by-sheet.ts'

const entry = (id: string, run: string, body: unknown, over: Partial<DeviceEntry> = {}): DeviceEntry =>
  ({ id, run, kind: 'run', schemaVersion: 2, supersedes: null, state: 'sent', body, ...over }) as unknown as DeviceEntry
const holding = (...sheets: readonly [string, string][]) => ({
  sheets: sheets.map(([id, version]) => ({ id, version })),
})
const summary = (id: string, archived: SummarisedRun['archived'] = null): SummarisedRun =>
  ({ id, name: `run ${id}`, judged: null, archived }) as unknown as SummarisedRun

test('a run counts by the sheets of its version in force, with what of it was not sent', () => {
  const entries = [
    entry('a', 'a', holding(['anchor', '1'])),
    entry('a2', 'a', holding(['anchor', '2']), { supersedes: 'a' }),
    entry('a3', 'a', {}, { kind: 'reading', state: 'here' }),
    // It held the sheet once.
    entry('b', 'b', holding(['anchor', '1'])),
    entry('b2', 'b', holding(['terminal', '1']), { supersedes: 'b', state: 'here' }),
    entry('c', 'c', holding(['terminal', '1'], ['anchor', '1'])),
  ]
  const away = { at: '2026-05-01', by: 'R. Quist', reason: 'taken down' }
  expect(runsBySheet('anchor', entries, [summary('a'), summary('b'), summary('c', away)])).toEqual([
    { id: 'a', name: 'run a', version: '2', acceptance: null, isArchived: false, unsent: 1 },
    { id: 'c', name: 'run c', version: '1', acceptance: null, isArchived: true, unsent: 0 },
  ])
})
