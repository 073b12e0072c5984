import { m } from '../messages.ts'
import type { DraftProblem } from './draft.ts'

/** What keeps a reading from being saved, in words, and the field at which it stands. */
export interface Complaint {
  readonly at: 'answer' | 'side' | 'by'
  readonly words: string
}

/** @param problem  of what was entered; null when only the name is missing */
export function complaintOf(problem: DraftProblem | null): Complaint {
  if (problem === null) return { at: 'by', words: m.entry.byMissing }
  switch (problem.kind) {
    case 'nothing given':
    case 'no value':
    case 'another quantity':
      return { at: 'answer', words: m.entry.answerMissing }
    case 'no reason given':
      return { at: 'answer', words: m.entry.becauseMissing }
    case 'no side given':
      return { at: 'side', words: m.entry.sideMissing }
    case 'offset below zero':
      return { at: 'side', words: m.entry.sideInstead }
  }
}

/** How the field of a complaint is found. */
export const fieldOf = { answer: '[data-first]', side: '[data-side]', by: '[data-by]' } as const

export const ComplaintNote = ({ complaint, at }: { complaint: Complaint | null; at: Complaint['at'] }) =>
  complaint?.at === at ? (
    <p class="trouble" role="alert">
      {complaint.words}
    </p>
  ) : null
