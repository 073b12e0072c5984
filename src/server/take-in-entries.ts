import type { Reading } from '../core/measurement/reading.ts'
import { err, ok, type Result } from '../core/result.ts'
import { type Entry, entryShape } from '../formats/entry/entry-kinds.ts'
import { isRunIdTooLate, isTooFarAhead } from '../formats/entry-id.ts'
import { type InputProblem, written } from '../formats/input-problem.ts'
import { checkShape } from '../formats/read-json.ts'
import { runFromValue } from '../formats/run/run-file.ts'
import { dayProblems, isDayEntry } from '../operations/day-problems.ts'
import { meansOfToday } from '../operations/means-of-today.ts'
import { requireRun } from '../operations/require-run.ts'
import { runHistory } from '../operations/run-history.ts'
import { checksIn } from '../operations/version-checks.ts'
import type { EntryAnswer } from '../protocol/entries.ts'
import type { Store } from '../store/store.ts'
import { answerOf, type Draft, problem, rejected } from './entry-answer.ts'
import { pinRuns } from './pin-stored-runs.ts'
import { type Refusal, unavailable } from './refusal.ts'
import { everyEntry, isRead, readingsOfRuns, type StoredRun, storedRuns } from './stored-runs.ts'
import { draftOfReading } from './take-in-reading.ts'
import { draftOfVersion } from './take-in-version.ts'

/** Where runs go that somebody adds. */
const ownProject = { id: 'own', name: 'Own runs' }

/** Says of one entry of a run what is to be stored, or why not. */
type Taker = (entry: Entry) => Draft

/**
 * Stores the entries of a batch that can be taken in, in their order, and says of each what became of it. A batch
 * handed in again changes nothing. Bodies are kept as they came: written anew by a later version they would be others,
 * and the same entry handed in again would no longer be the same.
 */
export async function takeInEntries(
  store: Store,
  shapes: readonly unknown[],
): Promise<Result<readonly EntryAnswer[], Refusal>> {
  const entries = shapes.map((shape) => ({ shape, read: checkShape('entry', shape, entryShape) }))
  const stored = await takersOfStored(store, [
    ...new Set(entries.flatMap(({ read }) => (read.ok ? [read.value.run] : []))),
  ])
  if (!stored.ok) return stored
  const takers = new Map(stored.value)
  const drafts = entries.map(({ shape, read }): Draft => {
    if (!read.ok) return rejected(idIn(shape), { kind: 'no entry' }, read.error)
    const entry = read.value
    const known = takers.get(entry.run)
    if (known !== undefined) return known(entry)
    // Without the run, stored or brought by this entry, it is rejected; the run may still come further on.
    if (entry.kind !== 'run') return rejected(entry.id, { kind: 'no run of entry', run: entry.run }, [])
    const brought = readNewRun(entry)
    if (!brought.ok) return rejected(entry.id, { kind: 'no run to lay out' }, brought.error)
    const taker = takerInto(brought.value, [], new Set())
    takers.set(entry.run, taker)
    return taker(entry)
  })
  const made = await makeOwnProject(store)
  if (!made.ok) return made
  const appended = await store.append(drafts.flatMap((draft) => ('entry' in draft ? [draft.entry] : [])))
  if (!appended.ok) return err(unavailable(appended.error.reason))
  const pinned = await pinRuns(
    store,
    drafts.flatMap((draft) => ('entry' in draft && draft.entry.kind === 'run' ? [draft.entry] : [])),
  )
  if (!pinned.ok) return pinned
  const answers = appended.value[Symbol.iterator]()
  return ok(drafts.map((draft) => ('entry' in draft ? answerOf(answers.next().value!) : draft)))
}

async function makeOwnProject(store: Store): Promise<Result<void, Refusal>> {
  const made = await store.createProject(ownProject)
  if (made.ok) return ok(undefined)
  if (made.error.kind === 'unavailable') return err(unavailable(made.error.reason))
  throw new Error('the project for added runs cannot be made', { cause: made.error })
}

