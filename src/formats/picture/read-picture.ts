import { err, ok, type Result } from '../../core/result.ts'
import type { FileProblem, PictureFault } from '../../words/problems/file.ts'
import { pictureSize } from './picture-size.ts'

/** A picture by its structure, from its first byte to its last. */
export interface Picture {
  readonly type: 'image/jpeg' | 'image/png' | 'image/webp'
  /** How many bytes it is long; cameras append other things to a file, such as a film. */
  readonly length: number
  /** Pixels, as it states them before anything is drawn. */
  readonly width: number
  readonly height: number
}

/**
 * Most pixels of a picture that is read: 64 million, our judgement. Phones take up to 50 million; in the largest depth
 * these are 512 MB while they are read, and a small file can claim thousands of millions.
 */
const mostPixels = 64_000_000

/** What a file of a photo has to be. */
export const wholePicture: FileProblem = { kind: 'whole picture', megapixels: mostPixels / 1e6 }

/**
 * The JPEG, PNG or WebP picture in `bytes`, walked through from marker to marker or chunk to chunk as far as its end.
 * Its pixels are not looked at, only how many it says there are.
 * @source ITU-T T.81, B.1.1 and B.2 (markers); PNG specification, 5.2 to 5.3 (chunks); RFC 9649, 2.3 to 2.4 (RIFF)
 */
export function readPicture(bytes: Uint8Array): Result<Picture, PictureFault> {
  if (bytes.length === 0) return err({ kind: 'empty file' })
  const starts = (signature: readonly number[], at: number): boolean =>
    signature.every((byte, i) => bytes[at + i] === byte)
  const found = (type: Picture['type'], length: number | null): Result<Picture, PictureFault> => {
    if (length === null || length > bytes.length) return err({ kind: 'picture cut short' })
    const size = pictureSize(type, bytes.subarray(0, length))
    if (size === null) return err({ kind: 'picture without size' })
    const { width, height } = size
    if (width * height > mostPixels) return err({ kind: 'picture of pixels', width, height })
    return ok({ type, length, width, height })
  }
  if (starts([0xff, 0xd8, 0xff], 0)) return found('image/jpeg', endOfJpeg(bytes))
  if (starts([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a], 0)) return found('image/png', endOfPng(bytes))
  if (starts(ascii('RIFF'), 0) && starts(ascii('WEBP'), 8)) return found('image/webp', endOfRiff(bytes))
  return err({ kind: 'no picture' })
}

const ascii = (text: string): readonly number[] => [...text].map((letter) => letter.charCodeAt(0))

const viewOf = (bytes: Uint8Array): DataView => new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)

/** Just after the end-of-image marker; null where the file ends before, or before any scan. */
function endOfJpeg(bytes: Uint8Array): number | null {
  const view = viewOf(bytes)
  let at = 2
  let scans = 0
  while (at + 1 < bytes.length) {
    const marker = bytes[at + 1]!
    if (bytes[at] !== 0xff) return null
    // Fill bytes, restart markers and the stuffed zero stand alone.
    if (marker === 0xff) at += 1
    else if (marker === 0xd9) return scans === 0 ? null : at + 2
    else if (marker === 0x01 || (marker >= 0xd0 && marker <= 0xd7)) at += 2
    else {
      if (at + 4 > bytes.length) return null
      at += 2 + view.getUint16(at + 2)
      if (marker !== 0xda) continue
      scans++
      at = endOfScan(bytes, at)
    }
  }
  return null
}

/** Where the entropy-coded data of a scan end: at the next marker that is none of theirs. */
function endOfScan(bytes: Uint8Array, from: number): number {
  for (let at = bytes.indexOf(0xff, from); at !== -1; at = bytes.indexOf(0xff, at + 1)) {
    const next = bytes[at + 1]
    if (next !== undefined && next !== 0 && next !== 0xff && !(next >= 0xd0 && next <= 0xd7)) return at
  }
  return bytes.length
}

/** Just after the chunk IEND. */
function endOfPng(bytes: Uint8Array): number | null {
  const view = viewOf(bytes)
  for (let at = 8; at + 12 <= bytes.length; ) {
    const end = at + 12 + view.getUint32(at)
    if (String.fromCharCode(...bytes.subarray(at + 4, at + 8)) === 'IEND') return end
    at = end
  }
  return null
}

const endOfRiff = (bytes: Uint8Array): number | null =>
  bytes.length < 12 ? null : 8 + viewOf(bytes).getUint32(4, true)
