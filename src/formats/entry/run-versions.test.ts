import { describe, expect, test } from 'vitest'
import type { Entry } from './entry-kinds.ts'
import { runVersions } from './run-versions.ts'

const run = '01970000-0000-7000-8000-000000000000'
const idAt = (count: number, maker = 0) =>
  `01970000-${count.toString(16).padStart(4, '0')}-7000-8000-00000000000${maker}`
const version = (id: string, supersedes: string | null, body: object = { version: id, name: id }) =>
  ({ id, run, kind: 'run', schemaVersion: 2, supersedes, body }) as unknown as Entry

const first = version(run, null)
const second = version(idAt(1), run)
const third = version(idAt(2), second.id)
/** Made from the first as well, by somebody who had not seen the second. */
const rival = version(idAt(1, 1), run)

const orders = <T>(list: readonly T[]): T[][] =>
  list.length < 2 ? [[...list]] : list.flatMap((one, i) => orders(list.toSpliced(i, 1)).map((rest) => [one, ...rest]))
const idsOf = (entries: readonly Entry[]) => {
  const found = runVersions(run, entries)
  return found && { inForce: found.inForce.id, forks: found.forks.map(({ id }) => id) }
}

describe('the version in force', () => {
  test('is the last of the chain, whatever order its versions arrive in', () => {
    for (const order of orders([first, second, third])) expect(idsOf(order)).toEqual({ inForce: third.id, forks: [] })
  })

  test('is the later in the log where two were made from the same, and the other is listed', () => {
    for (const order of orders([first, second, rival]))
      expect(idsOf(order)).toEqual({ inForce: rival.id, forks: [second.id] })
  })

  test('is what somebody made who knew of both', () => {
    for (const order of orders([first, second, rival, third]))
      expect(idsOf(order)).toEqual({ inForce: third.id, forks: [rival.id] })
  })

  test('waits for the version that it was made from', () => {
    expect(idsOf([first, third])).toEqual({ inForce: run, forks: [] })
    expect(idsOf([second, third])).toBeNull()
  })

  test('is one of two alike, and the other is no fork', () => {
    const alike = [second, rival].map(({ id }) => version(id, run, { version: id, name: 'pinned' }))
    for (const order of orders([first, ...alike])) expect(idsOf(order)).toEqual({ inForce: rival.id, forks: [] })
  })
})
