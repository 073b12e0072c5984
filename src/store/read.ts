import { type Kysely, type Selectable, sql } from 'kysely'
import type { StoredEntry } from './entry.ts'
import type { Tables } from './schema.ts'

export interface Project {
  readonly id: string
  readonly name: string
  /** ISO 8601 in UTC, by the store's clock. */
  readonly createdAt: string
}

/** Which entries to read. A field left out does not narrow the choice. */
export interface EntryQuery {
  readonly project?: string
  readonly runs?: readonly string[]
  readonly kinds?: readonly string[]
  /** Only entries stored after the one with this `seq`. */
  readonly after?: number
  /** At most so many, from 1. */
  readonly limit: number
}

/** All projects, in order of their making. */
export async function readProjects(db: Kysely<Tables>): Promise<readonly Project[]> {
  const rows = await db.selectFrom('project').selectAll().orderBy('created_at').orderBy('id').execute()
  return rows.map((row) => ({ id: row.id, name: row.name, createdAt: row.created_at.toISOString() }))
}

/** The entries that `query` chooses, in the order in which they were stored. */
export async function readEntries(db: Kysely<Tables>, query: EntryQuery): Promise<readonly StoredEntry[]> {
  const { project, runs, kinds, after, limit } = query
  if (!Number.isSafeInteger(limit) || limit < 1) throw new RangeError(`limit must be at least 1, got ${limit}`)
  let chosen = db.selectFrom('entry').selectAll()
  if (project !== undefined) chosen = chosen.where('project', '=', project)
  if (runs !== undefined) chosen = chosen.where('run', '=', anyOf(runs))
  if (kinds !== undefined) chosen = chosen.where('kind', '=', anyOf(kinds))
  if (after !== undefined) chosen = chosen.where('seq', '>', after)
  const rows = await chosen.orderBy('seq').limit(limit).execute()
  return rows.map(entryOf)
}

/** One of `values`, in one parameter however many they are: a statement has at most 65,535. */
const anyOf = (values: readonly string[]) => sql<string>`any(${values}::text[])`

function entryOf(row: Selectable<Tables['entry']>): StoredEntry {
  return {
    seq: Number(row.seq),
    id: row.id,
    project: row.project,
    run: row.run,
    kind: row.kind,
    schemaVersion: row.schema_version,
    author: row.author,
    device: row.device,
    capturedAt: row.captured_at.toISOString(),
    storedAt: row.stored_at.toISOString(),
    supersedes: row.supersedes,
    body: row.body,
    bodyHash: row.body_hash,
  }
}
