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
      return `at most ${siteSpeed(refusal.highest, units)}, where ${refusal.table} ends, or ${refusal.instead} given as a length`
    case 'slope-not-tabulated':
      return `a slope no steeper than 1V:${refusal.steepest}H, to which the table's distances apply directly, or clearZone given as a width`
    case 'curve-factor-outside-table':
      return `${refusal.smallest === null ? 'a lower speed' : `a radius of at least ${siteLength(refusal.smallest, units)}`} for the curve factor of ${refusal.table} at ${siteSpeed(refusal.speed, units)} (it is not extrapolated), or clearZone given as a width`
    case 'alignment-broken':
      return 'an alignment that goes on without gap or kink from the hazard to where the runout length begins'
    case 'curve-tighter-than-offset':
      return `a curve with a radius of more than ${siteLength(refusal.offset, units)}, the lateral distance to be reached on its inside`
    case 'alignment-too-short':
      return `an alignment that reaches station ${siteLength(refusal.needed, units)}, where the runout length begins`
    case 'hazard-off-alignment':
      return `hazards between stations ${siteLength(refusal.from, units)} and ${siteLength(refusal.to, units)} of the alignment`
    case 'runout-too-short':
      return `a runout length of more than the lateral extent, ${siteLength(refusal.lateralExtent, units)}`
    case 'longer-than-one-run':
      return `hazards and need of at most ${siteLength(refusal.most, units)} (10 miles) together: split the site where a run may end`
    case 'not-finite':
      return `numbers from which ${JSON.stringify(refusal.value)} of the need can be computed`
    case 'runout-wraps-curve':
      return `a curve around which a runout length of ${siteLength(refusal.runoutLength, units)} turns by less than half a circle`
    default:
      return refusal satisfies never
  }
}

function found(refusal: NeedRefusal, units: UnitSystem): string {
  switch (refusal.kind) {
    case 'speed-above-table':
      return siteSpeed(refusal.speed, units)
    case 'slope-not-tabulated':
      return `1V:${refusal.run}H`
    case 'curve-factor-outside-table':
    case 'curve-tighter-than-offset':
    case 'runout-wraps-curve':
      return `a radius of ${siteLength(refusal.radius, units)}`
    case 'alignment-broken':
      return `one that at station ${siteLength(refusal.station, units)} goes on ${siteLength(refusal.distance, units)} away and turned by ${((refusal.kink * 180) / Math.PI).toFixed(3)}°`
    case 'alignment-too-short':
      return `one that ends at ${siteLength(refusal.limit, units)}`
    case 'hazard-off-alignment':
      return `${JSON.stringify(refusal.hazard)} beyond them`
    case 'runout-too-short':
      return siteLength(refusal.runoutLength, units)
    case 'longer-than-one-run':
      return siteLength(refusal.length, units)
    case 'not-finite':
      return 'numbers too large or too small for it'
    default:
      return refusal satisfies never
  }
}
