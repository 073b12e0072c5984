import { type Kysely, sql } from 'kysely'
import { err, ok, type Result } from '../core/result.ts'
import type { StoredEntry } from './entry.ts'
import type { Project } from './read.ts'
import type { Tables } from './schema.ts'
import { sha256 } from './sha256.ts'
import { storableJson } from './storable-json.ts'

/** What a copy of a store holds, in the order of storing. */
export interface Copied {
  readonly projects: readonly Project[]
  /** In pieces, so that a store of any size is put back within bounds of memory. */
  readonly entries: AsyncIterable<readonly StoredEntry[]>
}

/** Why nothing was put back. */
export type PutBackProblem =
  /** The store has something in it: what is put back never mixes with what is there. */
  | { readonly kind: 'not empty' }
  /** The body of this entry has another hash than was stored with it. */
  | { readonly kind: 'another hash'; readonly id: string }

/** Undoes the transaction. */
class Refused extends Error {
  constructor(readonly problem: PutBackProblem) {
    super(problem.kind)
  }
}

/**
 * Puts a copy into an empty store as it was: the same places in the order of storing, by which devices read on, and the
 * same times of storing. All of it or nothing.
 */
export async function putBack(
  db: Kysely<Tables>,
  { projects, entries }: Copied,
): Promise<Result<{ readonly entries: number }, PutBackProblem>> {
  try {
    return await db
      .transaction()
      .setIsolationLevel('read committed')
      .execute(async (tx) => {
        await sql`lock table project, entry in exclusive mode`.execute(tx)
        const { rows } = await sql<{ taken: boolean }>`
          select exists (select from project) or exists (select from entry) as taken`.execute(tx)
        if (rows[0]!.taken) throw new Refused({ kind: 'not empty' })
        await insertProjects(tx, projects)
        let count = 0
        for await (const piece of entries) {
          await insertEntries(tx, piece)
          count += piece.length
        }
        await sql`
          select setval(pg_get_serial_sequence('entry', 'seq'), max(seq)) from entry having max(seq) is not null`.execute(
          tx,
        )
        return ok({ entries: count })
      })
  } catch (cause) {
    if (cause instanceof Refused) return err(cause.problem)
    throw cause
  }
}

async function insertProjects(tx: Kysely<Tables>, projects: readonly Project[]): Promise<void> {
  await sql`
    insert into project (id, name, created_at)
    select id, name, "createdAt" from jsonb_to_recordset(${JSON.stringify(projects)}::jsonb)
      as copied (id text, name text, "createdAt" timestamptz)`.execute(tx)
}

async function insertEntries(tx: Kysely<Tables>, entries: readonly StoredEntry[]): Promise<void> {
  for (const { id, body, bodyHash } of entries) {
    const text = storableJson(body)
    if (!text.ok || sha256(text.value) !== bodyHash) throw new Refused({ kind: 'another hash', id })
  }
  await sql`
    insert into entry
      (seq, id, project, run, kind, schema_version, author, device, captured_at, stored_at, supersedes, body, body_hash)
    overriding system value
    select seq, id, project, run, kind, "schemaVersion", author, device, "capturedAt", "storedAt", supersedes, body, "bodyHash"
    from jsonb_to_recordset(${JSON.stringify(entries)}::jsonb) as copied (
      seq bigint, id text, project text, run text, kind text, "schemaVersion" integer, author text, device text,
      "capturedAt" timestamptz, "storedAt" timestamptz, supersedes text, body jsonb, "bodyHash" text
    )
    order by seq`.execute(tx)
}
