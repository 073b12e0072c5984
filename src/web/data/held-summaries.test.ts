import { beforeEach, describe, expect, test } from 'vitest'
import { err, ok } from '../../core/result.ts'
import type { SummarisedRun } from '../../operations/summarise-run.ts'
import { summaryRule } from '../../operations/summary-rule.ts'
import type { DeviceStore } from './device-store.ts'
import type { SummaryRow } from './device-tables.ts'
import { heldSummaries } from './held-summaries.ts'

const named = (run: string, name = run) => ({ id: run, name }) as SummarisedRun
const made = (run: string, upTo: number, summary: SummarisedRun | null = named(run)): SummaryRow => ({
  ...{ run, upTo, made: { rule: summaryRule, summary } },
})

let upTo: number
let rows: SummaryRow[]
let reads: number
let summarised: string[]
const store = {
  async summaries(seen?: number) {
    if (seen !== upTo) reads += 1
    return ok({ upTo, rows: seen === upTo ? null : rows })
  },
} as unknown as DeviceStore
const held = (fails = false) =>
  heldSummaries(store, async ({ run }) => {
    summarised.push(run)
    return fails ? err({ kind: 'fault', message: 'cannot be read', problems: [] }) : ok(named(run, `${run} anew`))
  })
const namesOf = async (list: ReturnType<typeof held>) => {
  const answer = await list.summaries()
  return answer.ok ? answer.value.runs.map(({ name }) => name) : answer.error.message
}

beforeEach(() => {
  upTo = 3
  rows = [made('a', 1), { run: 'b', upTo: 2, made: null }, made('c', 3)]
  reads = 0
  summarised = []
})

describe('the summaries of a device', () => {
  test('are read once, and what is old is made once, in its place', async () => {
    const list = held()
    list.readAhead()
    expect(await namesOf(list)).toEqual(['a', 'b anew', 'c'])
    expect(await namesOf(list)).toEqual(['a', 'b anew', 'c'])
    expect({ reads, summarised }).toEqual({ reads: 1, summarised: ['b'] })
  })

  test('are the same for a run of which nothing was kept since, and made anew for one of which something was', async () => {
    const list = held()
    const before = await list.summaries()
    upTo = 4
    rows = [made('a', 1), made('b', 2), { run: 'c', upTo: 4, made: null }, made('d', 4)]
    const after = await list.summaries()
    if (!before.ok || !after.ok) throw new Error('not read')
    expect(after.value.runs.map(({ name }) => name)).toEqual(['a', 'b anew', 'c anew', 'd'])
    expect(after.value.runs[0]).toBe(before.value.runs[0])
    expect(summarised).toEqual(['b', 'c'])
  })

  test('leave out a run whose first version is not here, and make one of another rule anew', async () => {
    rows = [made('a', 1, null), { run: 'b', upTo: 2, made: { rule: summaryRule - 1, summary: named('b') } }]
    expect(await namesOf(held())).toEqual(['b anew'])
  })

  test('say what went wrong, and ask for it again', async () => {
    const list = held(true)
    expect(await namesOf(list)).toBe('cannot be read')
    expect(await namesOf(list)).toBe('cannot be read')
    expect(summarised).toEqual(['b', 'b'])
  })
})
