import type { SpanishWords } from './spanish-words.ts'

/** Why a need cannot be computed. */
export const needWords: SpanishWords = {
  sentences: {
    'a lower speed': 'una velocidad menor',
  },
  patterns: [
    ['at most #, where $ ends, or $ given as a length', 'a lo más #, donde acaba $, o dar como longitud $'],
    ['runoutLength', 'la longitud de salida (runoutLength)'],
    ['clearZone', 'la zona despejada (clearZone)'],
    [
      "a slope no steeper than #, to which the table's distances apply directly, or clearZone given as a width",
      'un talud no más brusco que #, al que se aplican directamente las distancias de la tabla, o dar la zona despejada (clearZone) como ancho',
    ],
    ['a radius of at least #', 'un radio de al menos #'],
    [
      '$ for the curve factor of $ at # (it is not extrapolated), or clearZone given as a width',
      '$ para el factor de curva de $ a # (no se extrapola), o dar la zona despejada (clearZone) como ancho',
    ],
    ['a radius of #', 'un radio de #'],
    [
      'a curve with a radius of more than #, the lateral distance to be reached on its inside',
      'una curva de más de # de radio, la distancia lateral que hay que alcanzar en su interior',
    ],
    [
      'hazards and need of at most # (10 miles) together: split the site where a run may end',
      'peligros y necesidad de a lo más # (10 millas) juntos: divida el sitio donde pueda acabar un tramo',
    ],
    ['numbers from which _ of the need can be computed', 'números de los que se pueda calcular _ de la necesidad'],
    ['numbers too large or too small for it', 'números demasiado grandes o pequeños para ello'],
    [
      'an alignment that reaches station #, where the runout length begins',
      'un alineamiento que llegue a la estación #, donde empieza la longitud de salida de la vía',
    ],
    ['one that ends at #', 'uno que acaba en #'],
    ['hazards between stations # and # of the alignment', 'peligros entre las estaciones # y # del alineamiento'],
    ['$ beyond them', '$ más allá de ellas'],
    [
      'a runout length of more than the lateral extent, #',
      'una longitud de salida de la vía de más que la extensión lateral, #',
    ],
    [
      'a curve around which a runout length of # turns by less than half a circle',
      'una curva en la que una longitud de salida de # gire menos de media vuelta',
    ],
  ],
}
