import { assignmentOf } from '../formats/entry/assignment-of.ts'
import type { AssignmentBody, EntryOf } from '../formats/entry/entry-kinds.ts'
import type { Print } from '../words/print.ts'
import { documentWords } from './words/document-words.ts'

export type NamedAssignment = Pick<EntryOf<AssignmentBody>, 'body'>

/** Who sees to a finding and by when, as it was said last; null where nobody said it. */
export function assignmentText(assignments: readonly NamedAssignment[], finding: string, print: Print): string | null {
  const last = assignmentOf(assignments, finding)
  if (last === undefined || (last.owner === null && last.due === null)) return null
  return documentWords(print).record.assigned(last.owner === null ? null : print.theirs(last.owner), last.due)
}
