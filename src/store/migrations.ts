/** One step of the schema. Steps are only ever added: one that has been released is never edited. */
export interface Migration {
  readonly version: number
  readonly name: string
  readonly statements: readonly string[]
}

export const migrations: readonly Migration[] = [
  {
    version: 1,
    name: 'projects and entries',
    statements: [
      `create table project (
         id text primary key,
         name text not null,
         created_at timestamptz not null default clock_timestamp()
       )`,
      // stored_at by clock_timestamp(), not now(): now() is when the transaction began, which is before it waited its turn.
      `create table entry (
         seq bigint generated always as identity primary key,
         id text not null unique,
         project text not null references project (id),
         run text,
         kind text not null,
         schema_version integer not null,
         author text not null,
         device text not null,
         captured_at timestamptz not null,
         stored_at timestamptz not null default clock_timestamp(),
         supersedes text,
         body jsonb not null,
         body_hash text not null
       )`,
      'create index entry_in_order on entry (project, seq)',
      'create index entry_of_run on entry (project, run, kind, seq)',
      // Guards against mistakes, and shows intent; whoever owns the table can still drop the trigger.
      `create function refuse_change_of_entry() returns trigger language plpgsql as $$
       begin
         raise exception 'an entry is never changed or deleted: append one that supersedes it'
           using errcode = 'restrict_violation';
       end
       $$`,
      `create trigger entry_only_appended before update or delete or truncate on entry
       for each statement execute function refuse_change_of_entry()`,
    ],
  },
  {
    version: 2,
    name: 'the entries of runs, whatever their project',
    statements: ['drop index entry_of_run', 'create index entry_of_run on entry (run, kind, seq)'],
  },
  {
    version: 3,
    name: 'summaries of runs, and what each has to follow',
    statements: [
      `create table summary (
         run text primary key,
         oldest bigint not null,
         newest bigint not null,
         up_to bigint,
         rule integer,
         content jsonb
       )`,
      // In the database itself, so that nothing is stored past it: whatever stores an entry says which summary is old now.
      `create function summary_follows_entries() returns trigger language plpgsql as $$
       begin
         insert into summary (run, oldest, newest)
           select run, min(seq), max(seq) from stored where run is not null group by run order by run
           on conflict (run) do update set newest = greatest(summary.newest, excluded.newest);
         return null;
       end
       $$`,
      `create trigger summary_follows_entries after insert on entry
         referencing new table as stored for each statement execute function summary_follows_entries()`,
    ],
  },
]
