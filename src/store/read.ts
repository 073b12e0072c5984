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

/** Which facts about runs to look at. */
export interface NewestQuery {
  readonly kinds: readonly string[]
  /** Only entries stored after the one with this `seq`. */
  readonly after: number
}

/** A run with the `seq` of the entry that was stored last of those looked at. */
export interface NewestOfRun {
  readonly run: string
  readonly seq: number
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

/** The runs of which something was stored, with the last of it, so that who keeps what it computed knows what is old. */
export async function readNewestOfRuns(
  db: Kysely<Tables>,
  { kinds, after }: NewestQuery,
): Promise<readonly NewestOfRun[]> {
  const rows = await db
    .selectFrom('entry')
    .select((of) => ['run', of.fn.max('seq').as('seq')])
    .where('kind', '=', anyOf(kinds))
    .where('seq', '>', after)
    .where('run', 'is not', null)
    .groupBy('run')
    .$narrowType<{ run: string }>()
    .execute()
  return rows.map(({ run, seq }) => ({ run, seq: Number(seq) }))
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
