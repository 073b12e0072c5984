import type { AssignmentBody, EntryOf } from './entry-kinds.ts'

/** Who sees to a finding and by when, as it was said last; undefined where nobody said it. */
export const assignmentOf = (
  assignments: readonly Pick<EntryOf<AssignmentBody>, 'body'>[],
  finding: string,
): AssignmentBody | undefined => assignments.findLast(({ body }) => body.finding === finding)?.body
