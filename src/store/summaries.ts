import { type Kysely, sql } from 'kysely'
import type { Tables } from './schema.ts'

/** What is kept for a list of all runs. */
export interface KeptSummaries {
  /** JSON texts of those that were made of all that is stored now, with commas between, in the order of storing. */
  readonly list: string
  /** Runs of which none was made, or of less than is stored now, or by another rule; `newest` is the `seq` to follow. */
  readonly old: readonly { readonly run: string; readonly newest: number }[]
}

export interface NewSummary {
  readonly run: string
  /** `seq` of the last entry that it was made of. */
  readonly upTo: number
  readonly rule: number
  /** JSON text. */
  readonly content: string
}

/** Put together in the database: row by row, a long list takes the driver far longer. A content of `null` is left out. */
export async function readSummaries(db: Kysely<Tables>, rule: number): Promise<KeptSummaries> {
  const { rows } = await sql<{ list: string | null; runs: string[] | null; newest: string[] | null }>`
    with known as (
      select run, oldest, newest, content, up_to is not null and up_to = newest and rule = ${rule} as is_new from summary
    )
    select
      string_agg(content::text, ',' order by oldest) filter (where is_new and content <> 'null'::jsonb) as list,
      array_agg(run order by oldest) filter (where not is_new) as runs,
      array_agg(newest::text order by oldest) filter (where not is_new) as newest
    from known`.execute(db)
  const { list, runs, newest } = rows[0]!
  return { list: list ?? '', old: (runs ?? []).map((run, i) => ({ run, newest: Number(newest![i]) })) }
}

/** Keeps what was made; one that was made of more entries by the same rule stays. */
export async function keepSummaries(db: Kysely<Tables>, summaries: readonly NewSummary[]): Promise<void> {
  const of = <K extends keyof NewSummary>(key: K) => summaries.map((summary) => summary[key])
  await sql`
    update summary set up_to = made.up_to, rule = made.rule, content = made.content::jsonb
    from unnest(${of('run')}::text[], ${of('upTo')}::bigint[], ${of('rule')}::int[], ${of('content')}::text[])
      as made (run, up_to, rule, content)
    where summary.run = made.run
      and (summary.up_to is null or summary.rule <> made.rule or summary.up_to < made.up_to)`.execute(db)
}

/** Where all summaries were thrown away, says again of which runs there have to be some. */
export async function restoreSummaries(db: Kysely<Tables>): Promise<void> {
  await sql`
    insert into summary (run, oldest, newest)
    select run, min(seq), max(seq) from entry
    where run is not null and not exists (select from summary)
    group by run
    on conflict (run) do nothing`.execute(db)
}
