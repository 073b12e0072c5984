import type { Metres, Radians } from '../units/quantity.ts'

/** Why a need cannot be computed from a site, with what one needs to mend it. */
export type NeedRefusal =
  | {
      readonly kind: 'speed-above-table'
      readonly table: string
      readonly speed: number
      readonly highest: number
      readonly instead: 'runoutLength' | 'clearZone'
    }
  | {
      readonly kind: 'slope-not-tabulated'
      readonly slope: 'foreslope' | 'backslope'
      readonly run: number
      readonly steepest: number
    }
  | {
      readonly kind: 'curve-factor-outside-table'
      readonly table: string
      readonly radius: Metres
      readonly speed: number
      readonly smallest: Metres | null
    }
  /** Between hazard and runout length the road does not go on as it ends: a gap of `distance`, a kink, rad. */
  | {
      readonly kind: 'alignment-broken'
      readonly station: Metres
      readonly distance: Metres
      readonly kink: Radians
    }
  | { readonly kind: 'curve-tighter-than-offset'; readonly radius: Metres; readonly offset: Metres }
  | {
      readonly kind: 'alignment-too-short'
      readonly missing: 'before its start' | 'past its end'
      readonly needed: Metres
      readonly limit: Metres
    }
  | { readonly kind: 'hazard-off-alignment'; readonly hazard: string; readonly from: Metres; readonly to: Metres }
  | { readonly kind: 'runout-too-short'; readonly runoutLength: Metres; readonly lateralExtent: Metres }
  /** Hazards and need together are longer than one run may be. */
  | { readonly kind: 'longer-than-one-run'; readonly length: Metres; readonly most: Metres }
  /** The numbers of the site leave a value without meaning; `value` is its place in the need. */
  | { readonly kind: 'not-finite'; readonly value: string }
  | { readonly kind: 'runout-wraps-curve'; readonly radius: Metres; readonly runoutLength: Metres }
