import { lacksSide } from '../../core/measurement/offset-side.ts'
import type { Reading } from '../../core/measurement/reading.ts'
import type { Requirement } from '../../core/requirements/requirement.ts'
import { type Unit, valueIn } from '../../core/units/quantity-kinds.ts'
import { standingOf } from '../../core/verdicts/free-findings.ts'
import { remedyOf } from '../../core/verdicts/saying.ts'
import type { Verdict } from '../../core/verdicts/verdict.ts'
import type { EntryOf, PhotoBody } from '../../formats/entry/entry-kinds.ts'
import type { Print } from '../../words/print.ts'
import { askedEarlierLines } from '../asked-earlier.ts'
import { assignmentText, type NamedAssignment } from '../assignment-text.ts'
import { type ReadingLine, readingLine } from '../reading-lines.ts'
import type { RecordInput } from '../record-input.ts'
import { requirementLines } from '../requirement-lines.ts'
import { documentWords } from '../words/document-words.ts'
import { type Cell, type Column, column, type Sheet } from './sheet.ts'

/** What must be true of the run with its verdicts, what was read, and what is found. */
export function requirementsSheet(input: RecordInput): Sheet {
  const { frame, workbook } = documentWords(input.print)
  const words = workbook.requirements
  const verdicts = new Map(input.judgement.verdicts.map((verdict) => [verdict.requirement, verdict]))
  return {
    name: words.name,
    page: 'landscape',
    columns: [
      column(words.number, 8),
      column(words.requirement, 30),
      column(words.place, 30),
      column(words.must, 44),
      column(words.limit, 30),
      column(words.value, 12),
      column(words.unit, 8),
      column(words.margin, 12),
      column(words.uncertainty, 14, 4),
      column(words.verdict, 14),
      column(words.reason, 44),
      column(words.readings, 20),
      column(words.sheet, 30),
      column(words.source, 36),
      column(words.confirmation, 16),
    ],
    rows: requirementLines(input).map((line, i): Cell[] => {
      const [value, unit, margin, uncertainty] = measuredCells(verdicts.get(line.id), input.print)
      const { source } = input.requirements[i] as Requirement
      return [
        line.number,
        line.id,
        line.place.name,
        line.must,
        line.limit,
        value,
        unit,
        margin,
        uncertainty,
        frame.verdicts[line.verdict],
        line.reason,
        line.readings.map(({ id }) => id).join(', '),
        line.sheet,
        input.print.say(source),
        frame.confirmations[line.confirmation],
      ]
    }),
  }
}

function measuredCells(verdict: Verdict | undefined, print: Print): readonly [Cell, Cell, Cell, Cell] {
  if (verdict?.because.kind !== 'measured') return [null, null, null, null]
  const { value, unit, margin, uncertainty } = verdict.because
  return [value, unitCell(unit, print), margin, uncertainty]
}

const unitCell = (unit: Unit, print: Print): Cell => (unit === 'count' ? documentWords(print).workbook.count : unit)

export function readingsSheet(input: RecordInput): Sheet {
  const byId = new Map(input.requirements.map((requirement) => [requirement.id, requirement]))
  return {
    name: documentWords(input.print).workbook.readings.name,
    page: 'landscape',
    columns: readingColumns(input.print),
    rows: input.readings.map((reading) =>
      readingCells(reading, readingLine(reading, byId.get(reading.of), input), input.print),
    ),
  }
}

function readingColumns(print: Print): readonly Column[] {
  const words = documentWords(print).workbook.readings
  return [
    column(words.reading, 12),
    column(words.of, 30),
    column(words.answer, 24),
    column(words.length, 14),
    column(words.unit, 8),
    column(words.side, 20),
    column(words.instrument, 24),
    column(words.uncertainty, 24),
    column(words.by, 20),
    column(words.at, 24),
    column(words.where, 30),
    column(words.note, 44),
    column(words.photos, 30),
    column(words.corrects, 12),
    column(words.rechecks, 24),
    column(words.withoutEffect, 44),
  ]
}

function readingCells(reading: Reading, line: ReadingLine, print: Print): readonly Cell[] {
  const { answer } = reading
  return [
    line.id,
    line.of,
    line.answer,
    answer.kind === 'measured' ? valueIn(answer.value, answer.unit) : null,
    answer.kind === 'measured' ? unitCell(answer.unit, print) : null,
    sideOf(reading, print),
    line.instrument,
    line.uncertainty,
    line.by,
    line.at,
    line.where,
    line.note,
    line.photos.join(', '),
    line.corrects,
    line.rechecks,
    line.withoutEffect.join('; '),
  ]
}

function sideOf(reading: Reading, print: Print): string | null {
  if (lacksSide(reading)) return documentWords(print).workbook.readings.sideNotStated
  const { answer } = reading
  return answer.kind === 'measured' && answer.side !== undefined ? print.say({ kind: 'side', side: answer.side }) : null
}

/** What an earlier version asked and this one does not: readings first, then photos of it. */
export function askedEarlierSheet(input: RecordInput, photos: readonly EntryOf<PhotoBody>[]): Sheet {
  const words = documentWords(input.print).workbook.askedEarlier
  const lines = askedEarlierLines(input, photos)
  return {
    name: words.name,
    page: 'landscape',
    columns: [...readingColumns(input.print), column(words.version, 38), column(words.why, 44)],
    rows: [
      ...input.askedEarlier.map(({ reading }, i) => {
        const { reading: line, version, why } = lines.readings[i]!
        return [...readingCells(reading, line, input.print), version, why]
      }),
      ...lines.photos.map(({ photo, of, by, at, note, why }): Cell[] => [
        ...[null, of, null, null, null, null, null, null, by, at, null, note, photo, null, null, null, null, why],
      ]),
    ],
  }
}

export function findingsSheet({ judgement, print }: RecordInput, assignments: readonly NamedAssignment[]): Sheet {
  const words = documentWords(print).workbook.findings
  return {
    name: words.name,
    page: 'landscape',
    columns: [
      column(words.place, 36),
      column(words.what, 44),
      column(words.remedy, 60),
      column(words.assigned, 28),
      column(words.requirements, 40),
    ],
    rows: [
      ...judgement.findings.map((finding): Cell[] => [
        print.say(finding.place),
        print.say(finding.what),
        print.say(remedyOf(finding)),
        assignmentText(assignments, finding.id, print),
        finding.requirements.join(', '),
      ]),
      ...standingOf(judgement.freeFindings).map(({ finding, place, severity }): Cell[] => {
        const said = [print.say({ kind: 'seen', what: finding.what }), print.say({ kind: 'severity', rated: severity })]
        const note = finding.note === null ? [] : [print.theirs(finding.note)]
        const assigned = assignmentText(assignments, finding.id, print)
        return [place === null ? null : print.say(place), [...said, ...note].join('; '), null, assigned, finding.id]
      }),
    ],
  }
}
