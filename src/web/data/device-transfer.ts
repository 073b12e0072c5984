import { ok } from '../../core/result.ts'
import { type PhotoInFile, writeDeviceFile } from '../../formats/entry/device-file.ts'
import { now } from './device.ts'
import { withoutPlace } from './device-entry.ts'
import type { DeviceStore } from './device-store.ts'
import type { Answer } from './run-source.ts'
import { fromStore } from './store-trouble.ts'

/** Everything on this device as one file. */
export async function exportDevice(store: DeviceStore, device: string): Answer<Blob> {
  const [entries, photos] = await Promise.all([store.everything(), store.photos()])
  if (!entries.ok) return fromStore(entries.error)
  if (!photos.ok) return fromStore(photos.error)
  const pieces: Blob[] = []
  try {
    const each = photosOf(
      store,
      photos.value.map(({ sha256 }) => sha256),
    )
    for await (const piece of writeDeviceFile({ device, writtenAt: now() }, entries.value.map(withoutPlace), each))
      pieces.push(new Blob([piece]))
  } catch (cause) {
    if (cause instanceof Unread) return cause.answer
    throw cause
  }
  return ok(new Blob(pieces, { type: 'application/json' }))
}

/** A photo that could not be read ends the writing: a file without it would not be everything. */
class Unread extends Error {
  constructor(readonly answer: ReturnType<typeof fromStore>) {
    super('a photo of this device cannot be read')
  }
}

async function* photosOf(store: DeviceStore, hashes: readonly string[]): AsyncGenerator<PhotoInFile> {
  for (const hash of hashes) {
    const photo = await store.photo(hash)
    if (!photo.ok) throw new Unread(fromStore(photo.error))
    if (photo.value === undefined) continue
    const { sha256, type, content } = photo.value
    yield { sha256, type: type as PhotoInFile['type'], base64: toBase64(new Uint8Array(content)) }
  }
}

export function toBase64(bytes: Uint8Array): string {
  let characters = ''
  // More arguments at a time would overflow some browsers' stack.
  for (let start = 0; start < bytes.length; start += 0x8000)
    characters += String.fromCharCode(...bytes.subarray(start, start + 0x8000))
  return btoa(characters)
}
