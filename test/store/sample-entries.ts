import { fail } from 'node:assert/strict'
import type { EntryAnswer, NewEntry } from '../../src/store/entry.ts'
import type { Store } from '../../src/store/store.ts'

/** A reading by this id in this project; what `changes` names is otherwise. */
export function reading(project: string, id: string, changes: Partial<NewEntry> = {}): NewEntry {
  return {
    id: `${project}/${id}`,
    project,
    run: 'run-1',
    kind: 'reading',
    schemaVersion: 1,
    author: 'R. Moreno',
    device: 'tablet-7',
    capturedAt: '2026-05-04T13:20:00.250-05:00',
    supersedes: null,
    body: { requirement: 'rail-height@12+37.50', value: 27.75, unit: 'in' },
    ...changes,
  }
}

/** The answers to `entries`; the test fails when the store is not available. */
export async function append(store: Store, entries: readonly NewEntry[]): Promise<readonly EntryAnswer[]> {
  return answered(await store.append(entries))
}

/** The value of an answer that has to be one. */
export function answered<T, E>(result: { ok: true; value: T } | { ok: false; error: E }): T {
  if (!result.ok) fail(`expected an answer, got ${JSON.stringify(result.error)}`)
  return result.value
}
