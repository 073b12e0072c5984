import { printLength } from '../../../core/units/print-length.ts'
import { kindOf } from '../../../core/units/quantity-kinds.ts'
import { plainNumber } from '../../plain-number.ts'
import type { Printers } from '../../print.ts'
import type { Bound, ShapeProblem, ValueType } from '../../problems/shape.ts'
import { aQuantity } from './quantity.ts'

export const shapeProblems: Printers<ShapeProblem> = {
  slug: () => 'letras minúsculas y cifras, unidas por guiones',
  UUID: () => 'un UUID de versión 7 en minúsculas (RFC 9562)',
  sha256: () => 'un sha256 en hexadecimal con minúsculas',
  base64: () => 'base64',
  'name without controls': () => 'un nombre sin caracteres de control',
  day: () => 'una fecha como 2017-03-15',
  'day in years': ({ least, most }) => `una fecha en los años ${least} a ${most}`,
  moment: () => 'fecha y hora como 2026-05-04T10:30 (ISO 8601)',
  'moment in years': ({ least, most }) => `fecha y hora en los años ${least} a ${most}`,
  'whole sixteenths': () => 'un número entero de 1/16 in',
  'sheet or standing splice': () => 'un objeto con "sheet", o uno con "standingSplice"',
  'time zone': () => 'el nombre de un huso horario, como America/Denver',
  'storable text': () => 'un texto sin U+0000 ni mitades de pares sustitutos',
  'moment with zone': () => 'fecha y hora como 2026-05-04T13:20:00-05:00, en los años 0001 a 9999',
  'another value': () => 'otro valor',
  'not listed before': () => 'algo que no esté ya en la lista',
  'length from zero': () => 'una longitud de al menos 0',
  'length too great': () => 'una longitud de menos de 9007 km',
  'value of type': ({ type }) => types[type],
  'one of values': ({ values }) => values.join(' o '),
  'no field named': ({ name }) => `ningún campo llamado ${JSON.stringify(name)}`,
  'number bound': ({ bound, value }) => `un valor de ${bounds[bound]} ${plainNumber(value)}`,
  'text bound': ({ bound, value }) =>
    bound === 'at least' && value === 1
      ? 'un texto que no esté vacío'
      : `${bounds[bound]} ${plainNumber(value)} caracteres`,
  'list bound': ({ bound, value }) =>
    bound === 'at least' && value === 1
      ? 'una lista que no esté vacía'
      : `${bounds[bound]} ${plainNumber(value)} en la lista`,
  'sixteenths near': ({ nearest }) =>
    `un número entero de 1/16 in (el más cercano es ${printLength(nearest, 'inches')})`,
  'length of at most inches': ({ inches }) => `una longitud de a lo más ${inches} in`,
  'value between': ({ least, most, unit }) =>
    `${aQuantity[kindOf(unit)]} de ${plainNumber(least)} ${unit} a ${plainNumber(most)} ${unit}`,
  'value above zero': ({ quantity }) => `${aQuantity[quantity]} de más de 0`,
  'value above zero, at most': ({ most, unit }) =>
    `${aQuantity[kindOf(unit)]} de más de 0, a lo más ${plainNumber(most)} ${unit}`,
  nothing: () => 'nada',
  none: () => 'ninguno',
  one: () => 'uno',
  more: () => 'más',
  neither: () => 'ni lo uno ni lo otro',
  'empty list': () => 'una lista vacía',
  'empty object': () => 'un objeto vacío',
  'list of': ({ length }) => `una lista de ${length}`,
  'object with': ({ fields }) => `un objeto con ${fields}`,
  'end of document': () => 'nada después del documento',
  'a value': () => 'un valor',
  'field name in quotes': () => 'un nombre de campo entre comillas dobles',
  'each field once': () => 'cada campo una vez',
  colon: () => '":" después del nombre del campo',
  'comma or brace': () => '"," o "}"',
  'comma or bracket': () => '"," o "]"',
  'quote before line end': () => 'comillas dobles de cierre antes del fin de la línea',
  escape: () => 'un escape como \\n, \\" o \\\\',
  'closing quote': () => 'comillas dobles de cierre',
  'end of text': () => 'el fin del texto',
  'end of line': () => 'el fin de la línea',
  'levels of nesting': ({ most }) => `a lo más ${most} niveles de anidamiento`,
  'field again': ({ name }) => `${JSON.stringify(name)} otra vez`,
}

const types: Readonly<Record<ValueType, string>> = {
  text: 'un texto',
  number: 'un número',
  'whole number': 'un número entero',
  'true or false': 'true o false',
  list: 'una lista',
  object: 'un objeto',
  null: 'null',
}

const bounds: Readonly<Record<Bound, string>> = {
  'at least': 'al menos',
  'more than': 'más de',
  'at most': 'a lo más',
  'less than': 'menos de',
}
