import type { Alternative, Note } from '../../core/need/note.ts'
import type { Print } from '../print.ts'
import { hundredths, type SiteLengths } from '../site-lengths.ts'

/** One sentence for the engineer, by kind of note. */
export const needNotes: {
  readonly [K in Note['kind']]: (note: Extract<Note, { readonly kind: K }>, site: SiteLengths, print: Print) => string
} = {
  'interpolated-speed': ({ lowSpeed, highSpeed }, { speed }) =>
    `Longitud de salida de la vía interpolada entre ${speed(lowSpeed)} y ${speed(highSpeed)}, como pide el sitio.`,
  'next-higher-speed': ({ usedSpeed, table }, { speed }) =>
    `Longitud de salida de la vía de ${speed(usedSpeed)}, la velocidad siguiente mayor de ${table}; marque interpolar (interpolateSpeeds) para interpolar.`,
  'runout-length-given': ({ runoutLength }, { long }) =>
    `Longitud de salida de la vía ${long(runoutLength)}, dada en el sitio, no de una tabla.`,
  'clear-zone-range': ({ narrowest, widest, clearZone }, { bare, long }) =>
    `La tabla da una zona despejada de ${bare(narrowest)} a ${long(widest)}; se usa ${long(clearZone)}.`,
  'clear-zone-may-be-limited': ({ clearZone }, { long }) =>
    `Donde diseños parecidos han dado buen resultado, la zona despejada puede limitarse a ${long(clearZone)}.`,
  'curve-factor': ({ radius, factor, clearZone }, { long }) =>
    `Exterior de una curva de ${long(radius)} de radio: la zona despejada se multiplica por ${factor}, y resulta ${long(clearZone)}.`,
  'curve-factor-not-applied': ({ radius }, { long }) =>
    `Exterior de una curva de ${long(radius)} de radio: la zona despejada se toma como está dada, sin factor de curva.`,
  'hazard-outside-clear-zone': ({ hazard, near, clearZone }, { long }, print) =>
    `${print.theirs(hazard)} empieza a ${long(near)} del borde de este tránsito, más allá de su zona despejada de ${long(clearZone)}: no se protege.`,
  'hazard-cut-at-clear-zone': ({ hazard, far, clearZone }, { long }, print) =>
    far === null
      ? `${print.theirs(hazard)} sigue más allá de la zona despejada: se protege hasta su límite, ${long(clearZone)}.`
      : `${print.theirs(hazard)} llega hasta ${long(far)}: se protege hasta el límite de la zona despejada, ${long(clearZone)}.`,
  'at-clear-zone-limit': ({ what, clearZone }, { long }) =>
    `${what === 'hazard' ? 'El peligro' : 'La barrera'} está justo en el límite de la zona despejada, ${long(clearZone)}; se cuenta como dentro.`,
  'no-room-behind-barrier': ({ hazard }, _, print) =>
    `${print.theirs(hazard)} empieza en la cara de la barrera: no hay espacio para su ancho de trabajo.`,
  'inside-shy-line': ({ offset, shyLine }, { long }) =>
    `La barrera está a ${long(offset)} del borde, dentro de la línea de recelo, que está a ${long(shyLine)}.`,
  'shy-line-not-tabulated': ({ highestSpeed }, { speed }) =>
    `No hay distancia de la línea de recelo en la tabla por encima de ${speed(highestSpeed)}: no se juzga.`,
  'flare-limit-not-tabulated': ({ highestSpeed }, { speed }) =>
    `No hay límite de abocinado en la tabla por encima de ${speed(highestSpeed)}: no se juzga.`,
  'flare-too-steep': ({ rate, limit, where }) =>
    `El abocinado de ${hundredths(rate)}:1 es más brusco que ${limit}:1, lo sugerido ${where === 'inside shy line' ? 'dentro' : 'más allá'} de la línea de recelo: solo donde se ensayó a choque.`,
  'flare-crosses-shy-line': ({ at, insideLimit, beyondLimit, compound }, { long }) => {
    const crosses = `El abocinado cruza la línea de recelo a ${long(at)} del peligro: hasta ahí vale ${insideLimit}:1, más allá ${beyondLimit}:1.`
    return compound === null
      ? crosses
      : `${crosses} Con ${beyondLimit}:1 más allá, la necesidad sería ${long(compound.lengthOfNeed)}, y acabaría a ${long(compound.lateralAtEnd)} del borde.`
  },
  'flare-not-reached': ({ lengthOfNeed, parallelLength }, { long }) =>
    `La necesidad de ${long(lengthOfNeed)} acaba en la parte paralela de ${long(parallelLength)}: rige la fórmula de la paralela.`,
  'flare-on-curve': () => 'En curva por lo general no se usa abocinado.',
  'barrier-covers-lateral-extent': ({ offset, lateralExtent }, { long }) =>
    `La barrera está a ${long(offset)} del borde, en la extensión lateral de ${long(lateralExtent)} o más allá: no hace falta longitud.`,
  'on-curve': ({ side, reading, straightFormula }, { long }) =>
    `Resuelto en la curva (peligro en el lado ${sideWord[side]}), con la longitud de salida medida por: ${reading === 'path' ? 'trayectoria' : 'borde'}; la fórmula de la recta daría ${long(straightFormula)}.`,
  'later-hazard-governs': ({ hazard, behindFirst }, { long }, print) =>
    `Rige ${print.theirs(hazard)}; empieza ${long(behindFirst)} detrás del primer peligro.`,
  'crashworthy-end': () =>
    'La barrera está dentro de la zona despejada del tránsito contrario: su extremo de ese lado tiene que estar ensayado a choque.',
  'anchor-only': ({ why }) =>
    why === 'no opposing traffic'
      ? 'Sin tránsito contrario: el extremo de salida necesita un anclaje, no un extremo ensayado a choque.'
      : 'La barrera está fuera de la zona despejada del tránsito contrario: su extremo de ese lado necesita un anclaje, no un extremo ensayado a choque.',
  'opposing-traffic-not-judged': ({ why }) =>
    why === 'no median width'
      ? 'El tránsito contrario no se juzga: dé el ancho de mediana (medianWidth) para que se juzgue.'
      : 'El tránsito contrario no se juzga: los peligros en una mediana se protegen de él con un tramo propio.',
  'centre-of-odd-lanes': ({ lanes }) =>
    `Con ${lanes} carriles, el borde del tránsito contrario se toma en el centro de la vía.`,
  'driveway-cuts-run': ({ driveway, available, shortfall, alternatives }, { long }, print) => {
    const cuts = `${print.theirs(driveway)} corta el tramo: caben ${long(available)}, faltan ${long(shortfall)}.`
    return alternatives.length === 0
      ? cuts
      : `${cuts} Bastaría: ${alternatives.map((one) => alternativeText(one, long)).join('; o ')}.`
  },
}

const sideWord = { inside: 'interior', outside: 'exterior', mixed: 'interior y exterior' } as const

function alternativeText(alternative: Alternative, long: SiteLengths['long']): string {
  switch (alternative.change) {
    case 'flare':
      return `un abocinado de ${hundredths(alternative.rate)}:1${alternative.steeperThanLimit === null ? '' : ` (más brusco que el sugerido de ${alternative.steeperThanLimit}:1)`}`
    case 'barrier offset':
      return `la barrera a ${long(alternative.to)}`
    case 'far side of hazard':
      return `un peligro que no llegue más allá de ${long(alternative.to)}`
    case 'accept runout length':
      return `aceptar una longitud de salida de la vía de ${long(alternative.to)}`
  }
}
