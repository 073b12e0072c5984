/**
 * What the shipped sheets, and rules of our own, say where a document's title or edition would stand, by the text itself: a sheet that is recorded
 * with a run keeps its text for ever. Titles of documents stay as they are published.
 */
export const sourceWords: Readonly<Record<string, string>> = {
  'Rule of our own for a run that was counted': 'Regla nuestra para un tramo que se contó',
  'Recalled by the writer of this example': 'De memoria de quien escribió este ejemplo',
  'no document checked': 'sin cotejar con ningún documento',
  'Midwest Roadside Safety Facility, public answer to a state question':
    'Midwest Roadside Safety Facility, respuesta pública a la pregunta de un estado',
  'number 14523': 'número 14523',
  'Facts of the trade on flared, cable-anchored terminals of the older generation':
    'Saber del oficio sobre terminales abocinados anclados con cable de la generación anterior',
  'common practice; no document': 'práctica común; sin documento',
  'as read in 2026': 'leído en 2026',
  'nominal of an older family of ends; its limits recalled, no document checked':
    'nominal de una familia más antigua de extremos; sus límites de memoria, sin cotejar con ningún documento',
  'number 1277': 'número 1277',
  'number 1265 (words of the asking state)': 'número 1265 (palabras del estado que pregunta)',
  'number 14531': 'número 14531',
  'number 42020': 'número 42020',
  'number 821': 'número 821',
  'Roadside hardware identification and inspection handbook of a public agency':
    'Manual de una agencia pública para identificar e inspeccionar herrajes de borde de vía',
  'number 151': 'número 151',
  'number 266': 'número 266',
  'number 346': 'número 346',
  'number 42013 (words of the asking state)': 'número 42013 (palabras del estado que pregunta)',
  'prints no working width; half spacing passed only with blocks 10 in tall; answer 32949 names 47.7 in and 50.8 in for two other half-spacing systems':
    'no imprime ancho de trabajo; la mitad de separación solo pasó con bloques de 10 in de alto; la respuesta 32949 nombra 47.7 in y 50.8 in para otros dos sistemas a mitad de separación',
  'Midwest Roadside Safety Facility, public answers to state questions':
    'Midwest Roadside Safety Facility, respuestas públicas a preguntas de estados',
  'numbers 241 and 266 (posts beside the span, 2 ft of level ground behind them), 483 (doubled rail)':
    'números 241 y 266 (postes junto al vano, 2 ft de terreno llano detrás), 483 (baranda doble)',
  'number 1028': 'número 1028',
  "Our reading of 'discrete locations, not throughout a system' (public answer 1028)":
    "Nuestra lectura de 'discrete locations, not throughout a system' (respuesta pública 1028)",
  'no document prints a number of posts': 'ningún documento imprime un número de postes',
  'numbers 1028 (how the new slot is made) and 1265 (its size, words of the asking state)':
    'números 1028 (cómo se hace la ranura nueva) y 1265 (su tamaño, palabras del estado que pregunta)',
  'abstract; not to recommend real installations at reduced lengths':
    'resumen; no para recomendar instalaciones reales con longitudes reducidas',
  'abstracts of report results 357 (MASH 3-10) and 395, TRP-03-433-21 (MASH 3-11)':
    'resúmenes de los resultados 357 (MASH 3-10) y 395, TRP-03-433-21 (MASH 3-11)',
}
