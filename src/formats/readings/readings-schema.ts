import * as z from 'zod/mini'
import { isOffset } from '../../core/measurement/offset-side.ts'
import type { Answer, Reading } from '../../core/measurement/reading.ts'
import { isLengthUnit, kindOf, type Unit, valueIn } from '../../core/units/quantity-kinds.ts'
import type { ParsedValue } from '../../core/units/value-text.ts'
import type { FreeFinding } from '../../core/verdicts/free-findings.ts'
import type { ProblemSaying } from '../../words/problems/problem-saying.ts'
import { type Contradiction, repeated, reportContradictions } from '../contradiction.ts'
import { doubtFault, readingValueFault } from '../range/quantity-range.ts'
import { writtenValue } from '../written-value.ts'
import { answerFields, type ReadingShape, type ReadingsShape, readingsShape } from './readings-shape.ts'

type Report = (field: string | null, expected: ProblemSaying) => void

/**
 * A readings file: its shape, what its texts say, and that no id stands twice. Whether a reading is one of the run, and
 * may correct and recheck what it says, is checked as it is taken in: a log that holds one opens for ever.
 */
export const readingsSchema = z.pipe(
  readingsShape,
  z.transform((file, context) => {
    const found: Contradiction[] = []
    if (file.visit.version !== undefined && isBefore3(file.format))
      found.push({
        path: ['visit', 'version'],
        expected: { kind: 'no version yet', format: file.format },
      })
    const ids = file.readings.map(({ id }, i) => id ?? `r${i + 1}`)
    const readings = file.readings.flatMap((shape, i) => {
      const reading = readingOf(shape, ids[i] as string, file, (field, expected) =>
        found.push({ path: ['readings', i, ...(field === null ? [] : [field])], expected }),
      )
      return reading ? [reading] : []
    })
    found.push(...repeated(ids.map((id, i) => [id, ['readings', i, 'id']])))
    found.push(...repeated(file.findings.map(({ id }, i) => [id, ['findings', i, 'id']])))
    found.push(...repeated(file.photoStrokes.map(({ id }, i) => [id, ['photoStrokes', i, 'id']])))
    reportContradictions(context, found)
    const { run, photoStrokes } = file
    return { run, readings, findings: file.findings.map(withoutUnsaid), photoStrokes }
  }),
)

/** The reading, or null when something it needs was reported instead. */
function readingOf(
  shape: ReadingShape,
  id: string,
  { format, units, visit }: ReadingsShape,
  report: Report,
): Reading | null {
  const bareUnit = shape.unit ?? (units === 'us' ? 'in' : 'mm')
  const by = shape.by ?? visit.by
  const at = shape.at ?? visit.at
  const version = shape.version ?? visit.version
  if (shape.version !== undefined && isBefore3(format)) report('version', { kind: 'no version yet', format })
  if (by === undefined) report('by', { kind: 'who took it' })
  if (at === undefined) report('at', { kind: 'when it was taken' })
  const given = answerOf(shape, bareUnit, report)
  const answer = sidedAnswer(given, shape, format, report)
  const uncertainty = uncertaintyOf(shape, given?.kind === 'measured' ? given.unit : bareUnit, bareUnit, report)
  if (by === undefined || at === undefined || answer === null) return null
  return {
    id,
    of: shape.of,
    answer,
    instrument: orVisit(shape.instrument, visit.instrument),
    uncertainty,
    by,
    at,
    where: orVisit(shape.where, visit.where),
    photos: shape.photos,
    corrects: shape.corrects,
    rechecks: shape.rechecks,
    together: shape.together,
    ...(shape.note === undefined ? {} : { note: shape.note }),
    ...(version === undefined ? {} : { version }),
  }
}

/** What is not said is left out, as of a reading. */
function withoutUnsaid({ severity, version, ...finding }: ReadingsShape['findings'][number]): FreeFinding {
  return {
    ...finding,
    ...(severity === undefined ? {} : { severity }),
    ...(version === undefined ? {} : { version }),
  }
}

const isBefore3 = (format: ReadingsShape['format']): boolean =>
  format === 'lapwise-readings/1' || format === 'lapwise-readings/2'

