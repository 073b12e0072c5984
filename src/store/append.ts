import { type Kysely, sql } from 'kysely'
import { type CheckedEntry, checkEntry, type EntryAnswer, type NewEntry, type RejectionReason } from './entry.ts'
import type { Tables } from './schema.ts'
import { sha256 } from './sha256.ts'

/**
 * Stores what is new of `entries`, in one transaction and in the order given, and says of each what became of it.
 * An entry that is rejected does not hold up the others. Once the promise resolves, the database has committed.
 */
export async function appendEntries(db: Kysely<Tables>, entries: readonly NewEntry[]): Promise<readonly EntryAnswer[]> {
  if (entries.length === 0) return []
  const drafts = entries.map(draftOf)
  const rows = drafts.flatMap((draft) => (draft.kind === 'row' ? [draft.row] : []))
  return db
    .transaction()
    .setIsolationLevel('read committed')
    .execute(async (tx) => {
      await waitForTurn(tx)
      const kept = await keptUnder(tx, unique(rows.map((row) => row.id)))
      const projects = await projectsAmong(tx, unique(rows.map((row) => row.project)))
      const fresh = new Map<string, Row>()
      const decisions = drafts.map((draft) => decide(draft, kept, projects, fresh))
      const seqs = new Map([...kept].map(([id, row]) => [id, row.seq]))
      for (const [id, seq] of await insert(tx, [...fresh.values()])) seqs.set(id, seq)
      return decisions.map((decision): EntryAnswer => {
        if (decision.outcome === 'rejected') return decision
        return { ...decision, seq: seqs.get(decision.id)! }
      })
    })
}

/** An entry as the table holds it, its time as ISO text in UTC. */
interface Row {
  readonly id: string
  readonly project: string
  readonly run: string | null
  readonly kind: string
  readonly schema_version: number
  readonly author: string
  readonly device: string
  readonly captured_at: string
  readonly supersedes: string | null
  readonly body: string
  readonly body_hash: string
}

type KeptRow = Omit<Row, 'body'> & { readonly seq: number }

type Rejection = { readonly id: string; readonly outcome: 'rejected'; readonly reason: RejectionReason }

type Draft = { readonly kind: 'row'; readonly row: Row } | { readonly kind: 'refused'; readonly rejection: Rejection }

type Decision = Rejection | { readonly id: string; readonly outcome: 'stored' | 'already' }

function draftOf(entry: NewEntry, place: number): Draft {
  const checked = checkEntry(`entry ${place + 1}`, entry)
  if (checked.ok) return { kind: 'row', row: rowOf(checked.value) }
  const reason = { kind: 'unstorable', problems: checked.error } as const
  return { kind: 'refused', rejection: { id: entry.id, outcome: 'rejected', reason } }
}

function rowOf(entry: CheckedEntry): Row {
  return {
    id: entry.id,
    project: entry.project,
    run: entry.run,
    kind: entry.kind,
    schema_version: entry.schemaVersion,
    author: entry.author,
    device: entry.device,
    captured_at: entry.capturedAt,
    supersedes: entry.supersedes,
    body: entry.bodyText,
    body_hash: sha256(entry.bodyText),
  }
}

/**
 * Lets one append at a time go on, until its transaction ends. Without it a later `seq` could become visible before an
 * earlier one, and a reader who asks for what comes after its cursor would never see the earlier.
 */
async function waitForTurn(tx: Kysely<Tables>): Promise<void> {
  await sql`select pg_advisory_xact_lock(hashtextextended('lapwise: append', 0))`.execute(tx)
}

async function keptUnder(tx: Kysely<Tables>, ids: readonly string[]): Promise<ReadonlyMap<string, KeptRow>> {
  const rows = await tx
    .selectFrom('entry')
    .select(['seq', 'id', 'project', 'run', 'kind', 'schema_version', 'author', 'device'])
    .select(['captured_at', 'supersedes', 'body_hash'])
    .where('id', '=', sql<string>`any(${ids}::text[])`)
    .execute()
  return new Map(
    rows.map((row) => [row.id, { ...row, seq: Number(row.seq), captured_at: row.captured_at.toISOString() }]),
  )
}

async function projectsAmong(tx: Kysely<Tables>, ids: readonly string[]): Promise<ReadonlySet<string>> {
  const rows = await tx.selectFrom('project').select('id').where('id', '=', sql<string>`any(${ids}::text[])`).execute()
  return new Set(rows.map((row) => row.id))
}

/** What becomes of one draft; if it is to be stored it is added to `fresh`, where its like further on will find it. */
function decide(
  draft: Draft,
  kept: ReadonlyMap<string, KeptRow>,
  projects: ReadonlySet<string>,
  fresh: Map<string, Row>,
): Decision {
  if (draft.kind === 'refused') return draft.rejection
  const { row } = draft
  const { id } = row
  const earlier = kept.get(id) ?? fresh.get(id)
  if (earlier !== undefined) {
    const reason = difference(earlier, row)
    return reason === null ? { id, outcome: 'already' } : { id, outcome: 'rejected', reason }
  }
  if (!projects.has(row.project)) {
    return { id, outcome: 'rejected', reason: { kind: 'unknown-project', project: row.project } }
  }
  fresh.set(id, row)
  return { id, outcome: 'stored' }
}

function difference(earlier: Omit<Row, 'body'>, row: Row): RejectionReason | null {
  if (earlier.body_hash !== row.body_hash) return { kind: 'same-id-different-body', storedHash: earlier.body_hash }
  const fields = Object.entries(columnsCompared)
    .filter(([, column]) => earlier[column] !== row[column])
    .map(([field]) => field)
  return fields.length === 0 ? null : { kind: 'same-id-different-fields', fields }
}

const columnsCompared = {
  project: 'project',
  run: 'run',
  kind: 'kind',
  schemaVersion: 'schema_version',
  author: 'author',
  device: 'device',
  capturedAt: 'captured_at',
  supersedes: 'supersedes',
} as const

/** Rows in one statement: eleven parameters each, of the 65,535 that the protocol allows. */
const rowsAtOnce = 1_000

/** Inserts `rows`, numbering them in their order; the pairs of id and `seq`. */
async function insert(tx: Kysely<Tables>, rows: readonly Row[]): Promise<readonly (readonly [string, number])[]> {
  const pairs: [string, number][] = []
  for (let start = 0; start < rows.length; start += rowsAtOnce) {
    const part = rows.slice(start, start + rowsAtOnce)
    const inserted = await tx.insertInto('entry').values(part).returning(['id', 'seq']).execute()
    for (const { id, seq } of inserted) pairs.push([id, Number(seq)])
  }
  return pairs
}

function unique(values: readonly string[]): readonly string[] {
  return [...new Set(values)]
}
