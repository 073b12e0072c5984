import 'fake-indexeddb/auto'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { ModelServer } from '../../../test/fixtures/model-server.ts'
import { err, ok } from '../../core/result.ts'
import { inLogOrder } from '../../formats/entry/log-order.ts'
import { type DeviceStore, type FreshEntry, openDeviceStore } from './device-store.ts'
import { openTables } from './device-tables.ts'
import type { Answer } from './run-source.ts'
import { type Peer, syncEntries } from './sync.ts'

type Fate = 'arrives' | 'is lost' | 'loses its answer'

const lost = () => err({ kind: 'unreachable', message: 'no answer', problems: [] } as const)

/** A server behind a network that does to each request what `fates` say, and lets all through when they are used up. */
function behind(server: ModelServer, fates: Fate[]): Peer {
  async function through<T>(act: () => T): Answer<T> {
    const fate = fates.shift() ?? 'arrives'
    if (fate === 'is lost') return lost()
    const answer = act()
    return fate === 'arrives' ? ok(answer) : lost()
  }
  return {
    send: (entries) => through(() => server.push(entries.map((entry) => ({ ...entry, project: 'own' })))),
    fetch: (after) =>
      through(() => {
        const page = server.page(after, 3)
        const at = server.log.find(({ seq }) => seq === after)?.id ?? null
        return { ...page, at, more: page.entries.length === 3 }
      }),
  }
}

const entry = (id: string, device: string): FreshEntry => ({
  ...{ id, run: 'run-1', project: 'own', kind: 'reading', schemaVersion: 1, author: 'R. Quist', device },
  ...{ capturedAt: '2026-05-04T13:20:00.000Z', supersedes: null, body: { of: 'post-3/rail-height', n: id } },
})

async function must<T>(answer: Promise<{ ok: true; value: T } | { ok: false; error: unknown }>): Promise<T> {
  const answered = await answer
  if (!answered.ok) throw new Error('the store did not answer', { cause: answered.error })
  return answered.value
}

let made = 0
const freshName = (): string => `sync-${++made}`

const stateOf = async (store: DeviceStore): Promise<unknown> =>
  inLogOrder(await must(store.everything())).map(({ local: _, ...rest }) => rest)

describe('a device that syncs', () => {
  const step = fc.record({
    device: fc.nat(1),
    what: fc.constantFrom('write' as const, 'sync' as const, 'restart' as const),
    fates: fc.array(fc.constantFrom<Fate>('arrives', 'arrives', 'is lost', 'loses its answer'), { maxLength: 5 }),
  })

  test('comes to the same state as the other and the server, however often a round breaks off', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(step, { maxLength: 25 }), async (steps) => {
        const server = new ModelServer()
        const names = [freshName(), freshName()]
        const open = (n: number): DeviceStore => openDeviceStore(() => openTables(names[n]!))
        const stores = [open(0), open(1)]
        let count = 0
        for (const { device, what, fates } of steps) {
          if (what === 'write') await must(stores[device]!.add([entry(`${device}-${++count}`, `d${device}`)]))
          else if (what === 'sync') await syncEntries(stores[device]!, behind(server, [...fates]))
          else {
            stores[device]!.close()
            stores[device] = open(device)
          }
        }
        for (const round of [0, 1, 0, 1]) await must(syncEntries(stores[round]!, behind(server, [])))
        expect(server.log).toHaveLength(count)
        const state = await stateOf(stores[0]!)
        const stored = server.log.map((one) => ({ ...one, state: 'sent', reason: null }))
        expect(state).toEqual(inLogOrder(stored))
        expect(await stateOf(stores[1]!)).toEqual(state)
        for (const store of stores) store.close()
      }),
      { seed: 20260504, numRuns: 60 },
    )
  }, 60_000)

  test('sends everything anew to a server that knows nothing of it', async () => {
    const [before, after] = [new ModelServer(), new ModelServer()]
    const store = openDeviceStore(() => openTables(freshName()))
    await must(store.add([entry('a', 'd'), entry('b', 'd')]))
    await must(syncEntries(store, behind(before, [])))
    // The new server has another entry at the place of the cursor.
    after.push([{ ...entry('x', 'e') }, { ...entry('y', 'e') }, { ...entry('z', 'e') }])
    expect(await must(syncEntries(store, behind(after, [])))).toEqual(['run-1'])
    expect(after.log.map(({ id }) => id).sort()).toEqual(['a', 'b', 'x', 'y', 'z'])
    expect((await must(store.counts())).unsent).toBe(0)
  })

  test('does not read from the server while its own store cannot be read', async () => {
    const server = new ModelServer()
    server.push([entry('a', 'd')])
    let asked = 0
    const peer = behind(server, [])
    const counting: Peer = { ...peer, fetch: (after) => count(after) }
    const count = (after: number) => {
      asked += 1
      return peer.fetch(after)
    }
    const fails = async (): Promise<never> => {
      throw new DOMException('the server connection was lost', 'UnknownError')
    }
    const store = openDeviceStore(() => ({ read: fails, write: fails, close: () => {} }))
    expect(await syncEntries(store, counting)).toMatchObject({ ok: false, error: { kind: 'fault' } })
    expect(asked).toBe(0)
  })

  test('sends more than one request can hold', async () => {
    const server = new ModelServer()
    const store = openDeviceStore(() => openTables(freshName()))
    await must(store.add(Array.from({ length: 1201 }, (_, n) => entry(`e${n}`, 'd'))))
    await must(syncEntries(store, behind(server, [])))
    expect(server.log.map(({ id }) => id)).toEqual(Array.from({ length: 1201 }, (_, n) => `e${n}`))
  }, 30_000)
})
