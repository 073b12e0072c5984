import 'fake-indexeddb/auto'
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import { err, ok } from '../../core/result.ts'
import { type DeviceStore, openDeviceStore } from './device-store.ts'
import { openTables } from './device-tables.ts'
import { freeablePhotos, freePhotos, recheckSentPhotos } from './free-photos.ts'

async function must<T>(answer: Promise<{ ok: true; value: T } | { ok: false; error: unknown }>): Promise<T> {
  const answered = await answer
  if (!answered.ok) throw new Error('it was not answered', { cause: answered.error })
  return answered.value
}

let made = 0
let store: DeviceStore
let quota: number
const now = new Date('2026-05-05T12:00:00')
const mega = 1024 * 1024

/** A photo of one day; its hash is one letter over and over. */
async function keep(letter: string, day: string, isSent: boolean): Promise<void> {
  const sha256 = letter.repeat(64)
  const entry = {
    ...{ id: `photo-${letter}`, run: 'run-1', project: 'own', kind: 'photo', schemaVersion: 1, author: 'R. Quist' },
    ...{ device: 'phone', capturedAt: `${day}T09:00:00`, supersedes: null, body: { sha256 } },
  } as const
  await must(store.add([entry], { sha256, type: 'image/png', content: new ArrayBuffer(10) }))
  if (isSent) await must(store.notePhoto(sha256, { state: 'sent' }))
}

const lettersOf = (photos: readonly { readonly sha256: string }[]) => photos.map(({ sha256 }) => sha256[0])

beforeEach(async () => {
  store = openDeviceStore(() => openTables(`free-${++made}`))
  quota = 1000 * mega
  vi.stubGlobal('navigator', { storage: { estimate: async () => ({ quota, usage: 0 }) } })
  await keep('a', '2026-05-04', true)
  await keep('b', '2026-05-05', true)
  await keep('c', '2026-05-04', false)
})

afterEach(() => {
  store.close()
  vi.unstubAllGlobals()
})

describe('photos that a device can do without', () => {
  test('are those of earlier days that the server has', async () => {
    expect(lettersOf(await must(freeablePhotos(store, now)))).toEqual(['a'])
  })

  test('are those of today too when room is short, and never one that was not sent', async () => {
    quota = 30 * mega
    expect(lettersOf(await must(freeablePhotos(store, now)))).toEqual(['a', 'b'])
  })

  test('are let go of once the server says again that it has them; one that it lacks is sent again', async () => {
    quota = 30 * mega
    const photos = await must(freeablePhotos(store, now))
    const freed = await must(freePhotos(store, photos, async (sha256) => ok(sha256[0] === 'a')))
    expect(freed).toEqual({ photos: 1, bytes: 10 })
    expect(await must(store.photo('a'.repeat(64)))).toBeUndefined()
    expect(await must(store.photo('b'.repeat(64)))).toBeDefined()
    expect(lettersOf(await must(store.unsentPhotos()))).toEqual(['b', 'c'])
  })
})

describe('photos that count as sent', () => {
  const unsent = async () => lettersOf(await must(store.unsentPhotos()))

  test('go to the server once more when it does not list them as stored', async () => {
    const asked: string[][] = []
    const among = async (hashes: readonly string[]) => {
      asked.push(hashes.map((hash) => hash[0]!))
      return ok(new Set(['b'.repeat(64)]))
    }
    await must(recheckSentPhotos(store, among))
    expect(asked).toEqual([['a', 'b']])
    expect(await unsent()).toEqual(['a', 'c'])
  })

  test('still count as sent when nobody answers', async () => {
    const trouble = { kind: 'unreachable', message: '', problems: [] } as const
    expect(await recheckSentPhotos(store, async () => err(trouble))).toMatchObject({ ok: false })
    expect(await unsent()).toEqual(['c'])
  })
})
