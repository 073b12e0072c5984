import type { ShelfTextsWords } from './shelf-texts-en.ts'

export const shelfTextsEs: ShelfTextsWords = {
  title: (to) => (to === 'es' ? 'Sus textos en español' : 'Sus textos en inglés'),
  link: (to) => (to === 'es' ? 'Textos en español' : 'Textos en inglés'),
  languages: { en: 'Inglés', es: 'Español' },
  how: 'Lo que no tiene traducción se muestra como está, y marcado. Los valores entre llaves, como {31 in}, también deben estar en la traducción: se dicen en las unidades de cada tramo.',
  counts: (translated, missing, changed) =>
    `${translated} traducidos, ${missing} sin traducir, ${changed} cambiados desde que se tradujeron.`,
  states: {
    changed: 'Cambiados desde que se tradujeron',
    missing: 'Sin traducir',
    translated: 'Traducidos',
    source: 'Fuentes',
  },
  changedHow: 'Hasta que alguien lo traduzca de nuevo, un texto así se muestra como está.',
  sourceHow:
    'El título de un documento queda como está publicado. Solo lo que no es documento necesita palabras propias.',
  before: (text) => `Antes decía: «${text}», traducido:`,
  keep: 'Esa traducción sigue valiendo',
  save: 'Guardar como tabla (CSV)',
  take: 'Tomar una tabla traducida',
  taken: (translated, changed, gone) =>
    [
      translated === 1 ? '1 traducción tomada de la tabla.' : `${translated} traducciones tomadas de la tabla.`,
      ...(changed.length === 0 ? [] : [`Cambiados en la ficha entretanto, por revisar: filas ${changed.join(', ')}.`]),
      ...(gone.length === 0 ? [] : [`Ya no están en la ficha: filas ${gone.join(', ')}.`]),
    ].join(' '),
  notTaken: (file) => `No se tomó nada de ${file}.`,
}
