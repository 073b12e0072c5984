import { randomBytes } from 'node:crypto'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import * as z from 'zod/mini'
import { entryId } from '../../src/formats/entry-id.ts'
import { summaryRule } from '../../src/operations/summary-rule.ts'
import { runSummary } from '../../src/protocol/runs.ts'
import { listRuns } from '../../src/server/list-runs.ts'
import { entriesAfter } from '../../src/server/stored-entries.ts'
import { takeInEntries } from '../../src/server/take-in-entries.ts'
import type { NewEntry } from '../../src/store/entry.ts'
import { openStore, type Store } from '../../src/store/store.ts'
import { type Databases, kindsOfDatabase } from '../store/databases.ts'
import { answered } from '../store/sample-entries.ts'

describe.each(kindsOfDatabase)('a server on $name with many runs in several projects', ({ start }) => {
  let databases: Databases
  let store: Store
  beforeAll(async () => {
    databases = await start()
    store = answered(await openStore(await databases.newDatabase()))
    for (const id of projects) answered(await store.createProject({ id, name: id }))
  })
  afterAll(async () => {
    await store.close()
    await databases.stop()
  })

  test('lists them, and asks the store no oftener than for one; then only for what changed', async () => {
    const { counted, questions } = counting(store)
    const list = async () => (await listed(counted)).map(({ name, judged }) => [name, judged?.findings])

    const first = newRun('run 0', projects[0]!)
    answered(await store.append([first, reading(first, '27 3/4 in')]))
    expect(await list()).toEqual([['run 0', 0]])
    const forOne = questions()

    const runs = Array.from({ length: 25 }, (_, i) => newRun(`run ${i + 1}`, projects[i % projects.length]!))
    const low = (i: number): boolean => i % 3 === 0
    // The readings come before the last of the runs: what counts is the order in which the runs were stored.
    const readings = runs.slice(0, -1).map((run, i) => reading(run, low(i) ? '20 in' : '27 3/4 in'))
    answered(await store.append([...runs.slice(0, -1), ...readings, runs.at(-1)!, reading(runs.at(-1)!, '20 in')]))
    const expected = [['run 0', 0], ...runs.map((_, i) => [`run ${i + 1}`, low(i) ? 1 : 0])]
    expect(await list()).toEqual(expected)
    expect(questions()).toBe(forOne)

    expect(await list()).toEqual(expected)
    expect(questions()).toBe(1)

    answered(await store.append([reading(runs[1]!, '20 in')]))
    expect(await list()).toEqual(expected.map(([name, findings]) => [name, name === 'run 2' ? 1 : findings]))
    expect(questions()).toBe(forOne)
  })

  test('two lists at once that see different readings leave the newer one', async () => {
    const [run] = answered(await store.entries({ kinds: ['run'], limit: 1 }))
    const earlier = listed(store)
    answered(await store.append([reading(run as NewEntry, '20 in')]))
    await Promise.all([earlier, listed(store)])
    expect((await listed(store))[0]).toMatchObject({ name: 'run 0', judged: { findings: 1 } })
  })

  test('shows no summary that another rule made, or that was made of less than is stored', async () => {
    const [first] = await listed(store)
    const oldNow = async () => answered(await store.summaries(summaryRule)).old
    const upTo = answered(await store.summaries(summaryRule + 1)).old[0]!.newest
    const wrong = JSON.stringify({ ...first!, judged: null })
    answered(await store.keepSummaries([{ run: first!.id, upTo, rule: summaryRule + 1, content: wrong }]))
    expect(await oldNow()).toEqual([{ run: first!.id, newest: upTo }])
    expect((await listed(store))[0]).toEqual(first)
    answered(await store.keepSummaries([{ run: first!.id, upTo: upTo - 1, rule: summaryRule, content: wrong }]))
    expect((await listed(store))[0]).toEqual(first)
    // An entry of whatever kind makes it old, in the transaction that stores it.
    const { project, id: run } = first!
    const entry = { ...envelope, id: newId(), project, run, kind: 'archive', body: { archived: true, reason: 'done' } }
    answered(await store.append([entry]))
    expect((await oldNow()).map(({ run }) => run)).toEqual([run])
    const archived = { at: envelope.capturedAt, by: envelope.author, reason: 'done' }
    expect((await listed(store))[0]).toEqual({ ...first!, archived })
  })

  test('takes in a batch of them all, and asks the store no oftener than for one', async () => {
    const { counted, questions } = counting(store)
    const runs = answered(await store.entries({ kinds: ['run'], limit: 100 })) as readonly NewEntry[]
    const handIn = async (some: readonly NewEntry[]) => {
      const answers = answered(
        await takeInEntries(
          counted,
          some.map(({ project: _, ...entry }) => entry),
        ),
      )
      return answers.map(({ outcome }) => outcome)
    }
    expect(await handIn([reading(runs[0]!, '27 3/4 in')])).toEqual(['stored'])
    const forOne = questions()
    const batch = runs.map((run) => reading(run, '27 3/4 in'))
    expect(await handIn([...batch, newRun('run 26', projects[0]!)])).toEqual(Array(runs.length + 1).fill('stored'))
    expect(questions()).toBe(forOne)
  })

  test('gives what was stored from a place on in one question, whatever project it is of', async () => {
    const { counted, questions } = counting(store)
    const all = answered(await store.entries({ limit: 1000 }))
    const [before, ...rest] = all.slice(3)
    const page = answered(await entriesAfter(counted, before!.seq, 10))
    expect(page.entries.map(({ id }) => id)).toEqual(rest.slice(0, 10).map(({ id }) => id))
    expect(page).toMatchObject({ at: before!.id, more: true, cursor: rest[9]!.seq, cursorId: rest[9]!.id })
    expect(questions()).toBe(1)
  })
})

const listed = async (store: Store) => z.array(runSummary).parse(JSON.parse(`[${answered(await listRuns(store))}]`))

const projects = ['route-9', 'route-14', 'ramp-b']

const newId = (): string => entryId(Date.now(), randomBytes(10))

function newRun(name: string, project: string): NewEntry {
  const id = newId()
  const ends = { first: { sheet: 'flared-terminal-27-3-4' }, second: { sheet: 'trailing-anchor-27-3-4' } }
  const need = { from: 0, to: '50 ft' }
  const body = { format: 'lapwise-run/1', name, system: 'w-beam-post-splice-27-3-4', ...ends, need }
  return { ...envelope, id, run: id, project, kind: 'run', body }
}

/** A height of the rail at the third post of a run; on its sheet 27 3/4 in, and 20 in is too low by any rule. */
function reading({ project, run }: NewEntry, value: string): NewEntry {
  const id = newId()
  const body = { id, of: 'post-3/rail-height', value, by: envelope.author, at: envelope.capturedAt, corrects: null }
  return { ...envelope, id, run, project, kind: 'reading', body }
}

const envelope = {
  ...{ schemaVersion: 1, author: 'R. Quist', device: 'phone', capturedAt: '2026-05-04T15:30:00.000Z' },
  supersedes: null,
} as const

/** The store, and how often it was asked since this was asked last. */
function counting(store: Store): { readonly counted: Store; questions(): number } {
  let asked = 0
  const counted = new Proxy(store, {
    get(target, name: keyof Store) {
      asked += 1
      return target[name]
    },
  })
  return {
    counted,
    questions() {
      const before = asked
      asked = 0
      return before
    },
  }
}
