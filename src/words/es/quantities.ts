import type { PostBolts, QuantitySaying } from '../../core/quantities/quantity-saying.ts'
import { groupPieces } from '../group-pieces.ts'
import { stretchTexts } from '../number-stretches.ts'
import type { Print, Printers } from '../print.ts'
import { upperFirst } from '../upper-first.ts'
import { sheetKind } from './fit-changes.ts'
import { ownText } from './places.ts'

export const quantities: Printers<QuantitySaying> = {
  'panel as named': ({ of }, print) => (of === null ? 'panel' : print.say(of)),
  'gauge of panel': ({ gauge }) => `calibre ${gauge}`,
  'rail of run': () => 'Baranda del tramo',
  'rail from end to end': () => 'Baranda de extremo a extremo',
  'end units': ({ sheet }, print) => print.say(sheet),
  'posts of kind': ({ of, place, stand }, print) => {
    const where = place === null ? '' : place === 'run' ? ' del tramo' : ` del ${sheetKind[place]}`
    return `${upperFirst(print.say(of))}${where}${stand ? ', ya en el terreno' : ''}`
  },
  'offset blocks': () => 'Bloques separadores',
  'panels of kind': ({ of, inches, gauge, hang }, print) => {
    const [name, shown] = [print.say({ kind: 'panel as named', of }), print.say({ kind: 'gauge of panel', gauge })]
    return `${upperFirst(name)}, ${print.feetInches(inches)}, ${shown}${hang ? ', ya colgado' : ''}`
  },
  'splice bolts': ({ at }, print) =>
    `Tornillos de empalme con tuerca rebajada, ${boltSize(print)}${at === 'single rail' ? ` x ${print.length(1.25, 'in')}` : ', en baranda doble'}`,
  'thrie-beam splices': () => 'Empalmes de triple onda',
  'post bolts': ({ through }, print) => `Tornillos de poste, ${boltSize(print)}${boltWords(through, print)}`,
  'posts not said to be bolted': () => 'Postes de los que la ficha no dice si la baranda va atornillada a ellos',

  'numbered piece': ({ of, number, how }) =>
    `${how === 'part' ? 'parte del ' : ''}${pieceWords[of][0]} ${number}${how === 'nested' ? ', doble' : ''}`,
  'splice to standing run': () => 'empalme con el tramo existente',
  'end of run': ({ end }) => `${end === 'first' ? 'primer' : 'segundo'} extremo`,
  'spares begun': ({ each, of }) => `uno por cada ${each} empezados, de ${of}`,
  pieces: ({ pieces }, print) => {
    const { groups, others } = groupPieces(pieces)
    return [
      ...groups.map(({ of, how, numbers }) => {
        const [one, several] = pieceWords[of]
        const isOne = new Set(numbers).size === 1
        const part = how === 'whole' ? '' : isOne ? 'parte del ' : 'parte de los '
        return `${part}${isOne ? one : several} ${print.list(stretchTexts(numbers, 'a'), 'and')}`
      }),
      ...(others.length === 0 ? [] : [print.list(others.map(print.say), 'and')]),
    ].join('; ')
  },

  'habit of carrying spares': () =>
    'ningún documento; una costumbre que la agencia o el contratista ha de sustituir por la suya',
  'length by drawing': () => 'longitud según el plano vigente: la ficha no la indica',
  'length by layers': () => 'longitud según el número de capas en el empalme',
  'bolts by drawing': () => 'tornillos según el plano propio de la transición',
  'bolted by manual': () => 'según el manual vigente del fabricante',
  'bolt length by block': (_, { length }) =>
    `${length(18, 'in')}: bloque de madera, poste de madera; ${length(10, 'in')}: bloque de madera o aprobado, poste de acero; ${length(2, 'in')}: bloque de acero, poste de acero`,
  'bolt length by manual': () => 'longitud según el manual vigente del fabricante',

  'pay boundary at standing splice': () => 'en el empalme existente',
  'pay boundary at unknown end': () => 'donde termina la baranda contada',
  'pay boundary at splice': ({ of }) => `en el empalme donde el ${sheetKind[of]} se une al tramo`,
  'pay boundary at post': ({ number, own }) => `en el centro del poste ${number}${ownText('poste', own)}`,
  'pay boundary at listed length': ({ of }) => `donde termina la longitud que la ficha da para el ${sheetKind[of]}`,
}

const boltSize = (print: Print): string => print.length(0.625, 'in')

const boltWords = (through: PostBolts, print: Print): string =>
  ({
    'wood block and post': ` x ${print.length(18, 'in')}`,
    block: ', longitud según poste y bloque',
    'no block': ', en postes sin bloque',
  })[through]

const pieceWords = {
  post: ['poste', 'postes'],
  panel: ['panel', 'paneles'],
  splice: ['empalme', 'empalmes'],
} as const
