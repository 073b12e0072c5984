import { Zip, ZipDeflate, ZipPassThrough } from 'fflate'
import type { Entry } from '../entry/entry-kinds.ts'
import {
  entriesName,
  type HandoverManifest,
  type HandoverPhoto,
  handoverVersion,
  manifestName,
  photoName,
} from './handover-shape.ts'

/** What a handover is made of. */
export interface HandoverInput extends Pick<HandoverManifest, 'device' | 'writtenAt' | 'runs' | 'elsewhere'> {
  /** Of these runs, in the order in which the device came by them: nothing before what it needs. */
  readonly entries: readonly Entry[]
  readonly photos: readonly HandoverPhoto[]
}

/** Most bytes of one ZIP file without its later extension, which not every program reads. */
const largestHandover = 0xffff_ffff

/**
 * A handover, in pieces, so that of its photos one at a time is in memory; the same input gives the same bytes.
 * @param content  the bytes of a photo, asked for when they are needed
 * @param sha256   hexadecimal hash
 * @throws RangeError when the photos together are more than a ZIP file holds
 */
export async function* writeHandover(
  { entries, photos, ...head }: HandoverInput,
  content: (photo: HandoverPhoto) => Promise<Uint8Array>,
  sha256: (bytes: Uint8Array<ArrayBuffer>) => string | Promise<string>,
): AsyncGenerator<Uint8Array> {
  const bytes = photos.reduce((sum, photo) => sum + photo.bytes, 0)
  if (bytes > largestHandover) throw new RangeError(`photos of ${bytes} bytes do not go into one ZIP file`)
  const lines = new TextEncoder().encode(entries.map((entry) => `${JSON.stringify(entry)}\n`).join(''))
  const { device, writtenAt, runs, elsewhere } = head
  const manifest: HandoverManifest = {
    format: `lapwise-handover/${handoverVersion}`,
    ...{ device, writtenAt, runs, entriesSha256: await sha256(lines), photos: [...photos], elsewhere },
  }
  const pieces: Uint8Array[] = []
  const zip = new Zip((fault, piece) => {
    if (fault !== null) throw fault
    pieces.push(piece)
  })
  const add = (part: ZipDeflate | ZipPassThrough, content: Uint8Array): readonly Uint8Array[] => {
    // The first day that ZIP can say, in the time of this machine, which is what ZIP writes.
    part.mtime = new Date(1980, 0, 1)
    zip.add(part)
    part.push(content, true)
    return pieces.splice(0)
  }
  // First, so that who has only the beginning of a file knows what it was.
  yield* add(new ZipDeflate(manifestName), new TextEncoder().encode(`${JSON.stringify(manifest, null, 2)}\n`))
  yield* add(new ZipDeflate(entriesName), lines)
  for (const photo of photos) yield* add(new ZipPassThrough(photoName(photo)), await content(photo))
  zip.end()
  yield* pieces
}
