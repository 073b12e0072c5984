import type { SpanishWords } from './spanish-words.ts'

/** Words of a layout that other prose still has. */
export const layoutWords: SpanishWords = {
  sentences: {
    first: 'primer',
    second: 'segundo',
    'at posts': 'en los postes',
    'midway between posts': 'a media distancia entre postes',
    full: 'entera',
    half: 'mitad',
    quarter: 'cuarta parte',
    single: 'de un poste',
    'long span': 'de vano largo',
    'nested span': 'de vano con baranda doble',
    none: 'ninguno',
    'standing run': 'tramo existente',
  },
  patterns: [
    ['# post', '# poste'],
    ['# posts', '# postes'],
    ['# panel', '# panel'],
    ['# panels', '# paneles'],
    ['# piece', '# pieza'],
    ['# pieces', '# piezas'],
    ['# splice', '# empalme'],
    ['# splices', '# empalmes'],
    ['on post #', 'en el poste #'],
    ['midway between posts # and #', 'a media distancia entre los postes # y #'],
  ],
}
