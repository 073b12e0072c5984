import { createHash } from 'node:crypto'
import { createReadStream } from 'node:fs'
import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import type { z } from 'zod'
import { printProblem } from '../../formats/input-problem.ts'
import { readJson } from '../../formats/read-json.ts'
import type { StoredEntry } from '../../store/entry.ts'
import type { Project } from '../../store/read.ts'
import { english } from '../../words/english.ts'
import {
  entriesName,
  entryShape,
  type Manifest,
  manifestName,
  manifestShape,
  projectShape,
  projectsName,
} from './backup-shape.ts'

/** Entries given in one piece. */
const piece = 1000

/** What a part says that is not as it was written: in words, with file and place. */
export class NotSo extends Error {}

export interface ReadBackup {
  readonly manifest: Manifest
  readonly projects: readonly Project[]
  /** In the order of storing. */
  entries(): AsyncGenerator<readonly StoredEntry[]>
}

/**
 * The backup in the folder `from`, the bytes of its lines compared with their hashes.
 * @throws NotSo, also while its entries are read; the system's error where a file cannot be read
 */
export async function readBackup(from: string): Promise<ReadBackup> {
  const manifest = checked(manifestShape, manifestName, await readFile(join(from, manifestName), 'utf8'))
  await checkLines(from, projectsName, manifest.projects)
  await checkLines(from, entriesName, manifest.entries)
  const projects: Project[] = []
  for await (const part of linesOf(from, projectsName, projectShape)) projects.push(...part)
  return { manifest, projects, entries: () => linesOf(from, entriesName, entryShape) }
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
