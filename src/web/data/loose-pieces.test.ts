import 'fake-indexeddb/auto'
import { beforeEach, expect, test, vi } from 'vitest'
import { openDeviceStore } from './device-store.ts'
import { openTables } from './device-tables.ts'
import { heldFile, holdFile } from './held-files.ts'
import { clearLoosePieces } from './loose-pieces.ts'

/** Locks as a browser has them: `exclusive` waits for all before it, and all after it wait. */
function locks() {
  let shared: Promise<unknown>[] = []
  let last: Promise<unknown> = Promise.resolve()
  const request = async (_: string, { mode }: { mode: LockMode }, step: () => Promise<unknown>) => {
    if (mode === 'shared') {
      const held = last.then(step)
      shared.push(held.catch(() => {}))
      return held
    }
    const before = Promise.all([last, ...shared])
    shared = []
    const held = before.then(step)
    last = held.catch(() => {})
    return held
  }
  return { request }
}

beforeEach(() => void vi.stubGlobal('navigator', { locks: locks() }))

const newer = { kind: 'newer format', version: 9 } as const
const large = new Blob([new Uint8Array(5 * 1024 * 1024).fill(7)])

test('pieces of a file whose holding was broken off are cleared, and of all that is held none', async () => {
  const name = 'loose-pieces'
  const store = openDeviceStore(() => openTables(name))
  expect(await holdFile(store, 'whole.zip', newer, large)).toMatchObject({ ok: true })
  // As after the end of the page between two pieces.
  for (const piece of [0, 1]) await store.keepHeldPiece('torn', piece, new ArrayBuffer(8))
  store.close()
  const again = openDeviceStore(() => openTables(name))
  await clearLoosePieces(again)
  for (const piece of [0, 1]) expect(await again.heldPiece('torn', piece)).toEqual({ ok: true, value: undefined })
  const held = await again.held()
  const file = held.ok ? await heldFile(again, held.value[0]!) : held
  expect(file.ok && Buffer.from(await file.value.arrayBuffer()).equals(Buffer.from(await large.arrayBuffer()))).toBe(
    true,
  )
})

test('pieces of a file that another tab is holding at the time stay', async () => {
  const store = openDeviceStore(() => openTables('loose-pieces-of-two'))
  let clearing: Promise<unknown> | null = null
  const keepHeldPiece: typeof store.keepHeldPiece = async (...piece) => {
    const kept = await store.keepHeldPiece(...piece)
    clearing ??= clearLoosePieces(store)
    await Promise.race([clearing, new Promise((resolve) => setTimeout(resolve, 50))])
    return kept
  }
  expect(await holdFile({ ...store, keepHeldPiece }, 'whole.zip', newer, large)).toMatchObject({ ok: true })
  await clearing
  for (const piece of [0, 1]) {
    const rows = await store.held()
    expect(rows.ok && (await store.heldPiece(rows.value[0]!.id, piece))).toMatchObject({
      value: expect.any(ArrayBuffer),
    })
  }
})
