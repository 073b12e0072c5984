import { z } from 'zod'
import { sha256Text } from '../../formats/entry/entry-kinds.ts'
import type { StoredEntry } from '../../store/entry.ts'
import type { Project } from '../../store/read.ts'

/** The parts of a backup, which is a folder. Photos stand in it by their hash, each as its device sent it. */
export const [manifestName, projectsName, entriesName, photosName] = [
  'manifest.json',
  'projects.jsonl',
  'entries.jsonl',
  'photos',
] as const

/** A file of lines, each the JSON of one thing. */
const linesShape = z.object({ count: z.int().check(z.nonnegative()), sha256: sha256Text })

export const manifestShape = z.object({
  format: z.literal('lapwise-backup/1'),
  /** When the backup was begun, by the clock of the machine. */
  madeAt: z.string(),
  /** Version of the program that made it. */
  program: z.string(),
  projects: linesShape,
  entries: linesShape,
  photos: z.array(sha256Text),
})

export type Manifest = z.output<typeof manifestShape>

export const projectShape: z.ZodType<Project> = z.object({ id: z.string(), name: z.string(), createdAt: z.string() })

export const entryShape: z.ZodType<StoredEntry> = z.object({
  seq: z.int(),
  id: z.string(),
  project: z.string(),
  run: z.nullable(z.string()),
  kind: z.string(),
  schemaVersion: z.int(),
  author: z.string(),
  device: z.string(),
  capturedAt: z.string(),
  storedAt: z.string(),
  supersedes: z.nullable(z.string()),
  body: z.unknown(),
  bodyHash: sha256Text,
})
