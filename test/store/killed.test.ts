import { setTimeout as wait } from 'node:timers/promises'
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest'
import { openStore } from '../../src/store/store.ts'
import { buildChild, dropChild, kill, killChildren, linesOf, startChild } from './child.ts'
import { type Databases, kindsOfDatabase } from './databases.ts'
import { answered } from './sample-entries.ts'

beforeAll(buildChild)
afterAll(dropChild)

describe.each(kindsOfDatabase)('a process that is killed while it appends to $name', ({ start }) => {
  const rounds = 20
  let databases: Databases

  beforeAll(async () => {
    databases = await start()
  })
  afterEach(killChildren)
  afterAll(() => databases.stop())

  it(`keeps every acknowledged entry, once, through ${rounds} kills at any moment`, async () => {
    const config = await databases.newDatabase()
    const random = seededRandom(20_260_504)
    const acknowledged: string[] = []
    for (let round = 0; round < rounds; round++) {
      const child = startChild(config, `round-${round}`)
      const lines = linesOf(child)
      const [word, kept] = (await lines.next()).value
      expect(word).toBe('kept')
      expectKept(kept, acknowledged)
      const killed = wait(20 + random() * 400).then(() => kill(child))
      for await (const [, ids] of lines) acknowledged.push(...ids)
      await killed
    }
    const store = answered(await openStore(config))
    const kept = answered(await store.entries({ project: 'p', limit: 1_000_000 }))
    expectKept(
      kept.map((entry) => entry.id),
      acknowledged,
    )
    await store.close()
    expect(acknowledged.length).toBeGreaterThan(rounds)
  }, 600_000) // half a minute on a quiet machine; a ceiling for a busy one
})

/** Every acknowledged id is kept, and none is kept twice. */
function expectKept(kept: readonly string[], acknowledged: readonly string[]): void {
  const present = new Set(kept)
  expect(acknowledged.filter((id) => !present.has(id))).toEqual([])
  expect(present.size).toBe(kept.length)
}

/** Numbers in [0, 1) that come out the same each time: a linear congruential generator (Numerical Recipes, 7.1). */
function seededRandom(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0
    return state / 2 ** 32
  }
}
