import { err, ok, type Result } from '../core/result.ts'
import type { InputProblem } from '../formats/input-problem.ts'
import { readReadings, writeReadings } from '../formats/readings/readings-file.ts'
import { readRun, writeRun } from '../formats/run/run-file.ts'
import { judgeReadings } from '../operations/judge-readings.ts'
import { type RequiredRun, requireRun } from '../operations/require-run.ts'
import type { EntryAnswer, NewEntry, RejectionReason } from '../store/entry.ts'
import type { Store } from '../store/store.ts'
import { badInput, type Refusal, unavailable } from './refusal.ts'
import { requiredRun, type StoredRun, storedReadings } from './stored-runs.ts'

/** Where runs go that somebody adds. */
export const ownProject = { id: 'own', name: 'Own runs' }

export interface RunHandedIn {
  readonly id: string
  readonly device: string
  readonly author: string
  /** Name of the file, for the problems. */
  readonly file: string
  readonly text: string
}

/** What became of one reading of a batch; only `rejected` means that it is not in the store. */
export type ReadingAnswer =
  | { readonly id: string; readonly outcome: 'stored' | 'already'; readonly seq: number }
  | {
      readonly id: string
      readonly outcome: 'rejected'
      readonly reason: string
      readonly problems: readonly InputProblem[]
    }

/** Stores the run once it can be laid out. The same id with the same run again changes nothing. */
export async function takeInRun(
  store: Store,
  handed: RunHandedIn,
  at: string,
): Promise<Result<{ readonly id: string; readonly outcome: 'stored' | 'already' }, Refusal>> {
  const { id, device, author, file, text } = handed
  const read = readRun(file, text)
  if (!read.ok) return err(badInput(`${file} is not a run file that can be used.`, read.error))
  const required = requireRun(file, read.value)
  if (!required.ok) return err(badInput(`The run in ${file} cannot be laid out.`, required.error))
  const made = await makeOwnProject(store)
  if (!made.ok) return made
  const entry: NewEntry = {
    ...{ id, run: id, device, author, project: ownProject.id, kind: 'run', schemaVersion: 1 },
    capturedAt: at,
    supersedes: null,
    body: JSON.parse(writeRun(read.value)),
  }
  const appended = await store.append([entry])
  if (!appended.ok) return err(unavailable(appended.error.reason))
  const answer = appended.value[0]!
  if (answer.outcome === 'stored') return ok({ id, outcome: 'stored' })
  if (answer.outcome === 'already' || isOnlyLater(answer.reason)) return ok({ id, outcome: 'already' })
  return err(badInput(`The run was not stored: ${rejectionWords(answer.reason)}.`, problemsOf(answer.reason)))
}

export async function makeOwnProject(store: Store): Promise<Result<void, Refusal>> {
  const made = await store.createProject(ownProject)
  if (made.ok) return ok(undefined)
  if (made.error.kind === 'unavailable') return err(unavailable(made.error.reason))
  throw new Error('the project for added runs cannot be made', { cause: made.error })
}

/** The same run handed in again comes with the time of the second try. */
const isOnlyLater = (reason: RejectionReason): boolean =>
  reason.kind === 'same-id-different-fields' && reason.fields.every((field) => field === 'capturedAt')

/** Stores the readings that can be taken in, and says of each what became of it, in their order. */
export async function takeInReadings(
  store: Store,
  stored: StoredRun,
  device: string,
  shapes: readonly unknown[],
): Promise<Result<readonly ReadingAnswer[], Refusal>> {
  const required = requiredRun(stored)
  if (!required.ok) return err(badInput('The run cannot be laid out.', required.error))
  const before = await storedReadings(store, stored)
  if (!before.ok) return before
  const known = new Map(before.value.readings.map(({ id, of }) => [id, of]))
  const drafts = shapes.map((shape) => draftOf(shape, stored, required.value, device, known))
  const entries = drafts.flatMap((draft) => ('entry' in draft ? [draft.entry] : []))
  const appended = await store.append(entries)
  if (!appended.ok) return err(unavailable(appended.error.reason))
  const answers = appended.value[Symbol.iterator]()
  return ok(drafts.map((draft) => ('entry' in draft ? answerOf(answers.next().value!) : draft)))
}

/** The entry for a reading; or its rejection. An accepted one is added to `known`, so that the next may correct it. */
export function draftOf(
  shape: unknown,
  { id: run, project, run: { name, units } }: StoredRun,
  required: RequiredRun,
  device: string,
  known: Map<string, string>,
): { readonly entry: NewEntry } | ReadingAnswer {
  const fields: Readonly<Record<string, unknown>> = typeof shape === 'object' && shape !== null ? { ...shape } : {}
  const id = typeof fields.id === 'string' ? fields.id : ''
  const rejected = (problems: readonly InputProblem[]): ReadingAnswer => ({
    id,
    outcome: 'rejected',
    reason: 'it is not a reading of this run',
    problems,
  })
  if (id === '') return rejected([problem('reading', 'id', 'an id made by the sender', String(fields.id))])
  // What it corrects was taken in earlier, so it is looked up there instead of in the file.
  const alone = { format: 'lapwise-readings/1', run: name, units, readings: [{ ...fields, corrects: null }] }
  const read = readReadings('reading', JSON.stringify(alone))
  if (!read.ok) return rejected(read.error)
  const reading = { ...read.value.readings[0]!, corrects: (fields.corrects ?? null) as string | null }
  const problems: InputProblem[] = []
  if (!/(Z|[+-]\d\d:\d\d)$/.test(reading.at))
    problems.push(problem('reading', 'at', 'a time with its zone', JSON.stringify(reading.at)))
  if (reading.corrects !== null && known.get(reading.corrects) !== reading.of)
    problems.push(
      problem('reading', 'corrects', 'the id of an earlier reading of the same thing', String(reading.corrects)),
    )
  const judged = judgeReadings('reading', required, [reading])
  if (!judged.ok) problems.push(...judged.error)
  if (problems.length > 0) return rejected(problems)
  known.set(id, reading.of)
  const entry = {
    ...{ id, project, run, device, kind: 'reading', schemaVersion: 1, author: reading.by, capturedAt: reading.at },
    supersedes: reading.corrects,
    body: (JSON.parse(writeReadings({ run: name, readings: [reading] })) as { readings: unknown[] }).readings[0],
  }
  return { entry }
}

export function answerOf(answer: EntryAnswer): ReadingAnswer {
  if (answer.outcome !== 'rejected') return answer
  return {
    id: answer.id,
    outcome: 'rejected',
    reason: rejectionWords(answer.reason),
    problems: problemsOf(answer.reason),
  }
}

const problemsOf = (reason: RejectionReason): readonly InputProblem[] =>
  reason.kind === 'unstorable' ? reason.problems : []

function rejectionWords(reason: RejectionReason): string {
  switch (reason.kind) {
    case 'same-id-different-body':
      return 'something else is stored under its id'
    case 'same-id-different-fields':
      return `what is stored under its id differs in ${reason.fields.join(', ')}`
    case 'unknown-project':
      return `there is no project ${reason.project}`
    case 'unstorable':
      return 'the store cannot hold it unchanged'
  }
}

const problem = (file: string, place: string, expected: string, found: string): InputProblem => ({
  file,
  place,
  expected,
  found,
})
