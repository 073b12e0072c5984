import { createHash } from 'node:crypto'
import { existsSync } from 'node:fs'
import { type FileHandle, mkdir, open, readdir, rename, rm } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import { err, ok, type Result } from '../../core/result.ts'
import { sha256Text } from '../../formats/entry/entry-kinds.ts'
import type { Store } from '../../store/store.ts'
import { syncToDisk } from '../sync-to-disk.ts'
import { entriesName, type Manifest, manifestName, photosName, projectsName } from './backup-shape.ts'
import { copyByHash } from './copy-by-hash.ts'
import { entriesOf, StoreSilent } from './entries-of.ts'

export interface BackupMade {
  readonly to: string
  readonly entries: number
  readonly photos: number
  /** Photos on the disk that are not what their names say; they are left out. */
  readonly damaged: readonly string[]
}

/**
 * Copies all that the store and the photo folder hold into the new folder `to`, also while the store is in use: entries are
 * only ever appended, so what is read in their order is the store as it was at some moment. The folder has its name only
 * once all of it is on the disk. A problem is told in words, and then nothing is left.
 *
 * @param photos   the folder of photos
 * @param version  of this program
 */
export async function writeBackup(
  store: Store,
  photos: string,
  to: string,
  madeAt: Date,
  version: string,
): Promise<Result<BackupMade, string>> {
  if (existsSync(to)) return err(`${to} is there already; name a folder that is not`)
  const unfinished = `${to}.unfinished`
  try {
    await rm(unfinished, { recursive: true, force: true })
    await mkdir(join(unfinished, photosName), { recursive: true })
    const projects = await store.projects()
    if (!projects.ok) return err(projects.error.reason)
    const manifest = {
      format: 'lapwise-backup/1',
      madeAt: madeAt.toISOString(),
      program: version,
      projects: await writeLines(join(unfinished, projectsName), [projects.value]),
      entries: await writeLines(join(unfinished, entriesName), entriesOf(store)),
      ...(await copyPhotos(photos, join(unfinished, photosName))),
    } as const
    const { damaged, ...told } = manifest
    await writeWhole(join(unfinished, manifestName), `${JSON.stringify(told satisfies Manifest, null, 2)}\n`)
    for (const folder of [join(unfinished, photosName), unfinished]) await syncToDisk(folder)
    await rename(unfinished, to)
    await syncToDisk(dirname(to))
    return ok({ to, entries: manifest.entries.count, photos: manifest.photos.length, damaged })
  } catch (cause) {
    await rm(unfinished, { recursive: true, force: true })
    if (cause instanceof StoreSilent || (cause as NodeJS.ErrnoException).code !== undefined)
      return err((cause as Error).message)
    throw cause
  }
}

async function writeLines(
  path: string,
  pieces: AsyncIterable<readonly unknown[]> | Iterable<readonly unknown[]>,
): Promise<Manifest['entries']> {
  const hash = createHash('sha256')
  let count = 0
  await writing(path, async (file) => {
    for await (const part of pieces) {
      const text = part.map((one) => `${JSON.stringify(one)}\n`).join('')
      hash.update(text)
      count += part.length
      await file.writeFile(text)
    }
  })
  return { count, sha256: hash.digest('hex') }
}

const writeWhole = (path: string, text: string): Promise<void> => writing(path, (file) => file.writeFile(text))

async function writing(path: string, step: (file: FileHandle) => Promise<void>): Promise<void> {
  const file = await open(path, 'wx')
  try {
    await step(file)
    await file.sync()
  } finally {
    await file.close()
  }
}

async function copyPhotos(
  from: string,
  to: string,
): Promise<{ readonly photos: string[]; readonly damaged: string[] }> {
  const [photos, damaged]: [string[], string[]] = [[], []]
  if (!existsSync(from)) return { photos, damaged }
  for (const name of (await readdir(from)).filter((each) => sha256Text.safeParse(each).success).sort()) {
    const found = await copyByHash(join(from, name), join(to, name), name)
    ;(found ? photos : damaged).push(name)
  }
  return { photos, damaged }
}
