import { DetailedError, Upload } from 'tus-js-client'
import { err, ok } from '../../core/result.ts'
import { uploadsPath } from '../../protocol/addresses.ts'
import type { ErrorAnswer } from '../../protocol/error-answer.ts'
import type { DeviceStore } from './device-store.ts'
import type { PhotoRow } from './device-tables.ts'
import { heardError } from './heard.ts'
import { d } from './messages.ts'
import type { Answer, Trouble } from './run-source.ts'
import { hasPhoto } from './server-peer.ts'
import { fromStore } from './store-trouble.ts'

/** Bytes in one request: small enough to get through where a connection holds for some seconds. */
const pieceSize = 512 * 1024

/** Pauses before an upload that broke off is taken up again, milliseconds; then it waits for the next sync. */
const pauses = [500, 2000, 5000]

/**
 * Brings every photo that is only here to the server, one after the other. A photo counts as sent once the server says
 * that it has content of this hash. One that it refuses stays here and stops no other; the first refusal is told.
 */
export async function sendPhotos(store: DeviceStore): Answer<void> {
  const unsent = await store.unsentPhotos()
  if (!unsent.ok) return fromStore(unsent.error)
  let refusal: Awaited<Answer<void>> = ok(undefined)
  for (const photo of unsent.value) {
    const sent = await sendPhoto(store, photo)
    if (sent.ok) continue
    if (sent.error.kind !== 'refused') return sent
    if (refusal.ok) refusal = sent
  }
  return refusal
}

async function sendPhoto(store: DeviceStore, { sha256, uploadUrl }: PhotoRow): Answer<void> {
  const there = await hasPhoto(sha256)
  if (!there.ok) return there
  if (!there.value) {
    const file = await store.photo(sha256)
    if (!file.ok) return fromStore(file.error)
    if (file.value === undefined) throw new Error(`the bytes of photo ${sha256} are not on this device`)
    const { type, content } = file.value
    const sent = await upload(store, sha256, new Blob([content], { type }), uploadUrl)
    if (!sent.ok) return sent
    const arrived = await hasPhoto(sha256)
    if (!arrived.ok) return arrived
    if (!arrived.value) {
      // All pieces are there, yet it does not count: the server stopped before it could look. It begins anew.
      const forgotten = await store.notePhoto(sha256, { uploadUrl: null })
      if (!forgotten.ok) return fromStore(forgotten.error)
      return err({ kind: 'unreachable', message: d.trouble.unreachable, problems: [] })
    }
  }
  const noted = await store.notePhoto(sha256, { state: 'sent', uploadUrl: null })
  return noted.ok ? ok(undefined) : fromStore(noted.error)
}

/** Sends the pieces that the server lacks; an upload that it no longer knows begins anew. */
async function upload(store: DeviceStore, sha256: string, photo: Blob, uploadUrl: string | null): Answer<void> {
  let noted: Promise<unknown> = Promise.resolve()
  const sent = await new Promise<Awaited<Answer<void>>>((resolve) => {
    const sending = new Upload(photo, {
      endpoint: uploadsPath,
      uploadUrl,
      metadata: { sha256 },
      headers: { accept: 'application/json' },
      chunkSize: pieceSize,
      retryDelays: pauses,
      // Which upload goes on is told by the hash, in the device's own store.
      storeFingerprintForResuming: false,
      onUploadUrlAvailable: () => {
        noted = store.notePhoto(sha256, { uploadUrl: sending.url })
      },
      onSuccess: () => resolve(ok(undefined)),
      onError: (error) => resolve(troubleOf(error)),
    })
    sending.start()
  })
  await noted
  return sent
}

async function troubleOf(error: Error): Answer<void> {
  const response = error instanceof DetailedError ? error.originalResponse : null
  if (response === null || response === undefined)
    return err({ kind: 'unreachable', message: d.trouble.unreachable, problems: [] })
  const status = response.getStatus()
  return err({ kind: status >= 500 ? 'fault' : 'refused', ...(await heardBody(response.getBody(), status)) })
}

/** The server says it as data; one of an earlier version, and what stands between, in words. */
async function heardBody(body: string, status: number): Promise<Pick<Trouble, 'message' | 'problems'>> {
  if (!body.startsWith('{')) return { message: body || d.trouble.answered(status), problems: [] }
  return heardError((JSON.parse(body) as ErrorAnswer).error)
}
