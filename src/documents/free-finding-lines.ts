import type { PlacedFreeFinding } from '../core/verdicts/free-findings.ts'
import { assignmentText, type NamedAssignment } from './assignment-text.ts'
import { timeText } from './printed-time.ts'
import type { RecordInput } from './record-input.ts'
import { type PlaceLine, placeLine } from './requirement-lines.ts'
import { documentWords } from './words/document-words.ts'

/** Something seen that no requirement asks for. */
export interface FreeFindingLine {
  readonly what: string
  /** Null where the version in force has no such place. */
  readonly place: PlaceLine | null
  readonly severity: string
  readonly note: string | null
  readonly by: string
  /** By what and by whom it was closed; null while it stands. */
  readonly closed: string | null
  /** Who sees to it; null where nobody was named. */
  readonly assigned: string | null
}

/** Those that stand first, the worst before the others. */
export const freeFindingLines = (
  input: RecordInput,
  assignments: readonly NamedAssignment[],
): readonly FreeFindingLine[] => input.judgement.freeFindings.map((one) => freeFindingLine(input, one, assignments))

function freeFindingLine(
  input: RecordInput,
  { finding, place, severity }: PlacedFreeFinding,
  assignments: readonly NamedAssignment[],
): FreeFindingLine {
  const { print } = input
  const { closed } = finding
  const words = documentWords(print).record
  const signed = (by: string, at: string): string => `${print.theirs(by)}, ${timeText(at)}`
  return {
    what: print.say({ kind: 'seen', what: finding.what }),
    place: place === null ? null : placeLine(input, place),
    severity: print.say({ kind: 'severity', rated: severity }),
    note: finding.note === null ? null : print.theirs(finding.note),
    by: signed(finding.by, finding.at),
    closed:
      closed === null
        ? null
        : [
            `${words.closedAs[closed.as]} ${signed(closed.by, closed.at)}`,
            ...(closed.note === null ? [] : [print.theirs(closed.note)]),
          ].join(': '),
    assigned: assignmentText(assignments, finding.id, print),
  }
}