/** What takes in the entries of each of these runs that is stored. */
async function takersOfStored(
  store: Store,
  ids: readonly string[],
): Promise<Result<ReadonlyMap<string, Taker>, Refusal>> {
  const runs = await storedRuns(store, ids)
  if (!runs.ok) return runs
  const readings = await readingsOfRuns(store, runs.value.filter(isRead))
  if (!readings.ok) return readings
  const days = ids.length === 0 ? ok([]) : await everyEntry(store, { runs: ids, kinds: ['day-log', 'locate-ticket'] })
  if (!days.ok) return days
  const stored = new Set(days.value.map(({ id }) => id))
  return ok(
    new Map(
      runs.value.map((run): [string, Taker] => {
        if (!isRead(run)) return [run.id, ({ id }) => rejected(id, { kind: 'run of entry unreadable' }, run.problems)]
        const read = readings.value(run)
        if (!read.ok) return [run.id, ({ id }) => rejected(id, { kind: 'readings of run unreadable' }, read.error)]
        return [run.id, takerInto(run, read.value.readings, stored)]
      }),
    ),
  )
}

/** @param days  ids of the day logs and locate tickets that are stored */
function takerInto(run: StoredRun, readings: readonly Reading[], days: ReadonlySet<string>): Taker {
  const files = new Map(run.history.files)
  const checkIn = checksIn(run.id, files, meansOfToday)
  const known = new Map(readings.map(({ id, of }) => [id, of]))
  const ids = [run.id, ...known.keys()]
  return (entry) => {
    if (isTooFarAhead(entry.id, ids)) return rejected(entry.id, { kind: 'id far ahead' }, [aheadProblem(entry)])
    ids.push(entry.id)
    const unfit = isDayEntry(entry) && !days.has(entry.id) ? dayProblems('entry', 'body', entry, files) : []
    if (unfit.length > 0) return rejected(entry.id, { kind: 'no entry' }, unfit)
    switch (entry.kind) {
      case 'run':
        return entry.id === run.id || files.has(entry.id) ? draftOfRun(entry, run) : draftOfVersion(entry, run, files)
      case 'reading': {
        // What is stored is answered as that, also where it would no longer be taken in.
        if (known.has(entry.id)) return { entry: { ...entry, project: run.project } }
        return draftOfReading(entry, run, checkIn, known)
      }
      case 'photo':
      case 'photo-strokes':
      case 'sign-off':
      case 'day-log':
      case 'locate-ticket':
      case 'archive':
      case 'free-finding':
      case 'free-finding-end':
      case 'assignment':
        return { entry: { ...entry, project: run.project } }
      default:
        return entry.kind satisfies never
    }
  }
}

const aheadProblem = ({ id }: Entry): InputProblem => problem('entry', 'id', { kind: 'counted on id' }, written(id))

/** A run that is not stored yet; its id is that of the entry. */
function readNewRun(entry: Entry): Result<StoredRun, readonly InputProblem[]> {
  if (entry.run !== entry.id) return err([problem('entry', 'run', { kind: 'own id of entry' }, written(entry.run))])
  if (isRunIdTooLate(entry.id)) return err([problem('entry', 'id', { kind: 'run id in time' }, written(entry.id))])
  const read = runFromValue('run', entry.body)
  if (!read.ok) return read
  const required = requireRun('run', read.value)
  if (!required.ok) return required
  if (read.value.version !== undefined && read.value.version.id !== entry.id)
    return err([problem('run', 'version', { kind: 'id of the entry' }, written(read.value.version.id))])
  const history = runHistory(entry.id, [entry])
  if (history === null || !history.ok) throw new Error('a run that was read cannot be read')
  return ok({ id: entry.id, project: ownProject.id, run: read.value, history: history.value })
}

function draftOfRun(entry: Entry, { project }: StoredRun): Draft {
  const read = runFromValue('run', entry.body)
  if (!read.ok) return rejected(entry.id, { kind: 'no run to lay out' }, read.error)
  return { entry: { ...entry, project } }
}

function idIn(shape: unknown): string {
  return typeof shape === 'object' && shape !== null && 'id' in shape && typeof shape.id === 'string' ? shape.id : ''
}
