import type { SpanishWords } from './spanish-words.ts'

/** Names of the hardware sheets that ship, and of sources that are no document. Titles of documents stay as published. */
export const nameWords: SpanishWords = {
  sentences: {
    'thrie-beam panel': 'panel de triple onda',
    '12 gauge': 'calibre 12',
    '10 gauge': 'calibre 10',
    'W-to-thrie transition': 'Transición de doble a triple onda',
    'Facts of the trade on flared, cable-anchored terminals of the older generation':
      'Saber del oficio sobre terminales abocinados anclados con cable de la generación anterior',
    'no document prints a number of posts': 'ningún documento imprime un número de postes',
    'nominal of an older family of ends; its limits recalled, no document checked':
      'nominal de una familia más antigua de extremos; sus límites de memoria, sin cotejar con ningún documento',
    'common practice; no document': 'práctica común; sin documento',
    'Recalled by the writer of this example': 'De memoria de quien escribió este ejemplo',
    'no document checked': 'sin cotejar con ningún documento',
    'Midwest Roadside Safety Facility, public answers to state questions':
      'Midwest Roadside Safety Facility, respuestas públicas a preguntas de estados',
    'Midwest Roadside Safety Facility, public answer to a state question':
      'Midwest Roadside Safety Facility, respuesta pública a la pregunta de un estado',
    'Roadside hardware identification and inspection handbook of a public agency':
      'Manual de una agencia pública para identificar e inspeccionar herrajes de borde de vía',
  },
  patterns: [
    ['MASH # and NCHRP #', 'MASH # y NCHRP #'],
    ['number #', 'número #'],
    ['number # (words of the asking state)', 'número # (palabras del estado que pregunta)'],
    [
      'prints no working width; half spacing passed only with blocks # tall; answer # names # and # for two other half-spacing systems',
      'no imprime ancho de trabajo; la mitad de separación solo pasó con bloques de # de alto; la respuesta # nombra # y # para otros dos sistemas a mitad de separación',
    ],
    [
      'numbers # (how the new slot is made) and # (its size, words of the asking state)',
      'números # (cómo se hace la ranura nueva) y # (su tamaño, palabras del estado que pregunta)',
    ],
    [
      "Our reading of 'discrete locations, not throughout a system' (public answer #)",
      "Nuestra lectura de 'discrete locations, not throughout a system' (respuesta pública #)",
    ],
    [
      'numbers # and # (posts beside the span, # of level ground behind them), # (doubled rail)',
      'números # y # (postes junto al vano, # de terreno llano detrás), # (baranda doble)',
    ],
    ['as read in #', 'leído en #'],
    ['$, common practice; no document', '$, práctica común; sin documento'],
    ['$, no document checked', '$, sin cotejar con ningún documento'],
    ['$, number #', '$, número #'],
    ['Midwest Roadside Safety Facility, public answer #', 'Midwest Roadside Safety Facility, respuesta pública #'],
  ],
}
