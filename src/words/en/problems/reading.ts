import { printDecimal } from '../../../core/units/decimal-text.ts'
import { isLengthUnit, valueIn } from '../../../core/units/quantity-kinds.ts'
import type { Printers } from '../../print.ts'
import type { ReadingProblem } from '../../problems/reading.ts'
import { aQuantity } from './quantity.ts'

export const readingProblems: Printers<ReadingProblem> = {
  'who took it': () => 'who took it, here or in visit.by',
  'when it was taken': () => 'when it was taken, here or in visit.at',
  'only beside a value': () => 'nothing, it belongs to a value',
  'moment of reading with zone': () => 'a time with its zone',
  'side of line': () => 'on which side of the line: "away" (from traffic), "toward" (traffic), or "not stated"',
  'no side yet': () => 'no side in lapwise-readings/1, it begins with lapwise-readings/2',
  'only beside an offset': () => 'nothing, it belongs to the value of an offset',
  'offset without sign': () => 'a length of 0 or more, its side says where it lies',
  'one answer': ({ fields, given }) =>
    `one answer (${fields.join(', ')})${given.length > 1 ? `, not ${given.join(' and ')}` : ''}`,
  'no setting aside': () => 'another answer: no sheet says that this may be set aside',
  'requirement of run': () => 'the id of a requirement of this run (see the requirements command)',
  'earlier reading': () => 'the id of an earlier reading of the same thing',
  'answer to': ({ look }) => answers[look],
  'measured answer': ({ quantity }) => `${aQuantity[quantity]} as "value"`,
  quantity: ({ quantity }) => aQuantity[quantity],
  'choice given': () => 'a choice',
  'confirmation given': () => 'a confirmation',
  'value read': ({ value, unit }) =>
    `${isLengthUnit(unit) ? printDecimal(value, unit, 3) : valueIn(value, unit)} ${unit}`,
  'no recheck': ({ of }) => `null, because a reading of ${of} proves no finding put right`,
  'finding to recheck': ({ of, findings }) =>
    `a finding that a reading of ${of} can prove put right: ${findings.join(', ')}`,
  'one of names': ({ names }) => `one of ${names.join(', ')}`,
}

const answers = {
  choose: 'one of its choices as "choice"',
  confirm: 'true or false as "confirmed"',
  record: 'no reading: it is decided from the run file',
} as const
