import 'fake-indexeddb/auto'
import { readFileSync } from 'node:fs'
import { afterEach, expect, test, vi } from 'vitest'
import { shippedSheets } from '../../sheets/shipped-sheets.ts'
import { openDeviceStore } from './device-store.ts'
import { openTables } from './device-tables.ts'
import { newRunBody } from './new-run.ts'
import { addSheet, ownSheets } from './own-sheets.ts'
import { shelfOf } from './shelf-of.ts'

const invented = JSON.parse(
  readFileSync(new URL('../../../test/cases/added-sheet/invented-terminal-31.json', import.meta.url), 'utf8'),
) as { readonly id: string; readonly version: string; readonly posts: readonly unknown[] }
const { id } = invented

let made = 0
const freshStore = () => openDeviceStore(() => openTables(`own-sheets-${++made}`))

/** Each later than the one before, whatever the clock does. */
let minute = 0
const dated = async <T>(step: () => Promise<T>): Promise<T> => {
  vi.useFakeTimers({ toFake: ['Date'], now: new Date(Date.UTC(2026, 4, 4, 0, ++minute)) })
  return step()
}
afterEach(() => void vi.useRealTimers())

async function own(store: ReturnType<typeof freshStore>) {
  const sheets = await ownSheets(store)
  if (!sheets.ok) throw new Error('the store did not answer', { cause: sheets.error })
  return sheets.value
}

test('a sheet of an agency stands on the shelf beside those that ship, until it is taken off', async () => {
  const store = freshStore()
  expect(await addSheet(store, 'terminal.json', invented)).toEqual({ ok: true, value: 'stored' })
  expect(await addSheet(store, 'terminal.json', invented)).toEqual({ ok: true, value: 'already' })
  expect(shelfOf(await own(store)).get(id)).toMatchObject({ version: invented.version })
  expect(shelfOf(await own(store)).size).toBe(shippedSheets.length + 1)
  await store.dropSheet(id, invented.version)
  expect([...shelfOf(await own(store)).values()]).toEqual(shippedSheets)
})

test('of several editions the latest is on the shelf, whichever was put there last', async () => {
  const store = freshStore()
  for (const version of ['1.10.0', '1.9.0']) await dated(() => addSheet(store, version, { ...invented, version }))
  expect((await own(store)).map(({ version }) => version)).toEqual(['1.10.0', '1.9.0'])
  expect(shelfOf(await own(store)).get(id)?.version).toBe('1.10.0')
})

test('an edition of a shipped sheet stands in its place, and the shipped one comes back', async () => {
  const store = freshStore()
  const [shipped] = shippedSheets
  await addSheet(store, 'own', { ...shipped, version: '99.0.0' })
  expect(shelfOf(await own(store)).get(shipped!.id)?.version).toBe('99.0.0')
  await store.dropSheet(shipped!.id, '99.0.0')
  expect(shelfOf(await own(store)).get(shipped!.id)).toBe(shipped)
})

test('one edition says one thing: another content under its version is refused, and the first stays', async () => {
  const store = freshStore()
  await addSheet(store, 'terminal.json', invented)
  const other = { ...invented, name: 'another name' }
  expect(await addSheet(store, 'other.json', other)).toMatchObject({ ok: false, error: { kind: 'refused' } })
  expect((await own(store)).map(({ sheet }) => sheet)).toEqual([{ ok: true, value: expect.objectContaining({ id }) }])
  expect(shelfOf(await own(store)).get(id)?.name).not.toBe(other.name)
  const changedShipped = { ...shippedSheets[0], name: 'another name' }
  expect(await addSheet(store, 'shipped.json', changedShipped)).toMatchObject({ ok: false })
  expect(await addSheet(store, 'shipped.json', shippedSheets[0])).toEqual({ ok: true, value: 'already' })
})

test('what is no sheet is refused at the place that is wrong, and nothing is kept', async () => {
  const store = freshStore()
  const refused = await addSheet(store, 'terminal.json', { ...invented, posts: [...invented.posts, { along: -3 }] })
  expect(refused.ok).toBe(false)
  if (!refused.ok) expect(refused.error.problems.some(({ place }) => place.startsWith('posts['))).toBe(true)
  expect(await own(store)).toEqual([])
})

test('a sheet that this program cannot read is listed with what is wrong, and is not on the shelf', async () => {
  const store = freshStore()
  await store.addSheet({ id, version: '2', addedAt: '', body: { ...invented, format: 'lapwise-sheet/9' } })
  expect(await own(store)).toMatchObject([{ id, version: '2', sheet: { ok: false } }])
  expect(shelfOf(await own(store)).has(id)).toBe(false)
})

test('a run file may name a sheet of this device, and holds it by content from then on', async () => {
  const store = freshStore()
  await addSheet(store, 'terminal.json', invented)
  const run = {
    ...{ format: 'lapwise-run/1', name: 'run', system: 'w-beam-midspan-31', need: { from: 0, to: 1200 } },
    ...{ first: { sheet: 'trailing-anchor-31' }, second: { sheet: id } },
  }
  const body = newRunBody('run-1', 'run.json', run, await own(store))
  expect(body.ok && (body.value as { sheets: { id: string }[] }).sheets.map((one) => one.id)).toContain(id)
  expect(newRunBody('run-1', 'run.json', run, []).ok).toBe(false)
})
