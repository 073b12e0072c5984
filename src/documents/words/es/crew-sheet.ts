import type { crewSheet as english } from '../en/crew-sheet.ts'

const ends = { first: 'primer', second: 'segundo' } as const
const gaps = {
  single: 'de un poste',
  'long span': 'de vano largo',
  'nested span': 'de vano con baranda doble',
} as const
const endUnits = { first: 'primera', second: 'segunda' } as const

export const crewSheet: typeof english = {
  title: 'Hoja de cuadrilla',
  utilityTicket: 'Boleto de servicios enterrados',
  noTicket: 'no está anotado. No se hinca ni se saca ningún poste antes de que estén las marcas.',
  stripApart: 'La franja está en las últimas páginas.',
  states: { regular: '', moved: 'MOVIDO', special: 'ESPECIAL', standing: 'ya está' },
  end: 'fin',
  yes: 'sí',
  no: 'no',
  post: 'Poste',
  station: 'Estación',
  fromPostOne: 'Desde el 1',
  toNext: 'Al que sigue',
  roadOffset: 'Desvío',
  fromLine: 'De la línea',
  fromRoad: (unit) =>
    `Estación y desvío: la cara de la baranda desde el eje, desvío en ${unit}, positivo a la derecha mirando hacia estaciones crecientes.`,
  block: 'Bloque',
  postKind: 'Clase de poste',
  panel: 'Panel',
  pieces: 'Pzas',
  each: 'Cada uno',
  kind: 'Clase',
  nested: 'doble',
  hung: 'ya está colgado',
  nowhere: 'En ninguna parte.',
  heights: 'Alturas y empalmes',
  holds: 'Puntos de espera: avise antes de taparlo',
  none: 'Ninguno.',
  posts: 'Postes que se estacan',
  departures: 'Donde este tramo no es como el estándar',
  panels: 'Paneles en orden',
  lap: 'Solape',
  holes: 'Agujeros, ranuras y tornillos; hacia dónde van las piezas',
  pictures: 'Como tiene que ser, en imágenes de las fichas',
  cautions: 'Advertencias',
  strip: (scale, times) =>
    `El lado del tránsito va arriba. Escala a lo largo de la baranda ${scale} si se imprime al 100 %${times === 1 ? '' : `; LOS DESVÍOS SE DIBUJAN ${times} VECES SU TAMAÑO`}.`,
  stripTitle: (run) => `Franja de ${run}`,
  stripShows: (posts, panels) =>
    `Planta del tramo de su extremo de aguas arriba, a la izquierda, al de aguas abajo, a la derecha, con ${posts} postes, ${panels} paneles y sus empalmes por número; las tablas dicen lo mismo en palabras.`,
  noOffsets: (why) => `No se dan desvíos: ${why}.`,
  flareNotStated: (sheet) => `${sheet} no da un abocinado nominal`,
  flareInsideUnit: (end) => `el abocinado del tramo doblaría la ${endUnits[end]} unidad de extremo`,
  flareAtFixedEnd: (closedBy) =>
    `el abocinado del tramo va hacia un ${closedBy === 'bridge end' ? 'extremo de puente' : 'tramo existente'}`,
  noFlare: 'Sin abocinado: cada poste está en la línea del tramo.',
  flares: (flares) =>
    `De la línea: de la línea del tramo a la cara de la baranda, alejándose de la vía. ${flares.join('; ')}.`,
  runFlare: (end, rate, from) =>
    `Tramo: abocinado ${rate} desde ${from} a lo largo de la baranda hasta el ${ends[end]} extremo, desde donde sigue la unidad de extremo`,
  endFlare: (end, shape, offset, over, isFromMemory) =>
    `${end === 'first' ? 'Primer' : 'Segundo'} extremo: ${shape === 'straight' ? 'abocinado recto' : 'parábola'}, ${offset} en ${over}${isFromMemory ? ' (de memoria, SIN CONFIRMAR)' : ''}`,
  goesOn: (end, at) =>
    `El ${ends[end]} extremo sigue desde un empalme existente, ${at === 'post' ? 'en un poste' : 'a media distancia'}.`,
  driven: (posts) => `Ya hincado: ${posts}.`,
  alreadyHung: (panels) => `Ya colgado: ${panels}.`,
  noPost: (along, because, rule) => `SIN POSTE a ${along}, por ${because} (regla para un hueco ${gaps[rule]}).`,
  gap: (before, after, apart) => `Los postes ${before} y ${after} están a ${apart}.`,
  movedPost: (post) => `El poste ${post} está movido a lo largo de la baranda: estáquelo donde dice la tabla.`,
  specialPost: (post, kind) => `El poste ${post} es un ${kind}.`,
  oddSpaces: (from, to, isOne, apart, full) =>
    `Los postes ${from} ${isOne ? 'y' : 'a'} ${to} están a ${apart} en vez de ${full}.`,
  oddPanel: (panel, length, why) => `El panel ${panel} mide ${length}: ${why}.`,
  oddness: {
    adapter: (end) => `une el ${end === 'second' ? 'segundo' : 'primer'} extremo al tramo`,
    converting: 'corre los empalmes medio espacio entre postes',
    'end only': 'una longitud que solo puede ir en un extremo del tramo',
  },
  nestedRail: (panels) => `DOBLE, dos capas de baranda: ${panels}.`,
  ticket: (number, calledOn, from, through, marks) =>
    `${number}, llamada el ${calledOn}, válido del ${from} al ${through}; ${marks.length === 0 ? 'sin marcas anotadas' : `marcas: ${marks.join(', ')}`}.`,
  mark: (name, along) => `${name} a ${along} del poste 1`,
  markUnplaced: (name) => `${name} NO SE SABE DÓNDE (se midió desde un poste de una versión anterior)`,
  nearMark: (mark, within, posts) =>
    `A menos de ${within} de ${mark}: ${posts}. Excave a mano, o pida mover la disposición.`,
}
