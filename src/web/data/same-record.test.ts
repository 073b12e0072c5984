import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { ModelServer } from '../../../test/fixtures/model-server.ts'
import { recordTextOf } from '../../../test/fixtures/record-text-of.ts'
import { inLogOrder } from '../../formats/entry/log-order.ts'
import { entryId, entryIdAfter } from '../../formats/entry-id.ts'
import { readRun } from '../../formats/run/run-file.ts'
import { writeRun } from '../../formats/run/write-run.ts'
import { demoProject } from '../../operations/demo-project.ts'
import { judgeKnown } from '../../operations/judge-readings.ts'
import { requireRun } from '../../operations/require-run.ts'
import { readKeptRun } from './kept-run.ts'
import { type DeviceEntry, withArrived } from './merge-entries.ts'

const read = readRun('run', demoProject().run)
if (!read.ok) throw new Error('the demo run is not sound')
const required = requireRun('run', read.value)
if (!required.ok) throw new Error('the demo run cannot be laid out')

const run = entryId(Date.UTC(2026, 4, 4), new Uint8Array(10))
const stubs = ['post-1/stub-height', 'post-2/stub-height']

/** What one device does: reads, corrects its latest, hands in and fetches, or takes a file that another one wrote. */
const step = fc.record({
  device: fc.nat(2),
  what: fc.constantFrom('read' as const, 'read' as const, 'correct' as const, 'sync' as const, 'file' as const),
  n: fc.nat(40),
})

interface Device {
  readonly entries: Map<string, DeviceEntry>
  /** Hours by which its clock is wrong. */
  readonly hoursWrong: number
}

function play(
  steps: readonly (typeof step extends fc.Arbitrary<infer S> ? S : never)[],
  hoursWrong: readonly number[],
) {
  const server = new ModelServer()
  const devices = hoursWrong.map((hours): Device => ({ entries: new Map(), hoursWrong: hours }))
  let made = 0
  const keep = (device: Device, entry: Omit<DeviceEntry, 'local'>): void => {
    device.entries.set(entry.id, { ...entry, local: device.entries.get(entry.id)?.local ?? device.entries.size })
  }
  const write = (device: Device, n: number, corrects: DeviceEntry | null): void => {
    made += 1
    const random = Uint8Array.from({ length: 10 }, (_, i) => (made * 97 + i * 31) % 256)
    const id = entryIdAfter([run, ...device.entries.keys()], random)
    const capturedAt = new Date(Date.UTC(2026, 4, 4, device.hoursWrong + made)).toISOString()
    const of = corrects === null ? stubs[n % 2]! : (corrects.body as { of: string }).of
    // From 3 to 5 1/2 in: some meet, some fail, some are too close.
    const value = `${(12 + (n % 11)) / 4} in`
    const supersedes = corrects?.id ?? null
    const body = { id, of, value, by: 'R. Quist', at: capturedAt, corrects: supersedes }
    keep(device, {
      ...{ id, run, project: 'own', kind: 'reading', schemaVersion: 1, author: 'R. Quist', device: 'd' },
      ...{ capturedAt, supersedes, body, seq: null, state: 'here', reason: null },
    })
  }
  const sync = (device: Device): void => {
    server.push([...device.entries.values()].map(({ local: _l, seq: _s, state: _t, reason: _r, ...sent }) => sent))
    for (const arrived of server.page(0, server.log.length).entries)
      keep(device, withArrived(device.entries.get(arrived.id), arrived))
  }
  for (const { device: d, what, n } of steps) {
    const device = devices[d % devices.length]!
    const other = devices[(d + 1 + (n % 2)) % devices.length]!
    if (what === 'read') write(device, n, null)
    if (what === 'correct') write(device, n, [...device.entries.values()].at(-1) ?? null)
    if (what === 'sync') sync(device)
    if (what === 'file')
      for (const entry of other.entries.values())
        if (!device.entries.has(entry.id)) keep(device, { ...entry, seq: null, state: 'here' })
  }
  return { server, devices, sync }
}

function recordOf(entries: readonly DeviceEntry[]) {
  const body = JSON.parse(writeRun(required.ok ? required.value.run : read.value))
  const runEntry = { ...({ id: run, run, kind: 'run', body } as const), supersedes: null } as unknown as DeviceEntry
  const kept = readKeptRun(run, [runEntry], inLogOrder(entries))
  if (!kept?.ok || !required.ok) throw new Error('the readings cannot be read', { cause: kept })
  const judged = judgeKnown(required.value, kept.value.readings)
  const { acceptance, verdicts, findings, unproven } = judged.judgement
  const said = { acceptance, verdicts, findings, unproven }
  return { text: recordTextOf(judged), judgement: said, ids: judged.readings.map(({ id }) => id) }
}

const hours = fc.integer({ min: -26, max: 26 })

describe('the record', () => {
  test('is the same wherever the same entries are held, and a wrong clock changes only the times shown', () => {
    fc.assert(
      fc.property(fc.array(step, { maxLength: 40 }), fc.tuple(hours, hours, hours), (steps, hoursWrong) => {
        const { server, devices, sync } = play(steps, hoursWrong)
        // Held alike before anything went through the server: by a file, in another order.
        const all = [...new Map(devices.flatMap(({ entries }) => [...entries])).values()]
        const held = recordOf(all.toReversed())
        for (const device of devices) sync(device)
        for (const device of devices) {
          sync(device)
          expect(recordOf([...device.entries.values()])).toEqual(held)
        }
        const stored = server.log.map((entry) => withArrived(undefined, entry) as DeviceEntry)
        expect(recordOf(stored)).toEqual(held)

        const right = play(steps, [0, 0, 0])
        const asRight = recordOf([...new Map(right.devices.flatMap(({ entries }) => [...entries])).values()])
        expect(asRight.ids).toEqual(held.ids)
        expect(asRight.judgement).toEqual(held.judgement)
      }),
      { seed: 20261125, numRuns: 60 },
    )
  }, 60_000)

  test('counts what was read knowing of the earlier reading, also by a phone that is a day behind', () => {
    const steps = [
      { device: 0, what: 'read', n: 20 },
      { device: 0, what: 'sync', n: 0 },
      { device: 1, what: 'sync', n: 0 },
      { device: 1, what: 'read', n: 2 },
    ] as const
    const { devices } = play(steps, [0, -24, 0])
    const { judgement, ids } = recordOf([...devices[1]!.entries.values()])
    expect(judgement.verdicts.find(({ requirement }) => requirement === stubs[0])!.readings).toEqual([ids[1]])
  })
})
