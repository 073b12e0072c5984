import type { ColumnType, Generated, Kysely } from 'kysely'

/** The tables, as `migrations.ts` makes them. Times come back as Date, and `seq` as whatever the driver makes of int8. */
export interface Tables {
  readonly migration: {
    readonly version: number
    readonly name: string
    readonly applied_at: Generated<Date>
  }
  readonly project: {
    readonly id: string
    readonly name: string
    readonly created_at: Generated<Date>
  }
  readonly entry: {
    readonly seq: Generated<string | number | bigint>
    readonly id: string
    readonly project: string
    readonly run: string | null
    readonly kind: string
    readonly schema_version: number
    readonly author: string
    readonly device: string
    readonly captured_at: ColumnType<Date, string, never>
    readonly stored_at: Generated<Date>
    readonly supersedes: string | null
    /** Written as JSON text, read as the value. */
    readonly body: ColumnType<unknown, string, never>
    readonly body_hash: string
  }
}

/** A database under either driver. `close` gives up its connections and, for a folder, the hold on it. */
export interface OpenDatabase {
  readonly db: Kysely<Tables>
  close(): Promise<void>
}
