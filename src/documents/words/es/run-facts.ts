import type { runFacts as english } from '../en/run-facts.ts'

export const runFacts: typeof english = {
  names: {
    route: 'Ruta',
    side: 'Lado',
    traffic: 'Tránsito',
    speed: 'Velocidad',
    work: 'Obra',
    letting: 'Adjudicación',
    datum: 'Origen del tramo',
    position: 'Posición del aparato',
    site: 'Hecho del sitio',
    first: 'Poste 1',
    last: (post) => `Poste ${post}, el último`,
    size: 'Tamaño',
    readings: 'Lecturas',
  },
  notSaid: 'no se dice',
  sides: {
    right: 'derecho, hacia donde suben las estaciones',
    left: 'izquierdo, hacia donde suben las estaciones',
  },
  traffic: { 'two-way': 'de dos sentidos', 'one-way': 'de un sentido', divided: 'vía dividida' },
  work: { new: 'nueva', standing: 'existente' },
  station: (station) => `estación ${station}`,
  size: (posts, panels, rail) => `${posts} postes, ${panels} paneles, ${rail} de baranda`,
  madeOf: {
    need: (approach, departure) =>
      `longitud de necesidad ${approach}${departure === null ? '' : `, para el tránsito opuesto ${departure}`}`,
    checks: (all, fail, meet) =>
      `${all} comprobaciones cuando se hizo el tramo: ${fail} no ${fail === 1 ? 'cumple' : 'cumplen'}, ${meet} ${meet === 1 ? 'cumple' : 'cumplen'}`,
    unread: (what) => `no se dice: ${what}`,
  },
  noReadings: 'ninguna',
  readings: (count, people, from, to) => `${count} por ${people}, ${from === to ? from : `${from} a ${to}`}`,
  sheets: {
    first: 'Primer extremo, aguas arriba',
    run: 'Tramo',
    second: 'Segundo extremo, aguas abajo',
    splice: {
      post: 'Sigue desde un empalme existente, en un poste',
      midspan: 'Sigue desde un empalme existente, a media distancia',
    },
    unknown: {
      'no sheet fits': 'Desconocido: ninguna ficha corresponde a lo visto',
      'not looked at': 'Sin mirar',
    },
    noCriteria: 'no se dan criterios de ensayo',
    confirmations: {
      published: 'publicado',
      'common practice': 'práctica común',
      'from memory': 'de memoria, sin confirmar',
    },
  },
  guardBand: (multiple) =>
    `Banda de guarda (JCGM 106:2012, 8.3): un valor cumple un límite cuando queda al menos ${multiple === 1 ? '' : `${multiple} veces `}U dentro de él, no cumple cuando queda más que eso fuera, y es demasiado justo entre ambos; U = 2u es la incertidumbre expandida del valor.`,
  simple:
    'Aceptación simple (JCGM 106:2012, 8.2): un valor en el límite o dentro de él lo cumple, uno fuera no; la incertidumbre se indica pero no mueve ningún límite.',
}
