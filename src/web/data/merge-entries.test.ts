import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { ModelServer, type Written } from '../../../test/fixtures/model-server.ts'
import { inLogOrder } from '../../formats/entry/log-order.ts'
import {
  type Cursor,
  cursorAfter,
  type DeviceEntry,
  type HeardAnswer,
  type Page,
  rivalsAmong,
  start,
  withAnswer,
  withArrived,
} from './merge-entries.ts'

/** What a device has on its disk; what is under way to or from the server is lost when it crashes. */
class ModelDevice {
  readonly disk = new Map<string, DeviceEntry>()
  readonly acknowledged: string[] = []
  cursor: Cursor = start
  toServer: Written[][] = []
  answers: HeardAnswer[][] = []
  pages: Page[] = []
  private kept = 0

  constructor(readonly name: string) {}

  /** Its clock is off by days, each time otherwise. */
  write(hoursWrong: number, supersedes: string | null): void {
    const id = `${this.name}-${this.acknowledged.length}`
    const capturedAt = new Date(Date.UTC(2026, 4, 4) + hoursWrong * 3_600_000).toISOString()
    const entry = { id, run: 'r', project: 'own', kind: 'reading', schemaVersion: 1, author: this.name } as const
    const made = { ...entry, device: this.name, capturedAt, supersedes, body: { n: id } }
    this.disk.set(id, { ...made, local: ++this.kept, seq: null, state: 'here', reason: null })
    this.acknowledged.push(id)
  }

  takeAnswers(answers: readonly HeardAnswer[]): void {
    for (const answer of answers) {
      const known = this.disk.get(answer.id)
      if (known !== undefined) this.disk.set(answer.id, withAnswer(known, answer))
    }
  }

  takePage(page: Page): void {
    for (const arrived of page.entries) {
      const known = this.disk.get(arrived.id)
      this.disk.set(arrived.id, { local: known?.local ?? ++this.kept, ...withArrived(known, arrived) })
    }
    this.cursor = cursorAfter(this.cursor, page)
  }

  unsent(): Written[] {
    return [...this.disk.values()]
      .filter(({ state }) => state === 'here')
      .sort((a, b) => a.local - b.local)
      .map(asWritten)
  }

  crash(): void {
    this.toServer = []
    this.answers = []
    this.pages = []
  }
}

function asWritten({ local: _l, seq: _s, state: _t, reason: _r, ...written }: DeviceEntry): Written {
  return written
}

const at = <T>(list: readonly T[], n: number): T | undefined => list[n % Math.max(list.length, 1)]

const step = fc.record({
  device: fc.nat(2),
  what: fc.constantFrom(
    ...([
      'write',
      'write',
      'correct',
      'send',
      'serve',
      'repeat',
      'answer',
      'ask',
      'arrive',
      'arrive',
      'crash',
    ] as const),
  ),
  n: fc.nat(30),
})

type Step = typeof step extends fc.Arbitrary<infer S> ? S : never

function take(device: ModelDevice, server: ModelServer, { what, n }: Step): unknown {
  switch (what) {
    case 'write':
      return device.write(n - 24, null)
    case 'correct':
      return device.write(n - 24, at([...device.disk.keys()], n) ?? null)
    case 'send': {
      const unsent = device.unsent()
      return unsent.length > 0 && device.toServer.push(unsent.slice(0, 1 + (n % 4)))
    }
    // Any of the batches under way arrives next, so they come in any order; its answer sets out.
    case 'serve': {
      const batch = at(device.toServer, n)
      if (batch === undefined) return false
      device.toServer = device.toServer.filter((one) => one !== batch)
      return device.answers.push(server.push(batch))
    }
    // It arrives, and stays under way: it will arrive again.
    case 'repeat': {
      const batch = at(device.toServer, n)
      return batch !== undefined && device.answers.push(server.push(batch))
    }
    case 'answer': {
      const answers = at(device.answers, n)
      if (answers === undefined) return false
      if (n % 3 > 0) device.answers = device.answers.filter((one) => one !== answers)
      return device.takeAnswers(answers)
    }
    case 'ask':
      return device.pages.push(server.page(device.cursor.seq, 1 + (n % 3)))
    case 'arrive': {
      const page = at(device.pages, n)
      if (page === undefined) return false
      if (n % 3 > 0) device.pages = device.pages.filter((one) => one !== page)
      return device.takePage(page)
    }
    case 'crash':
      return device.crash()
  }
}

/** The connection holds at last: everything is sent, then everything is fetched. */
function settle(devices: readonly ModelDevice[], server: ModelServer): void {
  for (const device of devices) device.takeAnswers(server.push(device.unsent()))
  for (const device of devices) {
    for (let before = -1; before < device.cursor.seq; ) {
      before = device.cursor.seq
      device.takePage(server.page(device.cursor.seq, 4))
    }
  }
}

const stateOf = (device: ModelDevice): unknown =>
  inLogOrder([...device.disk.values()]).map(({ local: _, ...entry }) => entry)

describe('devices and a server', () => {
  test('come to the same state whatever is lost, doubled or late, and nothing acknowledged is lost', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 3 }), fc.array(step, { maxLength: 120 }), (count, steps) => {
        const server = new ModelServer()
        const devices = Array.from({ length: count }, (_, n) => new ModelDevice(`d${n}`))
        for (const one of steps) {
          const device = devices[one.device % count]!
          const held = new Set(device.acknowledged)
          take(device, server, one)
          // At no moment does a device let go of what it acknowledged.
          for (const id of held) expect(device.disk.has(id)).toBe(true)
        }
        settle(devices, server)
        const [first, ...others] = devices
        for (const other of others) expect(stateOf(other)).toEqual(stateOf(first!))
        const all = devices.flatMap(({ acknowledged }) => acknowledged).sort()
        expect([...first!.disk.keys()].sort()).toEqual(all)
        expect(server.log.map(({ id }) => id).sort()).toEqual(all)
      }),
      { seed: 20260504, numRuns: 1500 },
    )
  })

  test('would miss entries if a page that leaves a gap moved the cursor', () => {
    const [three, seven] = [
      { seq: 3, id: 'c' },
      { seq: 7, id: 'g' },
    ]
    const page = (after: number, seq: number) => ({ after, cursor: { seq, id: 'x' }, entries: [] })
    expect(cursorAfter(three, page(5, 9))).toEqual(three)
    expect(cursorAfter(seven, page(5, 6))).toEqual(seven)
    expect(cursorAfter(seven, page(5, 9))).toEqual({ seq: 9, id: 'x' })
  })
})

describe('an entry', () => {
  const device = new ModelDevice('d')
  device.write(0, null)
  const made = [...device.disk.values()][0]!

  test('that the server has under the same id with another body stays as it was acknowledged', () => {
    const arrived = { ...asWritten(made), seq: 4, body: { n: 'another' } }
    expect(withArrived(made, arrived)).toMatchObject({ body: made.body, state: 'refused' })
  })

  test('is the same when the server writes its time in UTC', () => {
    const arrived = { ...asWritten(made), seq: 4, capturedAt: '2026-05-03T19:00:00.000-05:00' }
    expect(withArrived(made, arrived)).toMatchObject({ state: 'sent', seq: 4 })
  })

  test('corrected twice shows both corrections', () => {
    const entries = [
      { id: 'a', supersedes: null },
      { id: 'b', supersedes: 'a' },
      { id: 'c', supersedes: 'a' },
      { id: 'd', supersedes: 'b' },
    ]
    expect(rivalsAmong(entries)).toEqual(new Map([['a', ['b', 'c']]]))
  })
})
