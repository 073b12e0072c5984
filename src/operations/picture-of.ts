import { readPicture } from '../formats/picture/read-picture.ts'
import type { NamedPhoto } from './record-photos.ts'

/** The picture alone, without what a camera appends to it. */
export function pictureOf({ file, bytes }: NamedPhoto): Uint8Array {
  const picture = readPicture(bytes)
  if (!picture.ok) throw new RangeError(`${file} is no picture: ${picture.error.kind}`)
  return bytes.subarray(0, picture.value.length)
}
