import { mkdir } from 'node:fs/promises'
import { join } from 'node:path'
import { err, ok, type Result } from '../../core/result.ts'
import type { Store } from '../../store/store.ts'
import { entriesName, photosName } from './backup-shape.ts'
import { copyByHash } from './copy-by-hash.ts'
import { NotSo, readBackup } from './read-backup.ts'

export interface Restored {
  readonly entries: number
  readonly photos: number
  /** Photos that the backup names and does not hold as they were. */
  readonly missing: readonly string[]
}

/**
 * Puts the backup in the folder `from` into an empty store and the folder of photos. Everything is looked at before anything
 * is stored: a line that is not as it was written is told in words, with its file and place, and nothing is put back.
 */
export async function restoreBackup(store: Store, photos: string, from: string): Promise<Result<Restored, string>> {
  try {
    const { manifest, projects, entries } = await readBackup(from)
    const missing = await bringPhotos(join(from, photosName), photos, manifest.photos)
    const put = await store.putBack({ projects, entries: entries() })
    if (put.ok) return ok({ entries: put.value.entries, photos: manifest.photos.length - missing.length, missing })
    switch (put.error.kind) {
      case 'not empty':
        return err('the store has something in it already; a backup is put into an empty one')
      case 'another hash':
        return err(`${entriesName}: entry ${put.error.id}: its body is not the one that was stored`)
      case 'unavailable':
        return err(put.error.reason)
    }
  } catch (cause) {
    if (cause instanceof NotSo || (cause as NodeJS.ErrnoException).code !== undefined)
      return err((cause as Error).message)
    throw cause
  }
}

async function bringPhotos(from: string, to: string, names: readonly string[]): Promise<readonly string[]> {
  await mkdir(to, { recursive: true })
  const missing: string[] = []
  for (const name of names) {
    const found = await copyByHash(join(from, name), join(to, name), name).catch((cause: NodeJS.ErrnoException) => {
      if (cause.code === 'ENOENT') return false
      throw cause
    })
    if (!found) missing.push(name)
  }
  return missing
}
