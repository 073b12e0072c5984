import { err, ok, type Result } from '../../core/result.ts'
import type { PhotoBody } from '../../formats/entry/entry-kinds.ts'
import { type PhotoOrigin, photoOrigin } from './photo-origin.ts'
import { shrunk } from './photo-size.ts'

export interface PreparedPhoto {
  readonly bytes: ArrayBuffer
  readonly type: PhotoBody['type']
  /** Upright, as it is shown. */
  readonly width: number
  readonly height: number
  readonly origin: PhotoOrigin
}

/** `heic`: in the format of some phones, which this browser cannot read. */
export type PhotoRefusal = 'heic' | 'no picture'

/**
 * The photo in `file` turned upright, and shrunk unless the original is to be kept. The original is kept as it is only
 * in a format that every browser reads.
 */
export async function preparePhoto(file: Blob, keepOriginal: boolean): Promise<Result<PreparedPhoto, PhotoRefusal>> {
  const bytes = await file.arrayBuffer()
  let picture: ImageBitmap
  try {
    picture = await createImageBitmap(file, { imageOrientation: 'from-image' })
  } catch {
    return err(isHeic(bytes) ? 'heic' : 'no picture')
  }
  const origin = await photoOrigin(bytes)
  const { width, height } = picture
  const type = commonType(file.type)
  if (keepOriginal && type !== null) {
    picture.close()
    return ok({ bytes, type, width, height, origin })
  }
  const scale = keepOriginal ? 1 : Math.min(1, shrunk.edge / Math.max(width, height))
  const canvas = document.createElement('canvas')
  canvas.width = Math.round(width * scale)
  canvas.height = Math.round(height * scale)
  canvas.getContext('2d')!.drawImage(picture, 0, 0, canvas.width, canvas.height)
  picture.close()
  const jpeg = await jpegOf(canvas)
  return jpeg === null
    ? err('no picture')
    : ok({ bytes: jpeg, type: 'image/jpeg', width: canvas.width, height: canvas.height, origin })
}

export async function jpegOf(canvas: HTMLCanvasElement): Promise<ArrayBuffer | null> {
  const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/jpeg', shrunk.quality))
  return blob === null ? null : blob.arrayBuffer()
}

const commonType = (type: string): PhotoBody['type'] | null =>
  (['image/jpeg', 'image/png', 'image/webp'] as const).find((one) => one === type) ?? null

/** `ftyp` with a brand of the High Efficiency Image File Format (ISO/IEC 23008-12). */
function isHeic(bytes: ArrayBuffer): boolean {
  const start = String.fromCharCode(...new Uint8Array(bytes, 0, Math.min(12, bytes.byteLength)))
  return /^.{4}ftyp(heic|heix|hevc|heim|heis|mif1|msf1)/s.test(start)
}
