import { createHash } from 'node:crypto'
import { createReadStream } from 'node:fs'
import { mkdir, readFile } from 'node:fs/promises'
import { join } from 'node:path'
import type { z } from 'zod'
import { err, ok, type Result } from '../../core/result.ts'
import { printProblem } from '../../formats/input-problem.ts'
import { readJson } from '../../formats/read-json.ts'
import type { Project } from '../../store/read.ts'
import type { Store } from '../../store/store.ts'
import { english } from '../../words/english.ts'
import {
  entriesName,
  entryShape,
  type Manifest,
  manifestName,
  manifestShape,
  photosName,
  projectShape,
  projectsName,
} from './backup-shape.ts'
import { copyByHash } from './copy-by-hash.ts'

/** Entries put back in one statement. */
const piece = 1000

export interface Restored {
  readonly entries: number
  readonly photos: number
  /** Photos that the backup names and does not hold as they were. */
  readonly missing: readonly string[]
}

/** What a part says that is not as it was written. */
class NotSo extends Error {}

/**
 * Puts the backup in the folder `from` into an empty store and the folder of photos. Everything is looked at before anything
 * is stored: a line that is not as it was written is told in words, with its file and place, and nothing is put back.
 */
export async function restoreBackup(store: Store, photos: string, from: string): Promise<Result<Restored, string>> {
  try {
    const manifest = checked(manifestShape, manifestName, await readFile(join(from, manifestName), 'utf8'))
    await checkLines(from, projectsName, manifest.projects)
    await checkLines(from, entriesName, manifest.entries)
    const projects: Project[] = []
    for await (const part of linesOf(from, projectsName, projectShape)) projects.push(...part)
    const missing = await bringPhotos(join(from, photosName), photos, manifest.photos)
    const put = await store.putBack({ projects, entries: linesOf(from, entriesName, entryShape) })
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

function checked<T>(shape: z.ZodType<T>, file: string, text: string): T {
  const read = readJson(file, text, shape)
  if (read.ok) return read.value
  throw new NotSo(printProblem(read.error[0]!, english(null)))
}

async function checkLines(from: string, name: string, { sha256 }: Manifest['entries']): Promise<void> {
  const hash = createHash('sha256')
  for await (const bytes of createReadStream(join(from, name))) hash.update(bytes)
  if (hash.digest('hex') !== sha256)
    throw new NotSo(`${name}: expected the bytes of which ${manifestName} holds the hash`)
}

async function* linesOf<T>(from: string, name: string, shape: z.ZodType<T>): AsyncGenerator<readonly T[]> {
  let part: T[] = []
  let number = 0
  for await (const line of endedLines(join(from, name))) {
    number += 1
    part.push(checked(shape, `${name}, line ${number}`, line))
    if (part.length < piece) continue
    yield part
    part = []
  }
  if (part.length > 0) yield part
}

/** Ended by a line feed alone: what else ends lines in other programs (U+2028) may stand in what people wrote. */
async function* endedLines(path: string): AsyncGenerator<string> {
  let rest = ''
  for await (const text of createReadStream(path, 'utf8') as AsyncIterable<string>) {
    const lines = (rest + text).split('\n')
    rest = lines.pop()!
    yield* lines
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
