import { ok } from '../../core/result.ts'
import type { DeviceStore } from './device-store.ts'
import type { PhotoRow } from './device-tables.ts'
import { hasRoomFor } from './room.ts'
import type { Answer, PhotoSum } from './run-source.ts'
import { fromStore } from './store-trouble.ts'

/** Below so many bytes of room the photos of today can be let go of too: some twenty photos. Our judgement. */
const roomy = 40 * 1024 * 1024

export const sumOf = (photos: readonly Pick<PhotoRow, 'bytes'>[]): PhotoSum => ({
  photos: photos.length,
  bytes: photos.reduce((sum, { bytes }) => sum + bytes, 0),
})

/**
 * Photos whose bytes this device can do without, since the server has them: those of days before, so that the visit
 * that is under way has its own at hand; all of them where room is short.
 * @param now  by the clock of the device
 */
export async function freeablePhotos(store: DeviceStore, now: Date): Answer<readonly PhotoRow[]> {
  const [photos, entries] = await Promise.all([store.photos(), store.entries('photo')])
  if (!photos.ok) return fromStore(photos.error)
  if (!entries.ok) return fromStore(entries.error)
  const sent = photos.value.filter(({ state }) => state === 'sent')
  if (sent.length === 0 || !(await hasRoomFor(roomy))) return ok(sent)
  const today = new Set(
    entries.value
      .filter(({ capturedAt }) => new Date(capturedAt).toDateString() === now.toDateString())
      .map(({ body }) => (body as { readonly sha256: string }).sha256),
  )
  return ok(sent.filter(({ sha256 }) => !today.has(sha256)))
}

/**
 * Photos that count as sent and that the server does not list as stored, as after it was put back or a disk of it was
 * lost, count as unsent from then on: their bytes are here, and go there once more.
 */
export async function recheckSentPhotos(
  store: DeviceStore,
  storedAmong: (hashes: readonly string[]) => Answer<ReadonlySet<string>>,
): Answer<void> {
  const photos = await store.photos()
  if (!photos.ok) return fromStore(photos.error)
  const sent = photos.value.flatMap(({ state, sha256 }) => (state === 'sent' ? [sha256] : []))
  if (sent.length === 0) return ok(undefined)
  const stored = await storedAmong(sent)
  if (!stored.ok) return stored
  for (const sha256 of sent.filter((one) => !stored.value.has(one))) {
    const noted = await store.notePhoto(sha256, { state: 'here', uploadUrl: null })
    if (!noted.ok) return fromStore(noted.error)
  }
  return ok(undefined)
}

/**
 * Lets go of their bytes, of each only once the server said just now that it has it; one that it lacks counts as not
 * sent from then on. The entries stay, and the pictures are fetched when they are shown.
 */
export async function freePhotos(
  store: DeviceStore,
  photos: readonly PhotoRow[],
  isOnServer: (sha256: string) => Answer<boolean>,
): Answer<PhotoSum> {
  const freed: PhotoRow[] = []
  for (const photo of photos) {
    const there = await isOnServer(photo.sha256)
    if (!there.ok) return there
    const noted = there.value
      ? await store.freePhoto(photo.sha256)
      : await store.notePhoto(photo.sha256, { state: 'here', uploadUrl: null })
    if (!noted.ok) return fromStore(noted.error)
    if (noted.value === true) freed.push(photo)
  }
  return ok(sumOf(freed))
}
