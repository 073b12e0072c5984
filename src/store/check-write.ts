import { type Kysely, sql } from 'kysely'
import type { Tables } from './schema.ts'

/**
 * Writes a row as it stands, and waits until that is on the disk. A server that takes no writes answers every question
 * as before: a full disk, a copy that only follows another, a database that was set to read only.
 */
export async function checkWrite(db: Kysely<Tables>): Promise<void> {
  await db.updateTable('migration').set({ name: sql<string>`name` }).where('version', '=', 1).execute()
}
