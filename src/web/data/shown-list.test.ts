import 'fake-indexeddb/auto'
import { expect, test } from 'vitest'
import type { SummarisedRun } from '../../operations/summarise-run.ts'
import { openDeviceStore } from './device-store.ts'
import { openTables } from './device-tables.ts'
import { type ListWish, readWish } from './list-wish.ts'
import { shownList } from './shown-list.ts'

const plain = readWish('')
const run = { id: 'a', name: 'Culvert', route: null, station: null, project: 'own', judged: null } as SummarisedRun
const summarised = { ...run, lastVisit: null, archived: null, problems: [] }
const entry = (id: string) =>
  ({
    ...{ id, run: 'a', kind: 'run', author: 'R. Quist', device: 'one', capturedAt: '2026-05-04T15:30:00.000Z' },
    ...{ supersedes: null, schemaVersion: 1, project: 'own', body: {} },
  }) as const

test('the list is there as it was shown last until something is kept, and only as it was asked for', async () => {
  const name = `shown ${Math.random()}`
  const store = openDeviceStore(() => openTables(name))
  const inNewPage = (wish: ListWish, most: number) =>
    shownList(openDeviceStore(() => openTables(name))).before(wish, most)
  expect(await inNewPage(plain, 40)).toBeNull()
  await store.add([entry('a')])
  const read = await store.summaries()
  if (!read.ok) throw new Error('not read')
  const list = shownList(store).of({ upTo: read.value.upTo, runs: [summarised] }, plain, 40)
  expect(list.groups).toEqual([{ project: 'own', runs: [summarised] }])
  await expect.poll(() => inNewPage(plain, 40)).toEqual(list)
  expect(await inNewPage(plain, 80)).toBeNull()
  expect(await inNewPage({ ...plain, archived: true }, 40)).toBeNull()
  await store.add([entry('b')])
  expect(await inNewPage(plain, 40)).toBeNull()
})

test('what is searched for is never kept as the list', async () => {
  const name = `shown ${Math.random()}`
  const store = openDeviceStore(() => openTables(name))
  await store.add([entry('a')])
  const read = await store.summaries()
  if (!read.ok) throw new Error('not read')
  const found = shownList(store).of({ upTo: read.value.upTo, runs: [summarised] }, { ...plain, search: 'pipe' }, 40)
  expect(found.found).toBe(0)
  await store.set('lastSync', '2026-05-04T15:30:00.000Z')
  expect(await shownList(store).before(plain, 40)).toBeNull()
})
