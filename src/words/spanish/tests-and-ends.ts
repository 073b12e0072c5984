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
    'Compare letting date, kind of work and speed with the tests on the sheet; nothing has to be measured.':
      'Compare la fecha de adjudicación, la clase de obra y la velocidad con los ensayos de la ficha; no hay nada que medir.',
    'A level reached under older criteria says nothing of the newer ones. Standing hardware may serve out its life, at the speed that its test covers.':
      'Un nivel alcanzado con criterios anteriores no dice nada de los nuevos. Los herrajes existentes pueden cumplir su vida útil, a la velocidad que cubre su ensayo.',
    'One crash test of the hardware covers the criteria in force for the work and the speed of the road.':
      'Un ensayo de choque de los herrajes cubre los criterios vigentes para la obra y la velocidad de la vía.',
    'W-beam barrier': 'baranda de doble onda',
    'W-beam terminal': 'terminal de baranda de doble onda',
    transition: 'transición',
    'other longitudinal barrier': 'otra barrera longitudinal',
    system: 'sistema',
    // Ends.
    'The end that adjacent traffic meets first is crashworthy.':
      'El extremo que el tránsito contiguo encuentra primero está ensayado a choque.',
    'The end is crashworthy, or opposing traffic cannot reach it.':
      'El extremo está ensayado a choque, o el tránsito contrario no puede alcanzarlo.',
    'Compare the sheet of the end with the traffic that can reach it; nothing has to be measured.':
      'Compare la ficha del extremo con el tránsito que puede alcanzarlo; no hay nada que medir.',
    'An end that is not made to be struck stops a vehicle, spears it or throws it over.':
      'Un extremo que no está hecho para ser golpeado detiene un vehículo de golpe, lo atraviesa o lo vuelca.',
    'Put a crashworthy terminal at this end.': 'Ponga en este extremo un terminal ensayado a choque.',
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
    ['Choose hardware with $.', 'Elija herrajes con $.'],
    ['$ at the approach end', '$: en el extremo de llegada'],
    ['$ at the departure end', '$: en el extremo de salida'],
  ],
}
