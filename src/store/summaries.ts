import { type Kysely, sql } from 'kysely'
import type { Tables } from './schema.ts'

/** What is kept of a run for lists. */
export interface KeptSummary {
  readonly run: string
  /** `seq` of the last entry that was stored of the run. */
  readonly newest: number
  /** JSON text; null where none was made, or it was made of less than is stored now or by another rule. */
  readonly content: string | null
}

export interface NewSummary {
  readonly run: string
  /** `seq` of the last entry that it was made of. */
  readonly upTo: number
  readonly rule: number
  /** JSON text. */
  readonly content: string
}

/** Of every run of which something is stored, in the order of storing. */
export async function readSummaries(db: Kysely<Tables>, rule: number): Promise<readonly KeptSummary[]> {
  const { rows } = await sql<{ run: string; newest: string | number; content: string | null }>`
    select run, newest, case when up_to = newest and rule = ${rule} then content::text end as content
    from summary order by oldest`.execute(db)
  return rows.map(({ run, newest, content }) => ({ run, newest: Number(newest), content }))
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
