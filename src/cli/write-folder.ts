import { randomUUID } from 'node:crypto'
import { mkdir, open, readdir, rename, rm } from 'node:fs/promises'
import { dirname, join, resolve } from 'node:path'
import { theirs } from '../core/theirs.ts'
import { BadInput } from './command.ts'

interface NamedBytes {
  /** With `/` between folder and file. */
  readonly name: string
  readonly bytes: Uint8Array
}

/** Refuses a folder that holds anything, so that no file of another packet is ever replaced or mixed in. */
export async function expectFree(folder: string): Promise<void> {
  const found = await readdir(folder).then(
    (names) => (names.length === 0 ? null : ({ kind: 'folder with files', files: names.length } as const)),
    (cause: NodeJS.ErrnoException) => {
      if (cause.code === 'ENOENT') return null
      if (cause.code === 'ENOTDIR') return { kind: 'a file' } as const
      throw cause
    },
  )
  if (found !== null) throw new BadInput([{ file: folder, place: '', expected: { kind: 'free folder' }, found }])
}

/**
 * Writes a whole folder or none: aside first, onto the disk, then into place. Only a kill or a loss of power leaves the
 * folder aside behind.
 * @param writeOne  how one file comes onto the disk
 */
export async function writeFolder(
  folder: string,
  files: readonly NamedBytes[],
  writeOne: (path: string, bytes: Uint8Array) => Promise<void> = writeToDisk,
): Promise<void> {
  const place = resolve(folder)
  const aside = `${place}.${randomUUID()}.partial`
  try {
    await mkdir(aside)
    for (const { name, bytes } of files) {
      await mkdir(dirname(join(aside, name)), { recursive: true })
      await writeOne(join(aside, name), bytes)
    }
    await rename(aside, place)
  } catch (cause) {
    await rm(aside, { recursive: true, force: true })
    const { code = '' } = cause as NodeJS.ErrnoException
    if (!unwritable.has(code)) throw cause
    throw new BadInput([{ file: folder, place: '', expected: { kind: 'writable folder' }, found: theirs(code) }])
  }
}

const unwritable: ReadonlySet<string> = new Set([
  'EACCES',
  'EDQUOT',
  'EEXIST',
  'EFBIG',
  'EIO',
  'ENOENT',
  'ENOSPC',
  'ENOTDIR',
  'ENOTEMPTY',
  'EPERM',
  'EROFS',
])

async function writeToDisk(path: string, bytes: Uint8Array): Promise<void> {
  const file = await open(path, 'wx')
  try {
    await file.writeFile(bytes)
    await file.sync()
  } finally {
    await file.close()
  }
}
