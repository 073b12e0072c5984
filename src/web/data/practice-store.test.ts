import 'fake-indexeddb/auto'
import { afterEach, expect, test, vi } from 'vitest'
import { practiceRuns, practiceRunValue } from '../../operations/practice-runs.ts'
import { openDeviceStore } from './device-store.ts'
import { openTables } from './device-tables.ts'
import type { DrillRow } from './drill-row.ts'
import { localSource } from './local-source.ts'

afterEach(() => vi.unstubAllGlobals())

test('a practice store takes a run and its drill, and asks no server for anything', async () => {
  const fetched = vi.fn(() => Promise.reject(new TypeError('no network')))
  vi.stubGlobal('fetch', fetched)
  vi.stubGlobal('isSecureContext', true)
  vi.stubGlobal('navigator', {})
  vi.stubGlobal('self', { addEventListener: () => {} })
  const store = openDeviceStore(() => openTables('practice-test'))
  const source = localSource(store, { changed: () => {}, keepStorage: async () => true }, 'practice')
  const id = '00000000000000000000000001'
  const added = await source.addRun(id, 'drill', practiceRunValue(practiceRuns[0]!, 'drill', 'us'), 'R. Quist')
  expect(added).toEqual({ ok: true, value: 'stored' })
  const drill: DrillRow = {
    ...{ run: id, number: '1000 1000 0246', wish: { faults: 1, size: 'gross', decoys: 0, seed: 24 }, minutes: null },
    ...{ beganAt: '2026-05-12T10:05:00Z', endedAt: null, said: {}, result: null },
  }
  await source.keepDrill(drill)
  await source.keepDrill({ ...drill, endedAt: '2026-05-12T10:07:00Z' })
  expect(await source.drills()).toEqual({ ok: true, value: [{ ...drill, endedAt: '2026-05-12T10:07:00Z' }] })
  expect((await source.run(id)).ok).toBe(true)
  await source.syncNow()
  expect((await source.status()).ok).toBe(true)
  expect(fetched).not.toHaveBeenCalled()
  await source.dropPractice()
  expect(await source.drills()).toEqual({ ok: true, value: [] })
  expect((await source.run(id)).ok).toBe(false)
})

test('the store of real runs is never emptied', async () => {
  vi.stubGlobal('self', { addEventListener: () => {} })
  vi.stubGlobal('navigator', {})
  // Its sync begins and waits for ever, and asks for nothing once this test has ended.
  const fetched = vi.fn(() => new Promise(() => {}))
  vi.stubGlobal('fetch', fetched)
  const store = openDeviceStore(() => openTables('real-test'))
  const source = localSource(store, { changed: () => {}, keepStorage: async () => true })
  await expect(source.dropPractice()).rejects.toThrow(RangeError)
  await vi.waitFor(() => expect(fetched).toHaveBeenCalled())
})
