import 'fake-indexeddb/auto'
import { createHash } from 'node:crypto'
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import { openDeviceStore } from '../data/device-store.ts'
import { openTables } from '../data/device-tables.ts'
import { holdFile } from '../data/held-files.ts'
import { openStore } from './read-store.ts'
import { rescue } from './rescue-files.ts'

/** Of the browser's reader only what is used. */
class Reader {
  result = ''
  onload = (): void => undefined
  readAsDataURL(blob: Blob): void {
    void blob.arrayBuffer().then((bytes) => {
      this.result = `data:;base64,${Buffer.from(bytes).toString('base64')}`
      this.onload()
    })
  }
}
beforeEach(() => {
  vi.stubGlobal('FileReader', Reader)
  // Where it has locks, holding a file takes one; older runtimes of the tests have no such thing at all.
  vi.stubGlobal('navigator', {})
})
afterEach(() => vi.restoreAllMocks())

const entry = (id: string) => ({
  ...{ id, run: 'run-1', kind: 'reading', schemaVersion: 1, author: 'R. Quist', device: 'phone', project: 'own' },
  ...{ capturedAt: '2026-05-04T13:20:00.000Z', supersedes: null, body: { of: 'post-3/rail-height' } },
})
const bytes = (fill: number) => new Uint8Array(5000).fill(fill)
const hashOf = (content: Uint8Array): string => createHash('sha256').update(content).digest('hex')
const photo = (fill: number) => ({ sha256: hashOf(bytes(fill)), type: 'image/png', content: bytes(fill).buffer })

let made = 0

async function storeWith(ids: readonly string[], fills: readonly number[]): Promise<string> {
  const name = `rescue-${++made}`
  const store = openDeviceStore(() => openTables(name))
  await store.add(ids.map(entry))
  for (const fill of fills) await store.add([], photo(fill))
  store.close()
  return name
}

const rescued = async (name: string) => {
  const found = await rescue((await openStore(name))!, '2026-05-04T14:00:00.000Z')
  return { ...found, written: JSON.parse(await found.file.text()) }
}

describe('what lies on a device', () => {
  test('is saved as a file of a device', async () => {
    const { written, left, rest } = await rescued(await storeWith(['a', 'b'], [1, 2]))
    const { project: _, ...fact } = entry('a')
    expect(written).toMatchObject({ format: 'lapwise-device/1', writtenAt: '2026-05-04T14:00:00.000Z' })
    expect(written.entries).toEqual([fact, { ...fact, id: 'b' }])
    expect(
      written.photos.map(({ base64 }: { base64: string }) => hashOf(Buffer.from(base64, 'base64'))).sort(),
    ).toEqual([1, 2].map((fill) => hashOf(bytes(fill))).sort())
    expect([left, rest]).toEqual([[], null])
  })

  test('is saved with the files that wait there, each as it was, but for those of which a piece is gone', async () => {
    const name = await storeWith(['a'], [])
    const store = openDeviceStore(() => openTables(name))
    const long = new Blob([new Uint8Array(5 * 1024 * 1024).fill(7)])
    for (const [file, content] of [
      ['long.zip', long],
      ['torn.zip', new Blob(['torn'])],
    ] as const)
      expect(await holdFile(store, file, { kind: 'newer format', version: 2 }, content)).toMatchObject({ ok: true })
    const held = await store.held()
    const torn = held.ok ? held.value.find((one) => one.name === 'torn.zip')! : null
    await store.keepHeldPiece(torn!.id, 0, 'gone' as never)
    store.close()
    const found = await rescued(name)
    expect(found.held.map((one) => one.name)).toEqual(['long.zip'])
    const saved = new Uint8Array(await found.held[0]!.file.arrayBuffer())
    expect(hashOf(saved)).toBe(hashOf(new Uint8Array(await long.arrayBuffer())))
    expect(found.left).toEqual([{ table: 'heldBytes', key: `${torn!.id}, 0`, reason: 'not whole' }])
  })

  test('is saved with the sheets of its shelf, each as the file that it was', async () => {
    const name = await storeWith([], [])
    const store = openDeviceStore(() => openTables(name))
    const body = { format: 'lapwise-sheet/1', id: 'terminal', version: '1.0.0' }
    await store.addSheet({ id: 'terminal', version: '1.0.0', addedAt: '', body })
    store.close()
    const [sheet, ...others] = (await rescued(name)).sheets
    expect(others).toEqual([])
    expect(sheet?.name).toBe('terminal-1.0.0.json')
    expect(JSON.parse(await sheet!.file.text())).toEqual(body)
  })

  test('is saved but for what cannot be read or is not whole, which is named', async () => {
    const name = await storeWith(['a', 'b', 'c'], [1, 2, 3])
    const tables = openTables(name)
    await tables.write(['entries', 'photoBytes'], async ({ entries, photoBytes }) => {
      entries.put((await entries.having('id', 'b')).map((one) => ({ ...one, body: 'torn' })))
      photoBytes.put([{ sha256: hashOf(bytes(2)), content: bytes(9).buffer }])
    })
    tables.close()
    const get = IDBObjectStore.prototype.get
    vi.spyOn(IDBObjectStore.prototype, 'get').mockImplementation(function (this: IDBObjectStore, key) {
      if (this.name === 'photoBytes' && key === hashOf(bytes(3))) throw new DOMException('the disk', 'UnknownError')
      return get.call(this, key)
    })
    const { written, left, rest } = await rescued(name)
    expect(written.entries.map(({ id }: { id: string }) => id)).toEqual(['a', 'c'])
    expect(written.photos.map(({ sha256 }: { sha256: string }) => sha256)).toEqual([hashOf(bytes(1))])
    expect(left.map(({ table, key }) => [table, key]).sort()).toEqual(
      [
        ['entries', '2'],
        ['photoBytes', hashOf(bytes(2))],
        ['photoBytes', hashOf(bytes(3))],
      ].sort(),
    )
    // What was read and is not whole is not thrown away.
    const torn = JSON.parse(await rest!.text())
    expect(torn[0].value.body).toBe('torn')
    expect(hashOf(Buffer.from(torn[1].value.base64, 'base64'))).toBe(hashOf(bytes(9)))
  })

  test('is saved also where the browser computes no hash', async () => {
    const { getRandomValues } = crypto
    vi.stubGlobal('crypto', { getRandomValues: getRandomValues.bind(crypto) })
    const { written, left } = await rescued(await storeWith(['a'], [1]))
    expect(written.entries).toHaveLength(1)
    expect(written.photos).toMatchObject([{ sha256: hashOf(bytes(1)) }])
    expect(left).toEqual([])
  })

  test('is nothing where nothing is stored, and looking makes no store', async () => {
    expect(await openStore('never')).toBeNull()
    expect((await indexedDB.databases()).map(({ name }) => name)).not.toContain('never')
  })
})
