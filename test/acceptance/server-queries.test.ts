import { randomBytes } from 'node:crypto'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { entryId } from '../../src/formats/entry-id.ts'
import { keptSummaries } from '../../src/server/kept-summaries.ts'
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
    const { all } = keptSummaries(counted)
    const list = async () => answered(await all()).map(({ name, judged }) => [name, judged?.findings])

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
    const { all } = keptSummaries(store)
    const [run] = answered(await store.entries({ kinds: ['run'], limit: 1 }))
    const earlier = all()
    answered(await store.append([reading(run as NewEntry, '20 in')]))
    await Promise.all([earlier, all()])
    expect(answered(await all())[0]).toMatchObject({ name: 'run 0', judged: { findings: 1 } })
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
