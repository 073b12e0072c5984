import type { NeedRefusal } from '../../../core/need/refusal.ts'
import type { UnitSystem } from '../../../core/site/site.ts'
import type { Printers } from '../../print.ts'
import { siteLength, siteSpeed } from '../../problems/in-site-units.ts'
import type { NeedProblem } from '../../problems/need.ts'

export const needProblems: Printers<NeedProblem> = {
  'site with a need': ({ refusal, units }) => expected(refusal, units),
  'site without a need': ({ refusal, units }) => found(refusal, units),
}

function expected(refusal: NeedRefusal, units: UnitSystem): string {
  switch (refusal.kind) {
    case 'speed-above-table':
      return `a lo más ${siteSpeed(refusal.highest, units)}, donde acaba ${refusal.table}, o dar como longitud ${instead[refusal.instead]}`
    case 'slope-not-tabulated':
      return `un talud no más brusco que 1V:${refusal.steepest}H, al que se aplican directamente las distancias de la tabla, o dar la zona despejada (clearZone) como ancho`
    case 'curve-factor-outside-table':
      return `${refusal.smallest === null ? 'una velocidad menor' : `un radio de al menos ${siteLength(refusal.smallest, units)}`} para el factor de curva de ${refusal.table} a ${siteSpeed(refusal.speed, units)} (no se extrapola), o dar la zona despejada (clearZone) como ancho`
    case 'alignment-broken':
      return 'un alineamiento que siga sin hueco ni quiebre del peligro hasta donde empieza la longitud de salida de la vía'
    case 'curve-tighter-than-offset':
      return `una curva de más de ${siteLength(refusal.offset, units)} de radio, la distancia lateral que hay que alcanzar en su interior`
    case 'alignment-too-short':
      return `un alineamiento que llegue a la estación ${siteLength(refusal.needed, units)}, donde empieza la longitud de salida de la vía`
    case 'hazard-off-alignment':
      return `peligros entre las estaciones ${siteLength(refusal.from, units)} y ${siteLength(refusal.to, units)} del alineamiento`
    case 'runout-too-short':
      return `una longitud de salida de la vía de más que la extensión lateral, ${siteLength(refusal.lateralExtent, units)}`
    case 'longer-than-one-run':
      return `peligros y necesidad de a lo más ${siteLength(refusal.most, units)} (10 millas) juntos: divida el sitio donde pueda acabar un tramo`
    case 'not-finite':
      return `números de los que se pueda calcular ${JSON.stringify(refusal.value)} de la necesidad`
    case 'runout-wraps-curve':
      return `una curva en la que una longitud de salida de ${siteLength(refusal.runoutLength, units)} gire menos de media vuelta`
    default:
      return refusal satisfies never
  }
}

const instead = {
  runoutLength: 'la longitud de salida (runoutLength)',
  clearZone: 'la zona despejada (clearZone)',
} as const

function found(refusal: NeedRefusal, units: UnitSystem): string {
  switch (refusal.kind) {
    case 'speed-above-table':
      return siteSpeed(refusal.speed, units)
    case 'slope-not-tabulated':
      return `1V:${refusal.run}H`
    case 'curve-factor-outside-table':
    case 'curve-tighter-than-offset':
    case 'runout-wraps-curve':
      return `un radio de ${siteLength(refusal.radius, units)}`
    case 'alignment-broken':
      return `uno que en la estación ${siteLength(refusal.station, units)} sigue a ${siteLength(refusal.distance, units)} y girado ${((refusal.kink * 180) / Math.PI).toFixed(3)}°`
    case 'alignment-too-short':
      return `uno que acaba en ${siteLength(refusal.limit, units)}`
    case 'hazard-off-alignment':
      return `${JSON.stringify(refusal.hazard)} más allá de ellas`
    case 'runout-too-short':
      return siteLength(refusal.runoutLength, units)
    case 'longer-than-one-run':
      return siteLength(refusal.length, units)
    case 'not-finite':
      return 'números demasiado grandes o pequeños para ello'
    default:
      return refusal satisfies never
  }
}
