import { err, ok, type Result } from '../core/result.ts'
import { type Entry, entryShape } from '../formats/entry/entry-kinds.ts'
import { isRunIdTooLate, isTooFarAhead } from '../formats/entry-id.ts'
import type { InputProblem } from '../formats/input-problem.ts'
import { checkShape } from '../formats/read-json.ts'
import { readRun } from '../formats/run/run-file.ts'
import { readingCheck } from '../operations/reading-problems.ts'
import { requireRun } from '../operations/require-run.ts'
import type { Store } from '../store/store.ts'
import { answerOf, type Draft, type EntryAnswer, problem, rejected } from './entry-answer.ts'
import { type Refusal, unavailable } from './refusal.ts'
import { requiredRun, type StoredRun, storedReadings, storedRun } from './stored-runs.ts'
import { draftOfReading } from './take-in-reading.ts'

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
  const takers = new Map<string, Taker>()
  const drafts: Draft[] = []
  for (const shape of shapes) {
    const read = checkShape('entry', shape, entryShape)
    if (!read.ok) {
      drafts.push(rejected(idIn(shape), 'it is not an entry', read.error))
      continue
    }
    const { run } = read.value
    const known = takers.get(run)
    const taker = known === undefined ? await takerFor(store, read.value) : ok(known)
    if (!taker.ok) return taker
    if (typeof taker.value === 'function') {
      takers.set(run, taker.value)
      drafts.push(taker.value(read.value))
    } else drafts.push(taker.value)
  }
  const made = await makeOwnProject(store)
  if (!made.ok) return made
  const appended = await store.append(drafts.flatMap((draft) => ('entry' in draft ? [draft.entry] : [])))
  if (!appended.ok) return err(unavailable(appended.error.reason))
  const answers = appended.value[Symbol.iterator]()
  return ok(drafts.map((draft) => ('entry' in draft ? answerOf(answers.next().value!) : draft)))
}

async function makeOwnProject(store: Store): Promise<Result<void, Refusal>> {
  const made = await store.createProject(ownProject)
  if (made.ok) return ok(undefined)
  if (made.error.kind === 'unavailable') return err(unavailable(made.error.reason))
  throw new Error('the project for added runs cannot be made', { cause: made.error })
}

/**
 * What takes in the entries of one run: the stored one or, when there is none, the one that this entry brings. Without
 * either the entry is rejected; its run may still come further on.
 */
async function takerFor(store: Store, entry: Entry): Promise<Result<Taker | EntryAnswer, Refusal>> {
  const stored = await storedRun(store, entry.run)
  if (stored.ok) {
    const taker = await takerInto(store, stored.value)
    if (!taker.ok && taker.error.status === 400)
      return ok(rejected(entry.id, 'the readings of its run cannot be read', taker.error.problems))
    return taker
  }
  if (stored.error.status === 400) return ok(rejected(entry.id, 'its run cannot be read', stored.error.problems))
  if (stored.error.status !== 404) return stored
  if (entry.kind !== 'run') return ok(rejected(entry.id, `there is no run ${entry.run}`, []))
  const read = readNewRun(entry)
  if (!read.ok) return ok(rejected(entry.id, 'it is not a run that can be laid out', read.error))
  return takerInto(store, read.value)
}

async function takerInto(store: Store, run: StoredRun): Promise<Result<Taker, Refusal>> {
  const required = requiredRun(run)
  const check = required.ok ? ok(readingCheck(required.value)) : required
  const before = await storedReadings(store, run)
  if (!before.ok) return before
  const known = new Map(before.value.readings.map(({ id, of }) => [id, of]))
  const ids = [run.id, ...known.keys()]
  return ok((entry) => {
    if (isTooFarAhead(entry.id, ids))
      return rejected(entry.id, 'its id is far ahead of those of its run', [aheadProblem(entry)])
    ids.push(entry.id)
    switch (entry.kind) {
      case 'run':
        return draftOfRun(entry, run)
      case 'reading': {
        // What is stored is answered as that, also where it would no longer be taken in.
        if (known.has(entry.id)) return { entry: { ...entry, project: run.project } }
        if (!check.ok) return rejected(entry.id, 'the run cannot be laid out', check.error)
        return draftOfReading(entry, run, check.value, known)
      }
      case 'photo':
      case 'sign-off':
      case 'day-log':
      case 'locate-ticket':
        return { entry: { ...entry, project: run.project } }
      default:
        return entry.kind satisfies never
    }
  })
}

const aheadProblem = ({ id }: Entry): InputProblem =>
  problem('entry', 'id', 'an id that counts on from those of its run', JSON.stringify(id))

/** A run that is not stored yet; its id is that of the entry. */
function readNewRun(entry: Entry): Result<StoredRun, readonly InputProblem[]> {
  if (entry.run !== entry.id) return err([problem('entry', 'run', `the entry's own id`, JSON.stringify(entry.run))])
  if (isRunIdTooLate(entry.id))
    return err([
      problem(
        'entry',
        'id',
        'an id whose time is at most 2100, from which its entries count on',
        JSON.stringify(entry.id),
      ),
    ])
  const read = readRun('run', JSON.stringify(entry.body))
  if (!read.ok) return read
  const required = requireRun('run', read.value)
  if (!required.ok) return required
  return ok({ id: entry.id, project: ownProject.id, run: read.value, body: entry.body })
}

function draftOfRun(entry: Entry, { id, project }: StoredRun): Draft {
  if (entry.id !== id) return rejected(entry.id, 'a run has the id of its entry', [])
  const read = readRun('run', JSON.stringify(entry.body))
  if (!read.ok) return rejected(entry.id, 'it is not a run that can be laid out', read.error)
  return { entry: { ...entry, project } }
}

function idIn(shape: unknown): string {
  return typeof shape === 'object' && shape !== null && 'id' in shape && typeof shape.id === 'string' ? shape.id : ''
}
