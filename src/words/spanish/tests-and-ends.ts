import type { SpanishWords } from './spanish-words.ts'

/** What crash tests and which ends the run file and the sheets ask for, at design and at judging. */
export const testAndEndWords: SpanishWords = {
  sentences: {
    // Crash tests.
    'no crash test stated': 'no se indica ningún ensayo de choque',
    'W-beam barrier': 'baranda de doble onda',
    'W-beam terminal': 'terminal de baranda de doble onda',
    transition: 'transición',
    'other longitudinal barrier': 'otra barrera longitudinal',
    system: 'sistema',
    // Ends.
    'a crashworthy terminal at this end': 'un terminal ensayado a choque en este extremo',
    'false or nothing where traffic goes one way': 'false o nada donde el tránsito va en un sentido',
  },
  patterns: [
    ['crash test of $ for this work and speed', 'ensayo de choque para esta obra y velocidad: $'],
    ['$, test level #', '$, nivel de ensayo #'],
    ['a $ with $', 'un $ con $'],
    ['$ at the approach end', '$: en el extremo de llegada'],
    ['$ at the departure end', '$: en el extremo de salida'],
  ],
}
