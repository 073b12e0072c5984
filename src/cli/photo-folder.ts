import { readdir, readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { theirs } from '../core/theirs.ts'
import { filesOfPhoto } from '../operations/packet-photos.ts'
import type { NamedPhoto } from '../operations/record-photos.ts'
import { BadInput } from './command.ts'

/** The photos of `names` that are in the folder; which are missing, the packet says. */
export async function readPhotos(names: readonly string[], folder: string): Promise<readonly NamedPhoto[]> {
  const listed = await readdir(folder, { withFileTypes: true }).catch((cause: NodeJS.ErrnoException) => {
    if (cause.code !== 'ENOENT' && cause.code !== 'ENOTDIR' && cause.code !== 'EACCES') throw cause
    throw new BadInput([{ file: folder, place: '', expected: { kind: 'readable folder' }, found: theirs(cause.code) }])
  })
  const files = listed.filter((entry) => !entry.isDirectory()).map(({ name }) => name)
  const found = names.map((photo) => ({ photo, files: filesOfPhoto(photo, files) }))
  const unsure = found.filter((one) => one.files.length > 1)
  if (unsure.length > 0)
    throw new BadInput(
      unsure.map((one) => ({
        file: folder,
        place: `photo ${JSON.stringify(one.photo)}`,
        expected: { kind: 'one picture of that name' },
        found: theirs(one.files.join(', ')),
      })),
    )
  return Promise.all(
    found.flatMap(({ photo, files: [file] }) =>
      file === undefined ? [] : [readFile(join(folder, file)).then((bytes) => ({ photo, file, bytes }))],
    ),
  )
}
