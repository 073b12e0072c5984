import type { Reading } from '../core/measurement/reading.ts'
import { pictureTrouble } from '../documents/pdf/typeset.ts'
import type { EntryOf, PhotoBody } from '../formats/entry/entry-kinds.ts'
import type { InputProblem } from '../formats/input-problem.ts'
import { readPicture } from '../formats/picture/read-picture.ts'

/** A photo as the readings name it, with the file that holds it. */
export interface NamedPhoto {
  readonly photo: string
  readonly file: string
  readonly bytes: Uint8Array
}

/** What a photo is that the readings name and nobody handed in: a problem, or left out and named as such. */
export type AbsentPhotos = 'problem' | 'left out'

/** Every photo that the readings name or that was entered, once, in their order. */
export const photosNamed = (
  readings: readonly Reading[],
  entered: readonly EntryOf<PhotoBody>[],
): readonly string[] => [
  ...new Set([...readings.flatMap(({ photos }) => photos), ...entered.map(({ body }) => body.sha256)]),
]

/** The files of a folder that may hold `photo`: of its very name, or else its name with the ending of a picture. */
export function filesOfPhoto(photo: string, folder: readonly string[]): readonly string[] {
  if (folder.includes(photo)) return [photo]
  return folder.filter((file) => /\.(jpe?g|png|webp)$/i.test(file) && file.replace(/\.[^.]+$/, '') === photo).sort()
}

/**
 * Photos that nobody handed in, and files that are no picture; none where photos are left out.
 * @param file  what names them, for the problems
 */
export function photoProblems(
  named: readonly string[],
  photos: readonly NamedPhoto[] | null,
  absent: AbsentPhotos,
  file: string,
): readonly InputProblem[] {
  if (photos === null) return []
  return named.flatMap((name): InputProblem[] => {
    const photo = photos.find((one) => one.photo === name)
    if (photo === undefined) {
      if (absent === 'left out') return []
      return [
        { file, place: `photo ${JSON.stringify(name)}`, expected: 'a picture of that name', found: 'no such file' },
      ]
    }
    const fault = faultOf(photo.bytes)
    return fault === null
      ? []
      : [{ file: photo.file, place: '', expected: 'a whole picture (JPEG, PNG or WebP)', found: fault }]
  })
}

/** The picture alone, without what a camera appends to it. */
export function pictureOf({ file, bytes }: NamedPhoto): Uint8Array {
  const picture = readPicture(bytes)
  if (!picture.ok) throw new RangeError(`${file} is ${picture.error}`)
  return bytes.subarray(0, picture.value.length)
}

/** By its structure as far as its end, and then as the typesetter reads it. */
function faultOf(bytes: Uint8Array): string | null {
  const picture = readPicture(bytes)
  if (!picture.ok) return picture.error
  const trouble = pictureTrouble(bytes.subarray(0, picture.value.length))
  return trouble && `a picture that cannot be read: ${trouble}`
}
