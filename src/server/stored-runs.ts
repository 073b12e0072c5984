import { z } from 'zod'
import type { Reading } from '../core/measurement/reading.ts'
import { err, ok, type Result } from '../core/result.ts'
import type { FreeFinding } from '../core/verdicts/free-findings.ts'
import { groupBy } from '../documents/group-by.ts'
import { freeFindingKinds, freeFindings } from '../formats/entry/free-findings.ts'
import { inLogOrder } from '../formats/entry/log-order.ts'
import { type RunEntries, runEntries } from '../formats/entry/run-entries.ts'
import type { InputProblem } from '../formats/input-problem.ts'
import { entryReadings } from '../formats/readings/entry-readings.ts'
import { readingsFromValue } from '../formats/readings/readings-file.ts'
import type { RunFile } from '../formats/run/run-file.ts'
import { shapeProblems } from '../formats/shape-problems.ts'
import { type JudgedRun, judgeKnown } from '../operations/judge-readings.ts'
import type { RequiredRun } from '../operations/require-by.ts'
import { requireRun } from '../operations/require-run.ts'
import { type RunHistory, runHistory, versionsOf } from '../operations/run-history.ts'
import type { StoredEntry } from '../store/entry.ts'
import type { Store } from '../store/store.ts'
import { badInput, noSuchRun, type Refusal, unavailable } from './refusal.ts'

/** A run as the store holds it. Its id is that of the entry that brought it in. */
export interface StoredRun {
  readonly id: string
  readonly project: string
  /** In its version in force. */
  readonly run: RunFile
  readonly history: RunHistory
}

/** A run that was taken in by other rules than those of today. It is kept and named, and can be neither laid out nor judged. */
export interface UnreadRun {
  readonly id: string
  readonly project: string
  readonly name: string
  readonly problems: readonly InputProblem[]
}

export const isRead = (run: StoredRun | UnreadRun): run is StoredRun => !('problems' in run)

/** What was read at a run, in the order that counts. */
export interface StoredReadings {
  readonly readings: readonly Reading[]
  readonly findings: readonly FreeFinding[]
  /** The same as the readings of a file in the version of today. */
  readonly bodies: readonly unknown[]
  /** The `seq` of the last of them that was stored; 0 before the first. */
  readonly cursor: number
}

type Answer<T> = Promise<Result<T, Refusal>>

/** The runs of these ids that are stored, in the order of storing. */
export async function storedRuns(store: Store, ids: readonly string[]): Answer<readonly (StoredRun | UnreadRun)[]> {
  if (ids.length === 0) return ok([])
  const entries = await everyEntry(store, { runs: ids, kinds: ['run'] })
  if (!entries.ok) return entries
  return ok(groupBy(entries.value, ({ run }) => run ?? '').flatMap((versions) => runOf(versions) ?? []))
}

export async function storedRun(store: Store, id: string): Answer<StoredRun> {
  const runs = await storedRuns(store, [id])
  if (!runs.ok) return runs
  const run = runs.value[0]
  if (run === undefined) return err(noSuchRun(id))
  return 'problems' in run ? err(badInput({ kind: 'stored run unreadable' }, run.problems)) : ok(run)
}

export async function storedReadings(store: Store, run: StoredRun): Answer<StoredReadings> {
  const all = await readingsOfRuns(store, [run])
  if (!all.ok) return all
  const read = all.value(run)
  return read.ok ? read : err(badInput({ kind: 'stored readings unreadable' }, read.error))
}

/** What was read at each of `runs`, asked for at once; those of one may be unreadable by the rules of today. */
export async function readingsOfRuns(
  store: Store,
  runs: readonly StoredRun[],
): Answer<(run: StoredRun) => Result<StoredReadings, readonly InputProblem[]>> {
  if (runs.length === 0) return ok(() => ok({ readings: [], findings: [], bodies: [], cursor: 0 }))
  const entries = await everyEntry(store, { runs: runs.map(({ id }) => id), kinds: ['reading', ...freeFindingKinds] })
  if (!entries.ok) return entries
  const byRun = new Map<string | null, StoredEntry[]>(runs.map(({ id }) => [id, []]))
  for (const entry of entries.value) byRun.get(entry.run)!.push(entry)
  return ok(({ id, run }) => {
    const all = byRun.get(id)!
    const ofRun = all.filter(({ kind }) => kind === 'reading')
    const file = entryReadings(run, inLogOrder(ofRun))
    const read = readingsFromValue('stored readings', file)
    if (!read.ok) return read
    const findings = freeFindings(inLogOrder(all))
    return ok({ readings: read.value.readings, findings, bodies: file.readings, cursor: ofRun.at(-1)?.seq ?? 0 })
  })
}

/** The judged run; a run that can no longer be laid out is refused. */
export async function soundRun(store: Store, id: string): Answer<JudgedRun> {
  const stored = await storedRun(store, id)
  if (!stored.ok) return stored
  const required = requiredRun(stored.value)
  if (!required.ok) return err(badInput({ kind: 'run not laid out' }, required.error))
  const read = await storedReadings(store, stored.value)
  return read.ok ? ok(judgeStored(stored.value, required.value, read.value)) : read
}

const sideKinds = [
  'run',
  'photo',
  'photo-strokes',
  'sign-off',
  'day-log',
  'locate-ticket',
  'assignment',
  ...freeFindingKinds,
]

/** What was recorded at a run besides readings, in the order that counts. */
export async function sideEntries(store: Store, id: string): Answer<RunEntries> {
  const stored = await storedRun(store, id)
  if (!stored.ok) return stored
  const found = await everyEntry(store, { runs: [id], kinds: sideKinds })
  if (!found.ok) return found
  try {
    return ok(runEntries(inLogOrder(found.value)))
  } catch (cause) {
    // Taken in by other rules than those of today.
    if (!(cause instanceof z.core.$ZodError)) throw cause
    const problems = shapeProblems(`entries of run ${id}`, null, cause.issues)
    return err(badInput({ kind: 'stored entries unreadable' }, problems))
  }
}

export const judgeStored = (
  { history }: StoredRun,
  required: RequiredRun,
  { readings, findings }: StoredReadings,
): JudgedRun => judgeKnown(required, readings, versionsOf(history), history.firstAsked, findings)

export function requiredRun({ id, run }: StoredRun): Result<RequiredRun, readonly InputProblem[]> {
  return requireRun(`run ${id}`, run)
}

/** The run that these entries are the versions of; null where its first is not among them. */
function runOf(entries: readonly StoredEntry[]): StoredRun | UnreadRun | null {
  const id = entries[0]?.run ?? ''
  const history = runHistory(
    id,
    entries.map((entry) => ({ ...entry, run: id, kind: 'run' as const })),
  )
  const first = entries.find((entry) => entry.id === id)
  if (history === null || first === undefined) return null
  const { project } = first
  if (history.ok) return { id, project, run: history.value.run, history: history.value }
  const { name } = first.body as { readonly name?: unknown }
  return { id, project, name: typeof name === 'string' ? name : id, problems: history.error }
}

/** Entries asked for at a time. */
const pageSize = 1000

export async function everyEntry(
  store: Store,
  query: { readonly runs?: readonly string[]; readonly kinds: readonly string[] },
): Answer<readonly StoredEntry[]> {
  const entries: StoredEntry[] = []
  for (;;) {
    const page = await store.entries({ ...query, after: entries.at(-1)?.seq ?? 0, limit: pageSize })
    if (!page.ok) return err(unavailable(page.error.reason))
    entries.push(...page.value)
    if (page.value.length < pageSize) return ok(entries)
  }
}
