import type { InputProblem } from '../formats/input-problem.ts'
import type { EntryAnswer } from '../protocol/entries.ts'
import type { NewEntry, RejectionReason, EntryAnswer as StoreAnswer } from '../store/entry.ts'

/** What is to be stored, or why not. */
export type Draft = { readonly entry: NewEntry } | EntryAnswer

export const rejected = (id: string, reason: string, problems: readonly InputProblem[]): EntryAnswer => ({
  ...{ id, outcome: 'rejected', reason, problems },
})

export const problem = (file: string, place: string, expected: string, found: string): InputProblem => ({
  ...{ file, place, expected, found },
})

export function answerOf(answer: StoreAnswer): EntryAnswer {
  if (answer.outcome !== 'rejected') return answer
  const { id, reason } = answer
  return rejected(id, rejectionWords(reason), reason.kind === 'unstorable' ? reason.problems : [])
}

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
