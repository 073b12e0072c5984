import type { SpanishWords } from './spanish-words.ts'

/** Words in the pairs of right and wrong. */
export const figureWords: SpanishWords = {
  sentences: {
    right: 'bien',
    wrong: 'mal',
    'not so': 'no es así',
    block: 'bloque',
    'no block': 'sin bloque',
    'too low': 'muy baja',
    cable: 'cable',
    retainer: 'retén',
    turned: 'girada',
    opening: 'abertura',
    shoulder: 'hombro',
    bracket: 'soporte',
    rail: 'baranda',
    'to the head': 'a la cabeza',
    traffic: 'tránsito',
    'traffic side': 'lado del tránsito',
    'line of the run': 'línea del tramo',
    'too little': 'muy poco',
    string: 'hilo',
    'upstream panel': 'panel de aguas arriba',
    'downstream panel': 'panel de aguas abajo',
    'another distance': 'otra distancia',
    hinge: 'bisagra',
    head: 'cabeza',
    edge: 'borde',
    hole: 'agujero',
    'splice to splice': 'de empalme a empalme',
    slots: 'ranuras',
    'no slots': 'sin ranuras',
    splice: 'empalme',
  },
  patterns: [
    ['less than #', 'menos de #'],
    ['more than #', 'más de #'],
    [
      'Two schematic pictures, not to scale. Right: $. Wrong: $.',
      'Dos figuras esquemáticas, sin escala. Bien: $. Mal: $.',
    ],
    [
      'Two schematic pictures, not to scale, of the two ways it can be: $; $.',
      'Dos figuras esquemáticas, sin escala, de las dos maneras en que puede estar: $; $.',
    ],
  ],
}
