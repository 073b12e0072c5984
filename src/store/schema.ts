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
  /** What lists show of a run: it can be thrown away, and is made anew. */
  readonly summary: {
    readonly run: string
    /** Of the first and the last entry that was stored of the run. */
    readonly oldest: Int8
    readonly newest: Int8
    /** The last entry that the content was made of, and by which rule; null before it was made. */
    readonly up_to: Int8 | null
    readonly rule: number | null
    readonly content: ColumnType<unknown, string, string> | null
  }
}

type Int8 = string | number | bigint

/** A database under either driver. `close` gives up its connections and, for a folder, the hold on it. */
export interface OpenDatabase {
  readonly db: Kysely<Tables>
  /** Why the database cannot go on until it is opened again; waits for as long as it can. */
  readonly stopped: Promise<string>
  close(): Promise<void>
}
