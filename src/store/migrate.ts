import { type Kysely, sql } from 'kysely'
import { err, ok, type Result } from '../core/result.ts'
import { migrations } from './migrations.ts'
import type { StoreProblem } from './problem.ts'
import type { Tables } from './schema.ts'

/**
 * Brings the schema to this program's version, in one transaction: either every missing step is taken or none.
 * Several servers may start at once; they take turns. A store of a newer version is left as it is.
 */
export async function migrate(db: Kysely<Tables>): Promise<Result<void, StoreProblem>> {
  return db
    .transaction()
    .setIsolationLevel('read committed')
    .execute(async (tx) => {
      await sql`select pg_advisory_xact_lock(hashtextextended('lapwise: migration', 0))`.execute(tx)
      await sql`create table if not exists migration (
        version integer primary key,
        name text not null,
        applied_at timestamptz not null default clock_timestamp()
      )`.execute(tx)
      const storeVersion = await versionOf(tx)
      const programVersion = migrations.at(-1)?.version ?? 0
      if (storeVersion > programVersion) return err({ kind: 'newer-store', storeVersion, programVersion })
      for (const { version, name, statements } of migrations) {
        if (version <= storeVersion) continue
        for (const statement of statements) await sql.raw(statement).execute(tx)
        await tx.insertInto('migration').values({ version, name }).execute()
      }
      return ok(undefined)
    })
}

async function versionOf(db: Kysely<Tables>): Promise<number> {
  const { version } = await db
    .selectFrom('migration')
    .select((eb) => eb.fn.coalesce(eb.fn.max('version'), eb.lit(0)).as('version'))
    .executeTakeFirstOrThrow()
  return version
}
