import type { QuantitySaying } from '../../core/quantities/quantity-saying.ts'
import { groupPieces } from '../group-pieces.ts'
import { stretchTexts } from '../number-stretches.ts'
import type { Printers } from '../print.ts'
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
  'splice bolts': ({ at }) =>
    `Splice bolts with recessed nuts, ${at === 'single rail' ? '5/8 in x 1 1/4 in' : '5/8 in, at nested rail'}`,
  'thrie-beam splices': () => 'Thrie-beam splices',
  'post bolts': ({ through }) => `Post bolts, 5/8 in${boltWords[through]}`,
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
  'bolt length by block': () =>
    '18 in: wood block, wood post; 10 in: wood or approved block, steel post; 2 in: steel block, steel post',
  'bolt length by manual': () => "length by the maker's manual in force",

  'pay boundary at standing splice': () => 'at the splice that stands',
  'pay boundary at unknown end': () => 'where the counted rail ends',
  'pay boundary at splice': ({ of }) => `at the splice where the ${of} joins the run`,
  'pay boundary at post': ({ number, own }) => `at the centre of post ${number}${ownText('post', own)}`,
  'pay boundary at listed length': ({ of }) => `where the listed length of the ${of} runs out`,
}

const boltWords = {
  'wood block and post': ' x 18 in',
  block: ', length by post and block',
  'no block': ', at posts without a block',
} as const
