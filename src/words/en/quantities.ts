import type { PostBolts, QuantitySaying } from '../../core/quantities/quantity-saying.ts'
import { groupPieces } from '../group-pieces.ts'
import { stretchTexts } from '../number-stretches.ts'
import type { Print, Printers } from '../print.ts'
import { upperFirst } from '../upper-first.ts'
import { ownText } from './places.ts'

export const quantities: Printers<QuantitySaying> = {
  'panel as named': ({ of }, print) => (of === null ? 'panel' : print.say(of)),
  'gauge of panel': ({ gauge }) => `${gauge} gauge`,
  'rail of run': () => 'Rail of the run',
  'rail from end to end': () => 'Rail from end to end',
  'end units': ({ sheet }, print) => print.say(sheet),
  'posts of kind': ({ of, place, stand }, print) =>
    `${upperFirst(print.say(of))}${place === null ? '' : ` of the ${place}`}${stand ? ', in the ground already' : ''}`,
  'offset blocks': () => 'Offset blocks',
  'panels of kind': ({ of, inches, gauge, hang }, print) => {
    const [name, shown] = [print.say({ kind: 'panel as named', of }), print.say({ kind: 'gauge of panel', gauge })]
    return `${upperFirst(name)}, ${print.feetInches(inches)}, ${shown}${hang ? ', hangs already' : ''}`
  },
  'splice bolts': ({ at }, print) =>
    `Splice bolts with recessed nuts, ${boltSize(print)}${at === 'single rail' ? ` x ${print.length(1.25, 'in')}` : ', at nested rail'}`,
  'thrie-beam splices': () => 'Thrie-beam splices',
  'post bolts': ({ through }, print) => `Post bolts, ${boltSize(print)}${boltWords(through, print)}`,
  'posts not said to be bolted': () => 'Posts of which the sheet does not say whether the rail is bolted to them',

  'numbered piece': ({ of, number, how }) =>
    `${how === 'part' ? 'part of ' : ''}${of} ${number}${how === 'nested' ? ', nested' : ''}`,
  'splice to standing run': () => 'splice to the standing run',
  'end of run': ({ end }) => `${end} end`,
  'spares begun': ({ each, of }) => `one for each ${each} begun, of ${of}`,
  pieces: ({ pieces }, print) => {
    const { groups, others } = groupPieces(pieces)
    return [
      ...groups.map(({ of, how, numbers }) => {
        const word = `${how === 'part' ? 'part of ' : ''}${of}${new Set(numbers).size === 1 ? '' : 's'}`
        return `${word} ${print.list(stretchTexts(numbers, 'to'), 'and')}`
      }),
      ...(others.length === 0 ? [] : [print.list(others.map(print.say), 'and')]),
    ].join('; ')
  },

  'habit of carrying spares': () => 'no document; a habit to be replaced by the agency or the contractor',
  'length by drawing': () => 'length by the drawing in force: the sheet does not state it',
  'length by layers': () => 'length by the number of layers at the splice',
  'bolts by drawing': () => "bolts by the transition's own drawing",
  'bolted by manual': () => "by the maker's manual in force",
  'bolt length by block': (_, { length }) =>
    `${length(18, 'in')}: wood block, wood post; ${length(10, 'in')}: wood or approved block, steel post; ${length(2, 'in')}: steel block, steel post`,
  'bolt length by manual': () => "length by the maker's manual in force",

  'pay boundary at standing splice': () => 'at the splice that stands',
  'pay boundary at unknown end': () => 'where the counted rail ends',
  'pay boundary at splice': ({ of }) => `at the splice where the ${of} joins the run`,
  'pay boundary at post': ({ number, own }) => `at the centre of post ${number}${ownText('post', own)}`,
  'pay boundary at listed length': ({ of }) => `where the listed length of the ${of} runs out`,
}

const boltSize = (print: Print): string => print.length(0.625, 'in')

const boltWords = (through: PostBolts, print: Print): string =>
  ({
    'wood block and post': ` x ${print.length(18, 'in')}`,
    block: ', length by post and block',
    'no block': ', at posts without a block',
  })[through]
