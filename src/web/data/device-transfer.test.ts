import 'fake-indexeddb/auto'
import { describe, expect, test } from 'vitest'
import { demoProject } from '../../operations/demo-project.ts'
import { type DeviceStore, openDeviceStore } from './device-store.ts'
import { openTables } from './device-tables.ts'
import { exportDevice, importDevice } from './device-transfer.ts'

const at = '2026-05-04T15:30:00.000Z'
const run = '0190a1b2-0000-7000-8000-000000000000'
const common = { run, schemaVersion: 1, author: 'R. Quist', device: 'phone', capturedAt: at }
const runEntry = { ...common, id: run, kind: 'run', supersedes: null, body: JSON.parse(demoProject().run) }

function reading(n: number, of: string, value: string, more: { corrects?: string; rechecks?: string } = {}) {
  const id = `0190a1b2-000${n}-7000-8000-000000000000`
  const body = { id, of, value, by: 'R. Quist', at, ...more }
  return { ...common, id, kind: 'reading', supersedes: more.corrects ?? null, body }
}

const file = (...entries: readonly object[]) =>
  JSON.stringify({ format: 'lapwise-device/1', device: 'phone', writtenAt: at, entries, photos: [] })

let made = 0
const freshStore = (): DeviceStore => openDeviceStore(() => openTables(`transfer-${++made}`))

async function idsIn(store: DeviceStore): Promise<readonly string[]> {
  const all = await store.everything()
  if (!all.ok) throw new Error(all.error.reason)
  return all.value.map(({ id }) => id)
}

const failed = reading(1, 'post-1/stub-height', '5 in')
const corrected = reading(2, 'post-1/stub-height', '4 3/4 in', { corrects: failed.id })
const rechecked = reading(3, 'post-1/stub-height', '3 in', { rechecks: 'post-1/stub-height' })
const wrongPlace = reading(4, 'post-2/stub-height', '3 in', { corrects: failed.id })
const wrongFinding = reading(5, 'post-1/stub-height', '3 in', { rechecks: 'splice-2/lap' })

describe('a file from another device', () => {
  test('is taken in with its corrections and rechecks', async () => {
    const store = freshStore()
    const taken = await importDevice(store, 'd.json', file(runEntry, failed, corrected, rechecked))
    expect(taken).toMatchObject({ ok: true, value: { entries: 4, already: 0 } })
  })

  test('has its values without a unit in those of its run, also where the run comes later', async () => {
    const road = { ...runEntry.body.road, datumStation: '1+208.400', speed: 90 }
    const metric = { ...runEntry, body: { ...runEntry.body, units: 'metric', road } }
    const bare = { ...failed, body: { ...failed.body, value: 100 } }
    const valueIn = async (...entries: readonly object[]): Promise<unknown> => {
      const store = freshStore()
      expect(await importDevice(store, 'd.json', file(...entries))).toMatchObject({ ok: true })
      const kept = await store.entries('reading')
      return kept.ok ? (kept.value[0]!.body as { readonly value: unknown }).value : kept.error
    }
    expect(await valueIn(metric, bare)).toBe('100 mm')
    expect(await valueIn(runEntry, bare)).toBe('100 in')
    expect(await valueIn(bare)).toBe(100)
  })

  test('is refused whole when a reading in it corrects or rechecks something else', async () => {
    const store = freshStore()
    const refused = await importDevice(store, 'd.json', file(runEntry, failed, wrongPlace, wrongFinding))
    expect(refused).toMatchObject({
      ok: false,
      error: {
        kind: 'refused',
        problems: [
          { place: 'entries[2].body.corrects', expected: { kind: 'earlier reading' } },
          { place: 'entries[3].body.rechecks', found: { text: '"splice-2/lap"' } },
        ],
      },
    })
    expect(await idsIn(store)).toEqual([])
  })

  test('is refused whole when a day log or a locate ticket in it names a piece that its run never had', async () => {
    const log = { day: '2026-05-04', done: 'Posts', crew: ['R. Quist'], openEnds: 'none', openEndsNote: null }
    const day = (n: number, kind: string, body: object) =>
      ({
        ...common,
        id: `0190a1b2-001${n}-7000-8000-000000000000`,
        kind,
        schemaVersion: 2,
        supersedes: null,
        body,
      }) as const
    const dates = { calledOn: '2026-05-01', validFrom: '2026-05-04', validThrough: '2026-05-11' }
    const ticket = (from: string) => ({ number: 'A', ...dates, marks: [{ name: 'gas', from, alongInches: 3 }] })
    const sound = [
      day(1, 'day-log', { ...log, postsDriven: ['post-1'], panelsHung: ['panel-1'] }),
      day(2, 'locate-ticket', ticket('post-2')),
    ]
    const unfit = [
      day(3, 'day-log', { ...log, postsDriven: ['post-1', 'post-999'], panelsHung: [] }),
      day(4, 'locate-ticket', ticket('post-2~0a1b')),
      day(5, 'day-log', { ...log, version: 'v9', postsDriven: [], panelsHung: [] }),
    ]
    const store = freshStore()
    expect(await importDevice(store, 'd.json', file(runEntry, ...sound, ...unfit))).toMatchObject({
      ok: false,
      error: {
        problems: [
          {
            file: 'd.json',
            place: 'entries[3].body.postsDriven[1]',
            expected: { kind: 'piece of run', piece: 'post' },
          },
          { place: 'entries[4].body.marks[0].from', found: { text: '"post-2~0a1b"' } },
          { place: 'entries[5].body.version', expected: { kind: 'version of run' } },
        ],
      },
    })
    expect(await idsIn(store)).toEqual([])
    expect(await importDevice(store, 'd.json', file(runEntry, ...sound))).toMatchObject({ ok: true })
    // Beside a run that is here, too; what came before its run is kept until that comes.
    expect(await importDevice(store, 'd.json', file(unfit[0]!))).toMatchObject({ ok: false })
    expect(await importDevice(freshStore(), 'd.json', file(unfit[0]!))).toMatchObject({ ok: true })
  })

  test('is looked at with what is here already, and keeps what is here as it is', async () => {
    const store = freshStore()
    expect(await importDevice(store, 'd.json', file(runEntry, failed))).toMatchObject({ ok: true })
    expect(await importDevice(store, 'd.json', file(corrected))).toMatchObject({ ok: true, value: { entries: 1 } })
    expect(await importDevice(store, 'd.json', file(wrongPlace))).toMatchObject({ ok: false })
    // As a server that took it in earlier sends it, and as it then stands in a file of this device.
    const entry = { ...wrongPlace, seq: 9, project: 'own' } as never
    await store.takePage({ after: 0, cursor: { seq: 9, id: wrongPlace.id }, entries: [entry] })
    const written = await exportDevice(store, 'phone')
    if (!written.ok) throw new Error(written.error.message)
    expect(await importDevice(store, 'd.json', await written.value.text())).toMatchObject({
      ok: true,
      value: { entries: 0, already: 4 },
    })
    expect(await idsIn(store)).toHaveLength(4)
  })
})
