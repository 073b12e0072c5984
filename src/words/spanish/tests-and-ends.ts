import type { SpanishWords } from './spanish-words.ts'

/** What crash tests and which ends the run file and the sheets ask for, at design and at judging. */
export const testAndEndWords: SpanishWords = {
  sentences: {
    // Crash tests.
    'one test at the level for the speed of the road': 'un ensayo al nivel para la velocidad de la vía',
    'one test to MASH 2016 or later at the level for the speed of the road':
      'un ensayo según MASH 2016 o posterior al nivel para la velocidad de la vía',
    'standing work: the letting date does not apply': 'obra existente: la fecha de adjudicación no aplica',
    'the date binds contracts on the National Highway System':
      'la fecha obliga a los contratos del sistema nacional de carreteras',
    'exceptions by memorandum exist': 'hay excepciones por memorando',
    "a state's own date may differ": 'la fecha propia de un estado puede ser otra',
    'no crash test stated': 'no se indica ningún ensayo de choque',
    'a crash test on the sheet': 'un ensayo de choque en la ficha',
    'whether the work is new': 'si la obra es nueva',
    'when it was let': 'cuándo se adjudicó',
    'the speed of the road': 'la velocidad de la vía',
    'W-beam barrier': 'baranda de doble onda',
    'W-beam terminal': 'terminal de baranda de doble onda',
    transition: 'transición',
    'other longitudinal barrier': 'otra barrera longitudinal',
    system: 'sistema',
    // Ends.
    'crashworthy: adjacent traffic meets it first': 'ensayado a choque: el tránsito contiguo lo encuentra primero',
    'crashworthy where opposing traffic can reach it': 'ensayado a choque donde el tránsito contrario puede alcanzarlo',
    crashworthy: 'ensayado a choque',
    'not crashworthy': 'no ensayado a choque',
    'adjacent traffic meets it first': 'el tránsito contiguo lo encuentra primero',
    'traffic passes along it': 'el tránsito pasa a su lado',
    'not said whether opposing traffic can reach it': 'no se dice si el tránsito contrario puede alcanzarlo',
    'opposing traffic can reach it': 'el tránsito contrario puede alcanzarlo',
    'opposing traffic cannot reach it': 'el tránsito contrario no puede alcanzarlo',
    'a crashworthy terminal at this end': 'un terminal ensayado a choque en este extremo',
    'false or nothing where traffic goes one way': 'false o nada donde el tránsito va en un sentido',
  },
  patterns: [
    ['crash test of $ for this work and speed', 'ensayo de choque para esta obra y velocidad: $'],
    ['one test at level # or higher', 'un ensayo a nivel # o mayor'],
    ['one test at level # or higher, for #', 'un ensayo a nivel # o mayor, para #'],
    ['one test to MASH 2016 or later at level # or higher', 'un ensayo según MASH 2016 o posterior a nivel # o mayor'],
    [
      'one test to MASH 2016 or later at level # or higher, for #',
      'un ensayo según MASH 2016 o posterior a nivel # o mayor, para #',
    ],
    [
      'MASH 2016 or later for new work let after # ($)',
      'MASH 2016 o posterior para obra nueva adjudicada después del # ($)',
    ],
    ['MASH 2016 or later after # ($)', 'MASH 2016 o posterior después del # ($)'],
    ['new work let #', 'obra nueva adjudicada el #'],
    ['let #', 'adjudicada el #'],
    ['$, test level #', '$, nivel de ensayo #'],
    ['tested to $, test level #', 'ensayado según $, nivel de ensayo #'],
    [
      'tested to $, test level #, which is enough for any work and speed',
      'ensayado según $, nivel de ensayo #, que basta para toda obra y velocidad',
    ],
    ['no one test is enough: $', 'ningún ensayo por sí solo basta: $'],
    ['needed is $', 'hace falta $'],
    ['not said: $', 'no se dice: $'],
    ['a $ with $', 'un $ con $'],
    ['$ at the approach end', '$: en el extremo de llegada'],
    ['$ at the departure end', '$: en el extremo de salida'],
  ],
}
