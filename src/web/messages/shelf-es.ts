import type { ShelfWords } from './shelf-en.ts'

/** The words of the shelf of hardware sheets in Spanish. */
export const shelfEs: ShelfWords = {
  title: 'Fichas de herrajes',
  how: 'Un tramo lleva consigo las fichas con que se dispuso: lo que cambia aquí no cambia ningún tramo.',
  back: 'Todas las fichas de herrajes',
  systems: 'Barreras',
  ends: 'Unidades de extremo',
  none: 'No hay a mano tal ficha.',
  kinds: {
    longitudinal: 'barrera',
    terminal: 'terminal',
    'trailing anchor': 'anclaje de salida',
    'buried end': 'extremo enterrado',
    'bridge end': 'extremo de puente',
  },
  rail: (limits) => `parte superior de la baranda ${limits}`,
  edition: (version) => `edición ${version}`,
  confirmed: (n, all) => `${n} de ${all} confirmados`,
  confirmedHow:
    'Confirmado es lo que alguien comprobó en un documento, o viene de uno publicado. Lo demás queda por comprobar por la agencia.',
  facts: {
    category: 'Clase',
    joins: 'Se une a',
    ends: 'Extremos que se le unen',
    gating: 'Traspasable',
    energyAbsorbing: 'Absorbe energía',
    crashworthy: 'Ensayado a choque',
  },
  groups: {
    rail: 'Baranda, ensayos y solapes',
    posts: 'Postes',
    panels: 'Paneles',
    gaps: 'Espacios, huecos y postes movidos',
    length: 'Longitud, abocinado, terreno y espacio',
    parts: 'Piezas y sus reglas',
    judging: 'Cómo se juzgan las fallas',
  },
  columns: { states: 'Lo que dice', source: 'Fuente', requires: 'Lo que se exige por ello' },
  unconfirmed: 'sin confirmar: de memoria',
}
