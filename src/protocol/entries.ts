import * as z from 'zod/mini'
import type { Rejection } from '../words/answers.ts'
import { problem } from './error-answer.ts'

/** Most entries in one batch or one answer. */
export const mostEntries = 1000

/** A batch; whether each is an entry is said of it in the answer. */
export const entryBatch = z.object({ entries: z.array(z.unknown()).check(z.minLength(1), z.maxLength(mostEntries)) })

/** What became of one entry of a batch; only `rejected` means that it is not in the store. */
export const entryAnswer = z.discriminatedUnion('outcome', [
  z.object({ id: z.string(), outcome: z.enum(['stored', 'already']), seq: z.int() }),
  z.object({
    id: z.string(),
    outcome: z.literal('rejected'),
    reason: z.string(),
    /** The same as data; a server of an earlier version has none. */
    saying: z.optional(z.custom<Rejection>()),
    problems: z.readonly(z.array(problem)),
  }),
])

export const entryAnswers = z.object({ answers: z.readonly(z.array(entryAnswer)) })

/** An entry as the server keeps it. */
export const keptEntry = z.object({
  /** Its place in the server's order of storing: increasing, not consecutive. */
  seq: z.int(),
  id: z.string(),
  project: z.string(),
  run: z.string(),
  kind: z.string(),
  schemaVersion: z.int(),
  author: z.string(),
  device: z.string(),
  capturedAt: z.string(),
  storedAt: z.string(),
  supersedes: z.nullable(z.string()),
  body: z.unknown(),
})

/** A piece of the server's order of storing, over all projects. */
export const entryPage = z.object({
  after: z.int(),
  /** Those of runs; facts about a project as a whole are left out. */
  entries: z.readonly(z.array(keptEntry)),
  /** Whether there is more after it. */
  more: z.boolean(),
  /** The last entry looked at: where to read on. */
  cursor: z.int(),
  /** Id of the entry there. */
  cursorId: z.nullable(z.string()),
  /** Id of the entry at `after`; null when there is none. Another than the device knows: the store is another one. */
  at: z.nullable(z.string()),
})

export type EntryAnswer = z.output<typeof entryAnswer>
export type EntryAnswers = z.output<typeof entryAnswers>
export type KeptEntry = z.output<typeof keptEntry>
export type EntryPage = z.output<typeof entryPage>
