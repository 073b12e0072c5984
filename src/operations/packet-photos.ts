import { err, ok, type Result } from '../core/result.ts'
import { pictureTrouble } from '../documents/pdf/typeset.ts'
import type { InputProblem } from '../formats/input-problem.ts'
import { readPicture, wholePicture } from '../formats/picture/read-picture.ts'
import type { PictureFault } from '../words/problems/file.ts'
import type { NamedPhoto } from './record-photos.ts'

/** What a photo is that is named and was not handed in, or cannot be read: a problem, or left out and named as such. */
export type AbsentPhotos = 'problem' | 'left out'

/** The photos of a packet: those that can be read, and those that cannot, with the reason. */
export interface SoundPhotos {
  /** Null where photos are left out. */
  readonly photos: readonly NamedPhoto[] | null
  readonly unread: readonly { readonly photo: string; readonly why: PictureFault }[]
}

/** The files of a folder that may hold `photo`: of its very name, or else its name with the ending of a picture. */
export function filesOfPhoto(photo: string, folder: readonly string[]): readonly string[] {
  if (folder.includes(photo)) return [photo]
  return folder.filter((file) => /\.(jpe?g|png|webp)$/i.test(file) && file.replace(/\.[^.]+$/, '') === photo).sort()
}

/**
 * The photos that can be read; or a problem for each that nobody handed in and each file that is no picture, unless
 * these are to be left out.
 * @param file  what names the photos, for the problems
 */
export async function soundPhotos(
  named: readonly string[],
  photos: readonly NamedPhoto[] | null,
  absent: AbsentPhotos,
  file: string,
): Promise<Result<SoundPhotos, readonly InputProblem[]>> {
  if (photos === null) return ok({ photos, unread: [] })
  const looked = await Promise.all(photos.map(async (photo) => ({ photo, why: await pictureFault(photo.bytes) })))
  const sound = looked.filter(({ why }) => why === null).map(({ photo }) => photo)
  const unread = looked.flatMap(({ photo, why }) => (why === null ? [] : [{ ...photo, why }]))
  if (absent === 'left out') return ok({ photos: sound, unread })
  const problems: readonly InputProblem[] = [
    ...unread.map((one) => ({ file: one.file, place: '', expected: wholePicture, found: one.why })),
    ...named
      .filter((name) => !photos.some(({ photo }) => photo === name))
      .map(
        (name): InputProblem => ({
          ...{ file, place: `photo ${JSON.stringify(name)}` },
          ...{ expected: { kind: 'picture of that name' }, found: { kind: 'no such file' } },
        }),
      ),
  ]
  return problems.length > 0 ? err(problems) : ok({ photos: sound, unread: [] })
}

/** Why bytes are no picture that can be read: by their structure as far as its end, and then as the typesetter reads it. */
export async function pictureFault(bytes: Uint8Array): Promise<PictureFault | null> {
  const picture = readPicture(bytes)
  if (!picture.ok) return picture.error
  const trouble = await pictureTrouble(bytes.subarray(0, picture.value.length))
  return trouble === null ? null : { kind: 'unreadable picture', reason: trouble }
}
