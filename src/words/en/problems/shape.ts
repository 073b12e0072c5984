import { printLength } from '../../../core/units/print-length.ts'
import { kindOf } from '../../../core/units/quantity-kinds.ts'
import { plainNumber } from '../../plain-number.ts'
import type { Printers } from '../../print.ts'
import type { Bound, ShapeProblem, ValueType } from '../../problems/shape.ts'
import { aQuantity } from './quantity.ts'

export const shapeProblems: Printers<ShapeProblem> = {
  slug: () => 'lower-case letters and digits, joined by hyphens',
  UUID: () => 'a UUID of version 7 in lower case (RFC 9562)',
  sha256: () => 'a sha256 in lower-case hexadecimal',
  base64: () => 'base64',
  'name without controls': () => 'a name without control characters',
  day: () => 'a date such as 2017-03-15',
  'day in years': ({ least, most }) => `a date in the years ${least} to ${most}`,
  moment: () => 'a date and time such as 2026-05-04T10:30 (ISO 8601)',
  'moment in years': ({ least, most }) => `a date and time in the years ${least} to ${most}`,
  'whole sixteenths': () => 'a whole number of 1/16 in',
  'sheet or standing splice': () => 'an object with "sheet", or one with "standingSplice"',
  'time zone': () => 'the name of a time zone, as America/Denver',
  'storable text': () => 'text without U+0000 and half surrogate pairs',
  'moment with zone': () => 'a time as 2026-05-04T13:20:00-05:00, in the years 0001 to 9999',
  'another value': () => 'another value',
  'not listed before': () => 'something not listed before',
  'length from zero': () => 'a length of at least 0',
  'length too great': () => 'a length below 9007 km',
  'value of type': ({ type }) => types[type],
  'one of values': ({ values }) => values.join(' or '),
  'no field named': ({ name }) => `no field named ${JSON.stringify(name)}`,
  'number bound': ({ bound, value }) => `a value of ${bounds[bound]} ${plainNumber(value)}`,
  'text bound': ({ bound, value }) =>
    bound === 'at least' && value === 1
      ? 'a text that is not empty'
      : `${bounds[bound]} ${plainNumber(value)} characters`,
  'list bound': ({ bound, value }) =>
    bound === 'at least' && value === 1
      ? 'a list that is not empty'
      : `${bounds[bound]} ${plainNumber(value)} in the list`,
  'sixteenths near': ({ nearest }) => `a whole number of 1/16 in (the nearest is ${printLength(nearest, 'inches')})`,
  'length of at most inches': ({ inches }) => `a length of at most ${inches} in`,
  'value between': ({ least, most, unit }) =>
    `${aQuantity[kindOf(unit)]} of ${plainNumber(least)} ${unit} to ${plainNumber(most)} ${unit}`,
  'value above zero': ({ quantity }) => `${aQuantity[quantity]} of more than 0`,
  'value above zero, at most': ({ most, unit }) =>
    `${aQuantity[kindOf(unit)]} of more than 0, at most ${plainNumber(most)} ${unit}`,
  nothing: () => 'nothing',
  none: () => 'none',
  one: () => 'one',
  more: () => 'more',
  neither: () => 'neither',
  'empty list': () => 'an empty list',
  'empty object': () => 'an empty object',
  'list of': ({ length }) => `a list of ${length}`,
  'object with': ({ fields }) => `an object with ${fields}`,
  'end of document': () => 'nothing after the document',
  'a value': () => 'a value',
  'field name in quotes': () => 'a field name in double quotes',
  'each field once': () => 'each field once',
  colon: () => '":" after the field name',
  'comma or brace': () => '"," or "}"',
  'comma or bracket': () => '"," or "]"',
  'quote before line end': () => 'a closing double quote before the line ends',
  escape: () => 'an escape such as \\n, \\" or \\\\',
  'closing quote': () => 'a closing double quote',
  'end of text': () => 'the end of the text',
  'end of line': () => 'the end of the line',
  'levels of nesting': ({ most }) => `at most ${most} levels of nesting`,
  'field again': ({ name }) => `${JSON.stringify(name)} again`,
}

const types: Readonly<Record<ValueType, string>> = {
  text: 'a text',
  number: 'a number',
  'whole number': 'a whole number',
  'true or false': 'true or false',
  list: 'a list',
  object: 'an object',
  null: 'null',
}

const bounds: Readonly<Record<Bound, string>> = {
  'at least': 'at least',
  'more than': 'more than',
  'at most': 'at most',
  'less than': 'less than',
}
