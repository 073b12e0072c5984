import type { Reading } from '../core/measurement/reading.ts'
import type { EntryOf, PhotoBody } from '../formats/entry/entry-kinds.ts'
import type { InputProblem } from '../formats/input-problem.ts'

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
    if (isPicture(photo.bytes)) return []
    const found = photo.bytes.length === 0 ? 'an empty file' : 'a file that begins like none of them'
    return [{ file: photo.file, place: '', expected: 'a picture (JPEG, PNG or WebP)', found }]
  })
}

/**
 * Whether `bytes` begin as a JPEG, PNG or WebP picture does.
 * @source ITU-T T.81 B.1.1.3 (SOI); PNG specification, 5.2; RFC 9649, 2.4
 */
function isPicture(bytes: Uint8Array): boolean {
  const starts = (signature: readonly number[], at: number): boolean =>
    signature.every((byte, i) => bytes[at + i] === byte)
  return (
    starts([0xff, 0xd8, 0xff], 0) ||
    starts([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a], 0) ||
    (starts(ascii('RIFF'), 0) && starts(ascii('WEBP'), 8))
  )
}

const ascii = (text: string): readonly number[] => [...text].map((letter) => letter.charCodeAt(0))
