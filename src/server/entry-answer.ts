import type { InputProblem } from '../formats/input-problem.ts'
import type { EntryAnswer } from '../protocol/entries.ts'
import type { NewEntry, RejectionReason, EntryAnswer as StoreAnswer } from '../store/entry.ts'
import type { Rejection } from '../words/answers.ts'
import { problemTold, told } from './refusal.ts'

/** What is to be stored, or why not. */
export type Draft = { readonly entry: NewEntry } | EntryAnswer

export function rejected(id: string, why: Rejection, problems: readonly InputProblem[]): EntryAnswer {
  const { message: reason, saying } = told(why)
  return { id, outcome: 'rejected', reason, saying, problems: problems.map(problemTold) }
}

export const problem = (
  file: string,
  place: string,
  expected: InputProblem['expected'],
  found: InputProblem['found'],
): InputProblem => ({ file, place, expected, found })

export function answerOf(answer: StoreAnswer): EntryAnswer {
  if (answer.outcome !== 'rejected') return answer
  const { id, reason } = answer
  return rejected(id, rejectionFor(reason), reason.kind === 'unstorable' ? reason.problems : [])
}

function rejectionFor(reason: RejectionReason): Rejection {
  switch (reason.kind) {
    case 'same-id-different-body':
      return { kind: 'same id stored' }
    case 'same-id-different-fields':
      return { kind: 'fields differ', fields: reason.fields }
    case 'unknown-project':
      return { kind: 'no project', project: reason.project }
    case 'unstorable':
      return { kind: 'unstorable' }
  }
}