/** Null in a reading says that what holds for the visit does not hold for it. */
const orVisit = (own: string | null | undefined, visit: string | null | undefined): string | null =>
  own === undefined ? (visit ?? null) : own

function answerOf(shape: ReadingShape, bareUnit: Unit, report: Report): Answer | null {
  const given = answerFields.filter((field) => shape[field] !== undefined)
  if (given.length !== 1) {
    report(null, { kind: 'one answer', fields: answerFields, given })
    return null
  }
  if (shape.value !== undefined) return measuredAnswer(shape.value, shape.resolution, bareUnit, report)
  for (const field of ['unit', 'resolution', 'uncertainty'] as const)
    if (shape[field] !== undefined && shape[field] !== null) report(field, { kind: 'only beside a value' })
  if (shape.choice !== undefined) return { kind: 'choice', choice: shape.choice }
  if (shape.confirmed !== undefined) return { kind: 'confirmed', yes: shape.confirmed }
  if (shape.doesNotApply !== undefined) return { kind: 'does not apply', because: shape.doesNotApply }
  return { kind: 'cannot see' }
}

/**
 * The answer with its side, which an offset has to say: null where it does not. The first version of the format asked for
 * none, and gave one side of a string the minus sign.
 */
function sidedAnswer(
  answer: Answer | null,
  { of, side }: ReadingShape,
  format: ReadingsShape['format'],
  report: Report,
): Answer | null {
  if (answer === null) return null
  const isSided = answer.kind === 'measured' && isLengthUnit(answer.unit) && isOffset(of)
  if (side === undefined) {
    if (format === 'lapwise-readings/1' || !isSided || answer.value === 0) return answer
    report('side', { kind: 'side of line' })
    return null
  }
  if (format === 'lapwise-readings/1') report('side', { kind: 'no side yet' })
  else if (!isSided) report('side', { kind: 'only beside an offset' })
  else if (side === 'not stated') return answer
  else if (answer.value < 0) report('value', { kind: 'offset without sign' })
  else return { ...answer, side }
  return null
}

function measuredAnswer(
  given: string | number,
  resolution: string | undefined,
  bareUnit: Unit,
  report: Report,
): Answer | null {
  const read = writtenValue(given, bareUnit)
  if (!read.ok) {
    report('value', read.error)
    return null
  }
  const { value, unit } = read.value
  const beyond = readingValueFault(value, unit)
  if (beyond !== null) {
    report('value', beyond)
    return null
  }
  if (resolution === undefined) return { kind: 'measured', value, unit, resolution: null }
  const step = aboveZero('resolution', resolution, unit, bareUnit, report)
  return step && { kind: 'measured', value, unit, resolution: step.value }
}

/** @param unit  that of the value, whose kind it has */
function uncertaintyOf(
  { uncertainty }: ReadingShape,
  unit: Unit,
  bareUnit: Unit,
  report: Report,
): Reading['uncertainty'] {
  if (uncertainty === null) return null
  if (typeof uncertainty !== 'string') {
    const { value, unit: given } = uncertainty
    const beyond = kindOf(given) === kindOf(unit) ? doubtFault('uncertainty', value, given) : ofKind(unit)
    if (beyond !== null) report('uncertainty', beyond)
    return uncertainty
  }
  const read = aboveZero('uncertainty', uncertainty, unit, bareUnit, report)
  return read && { value: valueIn(read.value, read.unit), unit: read.unit }
}

/** What is stated beside a value of `unit`; a bare number is in that unit, or in `bareUnit` where it is a length. */
function aboveZero(
  field: 'resolution' | 'uncertainty',
  text: string,
  unit: Unit,
  bareUnit: Unit,
  report: Report,
): ParsedValue | null {
  const isLength = isLengthUnit(unit)
  const read = writtenValue(text, isLength && isLengthUnit(bareUnit) ? bareUnit : unit)
  if (!read.ok || kindOf(read.value.unit) !== kindOf(unit) || read.value.value <= 0) {
    report(field, read.ok ? ofKind(unit) : read.error)
    return null
  }
  const beyond = doubtFault(field, valueIn(read.value.value, read.value.unit), read.value.unit)
  if (beyond !== null) report(field, beyond)
  return read.value
}

const ofKind = (unit: Unit): ProblemSaying => ({ kind: 'value above zero', quantity: kindOf(unit) })
