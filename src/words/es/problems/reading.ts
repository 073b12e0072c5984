import { printDecimal } from '../../../core/units/decimal-text.ts'
import { isLengthUnit, valueIn } from '../../../core/units/quantity-kinds.ts'
import type { Printers } from '../../print.ts'
import type { ReadingProblem } from '../../problems/reading.ts'
import { aQuantity } from './quantity.ts'

export const readingProblems: Printers<ReadingProblem> = {
  'who took it': () => 'quién la tomó, aquí o en visit.by',
  'when it was taken': () => 'cuándo se tomó, aquí o en visit.at',
  'only beside a value': () => 'nada, eso va con un value',
  'moment of reading with zone': () => 'una hora con su huso',
  'side of line': () =>
    'de qué lado de la línea: "away" (lejos del tránsito), "toward" (hacia él) o "not stated" (sin decir)',
  'no side yet': () => 'ningún lado en lapwise-readings/1, empieza con lapwise-readings/2',
  'only beside an offset': () => 'nada, eso va con el valor de una distancia lateral',
  'offset without sign': () => 'una longitud de 0 o más, su lado dice dónde está',
  'one answer': ({ fields, given }) =>
    `una respuesta (${fields.join(', ')})${given.length > 1 ? `, no ${given.join(' y ')}` : ''}`,
  'no setting aside': () => 'otra respuesta: ninguna ficha dice que esto se pueda apartar',
  'requirement of run': () => 'el id de un requisito de este tramo (vea la orden requirements)',
  'earlier reading': () => 'el id de una lectura anterior de lo mismo',
  'answer to': ({ look }) => answers[look],
  'measured answer': ({ quantity }) => `${aQuantity[quantity]} en "value"`,
  quantity: ({ quantity }) => aQuantity[quantity],
  'choice given': () => 'una opción',
  'confirmation given': () => 'una confirmación',
  'value read': ({ value, unit }) =>
    `${isLengthUnit(unit) ? printDecimal(value, unit, 3) : valueIn(value, unit)} ${unit}`,
  'no recheck': ({ of }) => `null, porque una lectura de ${of} no prueba que ningún hallazgo esté corregido`,
  'finding to recheck': ({ of, findings }) =>
    `un hallazgo cuya corrección puede probar una lectura de ${of}: ${findings.join(', ')}`,
  'one of names': ({ names }) => `uno de ${names.join(', ')}`,
}

const answers = {
  choose: 'una de sus opciones en "choice"',
  confirm: 'true o false en "confirmed"',
  record: 'ninguna lectura: se decide con el archivo del tramo',
} as const
