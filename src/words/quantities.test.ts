import { expect, it } from 'vitest'
import { byHand } from '../../test/fixtures/by-hand.ts'
import { sheetText } from '../core/hardware/sheet-text.ts'
import type { PieceName, QuantitySaying } from '../core/quantities/quantity-saying.ts'
import { shippedSheets } from '../sheets/shipped-sheets.ts'
import { english } from './english.ts'
import { spanish } from './spanish.ts'

const terminal = shippedSheets.find(({ id }) => id === 'flared-terminal-31')!
const [hinged, standard] = [sheetText(terminal, 'hinged breakaway post'), sheetText(terminal, 'standard post')]

it.each<[QuantitySaying, string, string]>([
  [
    { kind: 'posts of kind', of: hinged, place: 'terminal', stand: false },
    'Hinged breakaway post of the terminal',
    'Poste frangible con bisagra del terminal',
  ],
  [
    { kind: 'posts of kind', of: standard, place: 'run', stand: true },
    'Standard post of the run, in the ground already',
    'Poste estándar del tramo, ya en el terreno',
  ],
  [
    { kind: 'panels of kind', of: null, inches: 112.5, gauge: 12, hang: false },
    'Panel, 9 ft 4 1/2 in, 12 gauge',
    'Panel, 9 ft 4 1/2 in, calibre 12',
  ],
  [
    { kind: 'splice bolts', at: 'single rail' },
    'Splice bolts with recessed nuts, 5/8 in x 1 1/4 in',
    'Tornillos de empalme con tuerca rebajada, 5/8 in x 1 1/4 in',
  ],
  [
    { kind: 'pay boundary at post', number: 19, own: { number: 2, of: 'trailing anchor' } },
    'at the centre of post 19 (post 2 of the trailing anchor)',
    'en el centro del poste 19 (poste 2 del anclaje de salida)',
  ],
])('%o is %s', (saying, inEnglish, inSpanish) => {
  expect(english(null).say(saying)).toBe(inEnglish)
  expect(spanish(null).say(saying)).toBe(inSpanish)
})

it('a panel is told by its name, length and gauge, whatever its name says', () => {
  const piece = {
    kind: 'panels of kind',
    of: byHand('W-to-thrie piece'),
    inches: 75,
    gauge: 10,
    hang: true,
  } as const
  expect(english(null).say(piece)).toBe('W-to-thrie piece, 6 ft 3 in, 10 gauge, hangs already')
})

it('many pieces are told in few words, in the order of the first of each', () => {
  const panel = (number: number, how: 'whole' | 'part' | 'nested' = 'whole'): PieceName => ({
    kind: 'numbered piece',
    ...{ of: 'panel', number, how },
  })
  const pieces = [panel(3, 'part'), ...[6, 4, 5, 9].map((number) => panel(number)), panel(11, 'nested')]
  expect(english(null).say({ kind: 'pieces', pieces })).toBe('part of panel 3; panels 4 to 6 and 9; panel 11, nested')
  expect(spanish(null).say({ kind: 'pieces', pieces: [...pieces, { kind: 'splice to standing run' }] })).toBe(
    'parte del panel 3; paneles 4 a 6 y 9; panel 11, doble y empalme con el tramo existente',
  )
})

it('a stake is said with the post that it stands for', () => {
  const post = { kind: 'post at stake', of: hinged, block: false } as const
  const own = { number: 2, unit: 'terminal' } as const
  expect(english(null).say({ ...post, own, state: null })).toBe(
    'hinged breakaway post without block, post 2 of the terminal',
  )
  expect(spanish(null).say({ ...post, own: null, state: 'stands already' })).toBe(
    'poste frangible con bisagra sin bloque, ya está',
  )
})
