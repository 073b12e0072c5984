import type { Metres } from '../units/quantity.ts'

/** Something the engineer has to know about a result. Lengths in m, speeds and flare rates as in the site. */
export type Note =
  | {
      readonly kind: 'interpolated-speed'
      readonly table: string
      readonly lowSpeed: number
      readonly highSpeed: number
    }
  | { readonly kind: 'next-higher-speed'; readonly table: string; readonly usedSpeed: number }
  | { readonly kind: 'runout-length-given'; readonly runoutLength: Metres }
  | {
      readonly kind: 'clear-zone-range'
      readonly narrowest: Metres
      readonly widest: Metres
      readonly clearZone: Metres
    }
  /** The table's star: where similar designs have a satisfactory history it may be limited to `clearZone`. */
  | { readonly kind: 'clear-zone-may-be-limited'; readonly clearZone: Metres }
  | { readonly kind: 'curve-factor'; readonly factor: number; readonly radius: Metres; readonly clearZone: Metres }
  | { readonly kind: 'curve-factor-not-applied'; readonly radius: Metres }
  | {
      readonly kind: 'hazard-outside-clear-zone'
      readonly hazard: string
      readonly near: Metres
      readonly clearZone: Metres
    }
  | {
      readonly kind: 'hazard-cut-at-clear-zone'
      readonly hazard: string
      readonly far: Metres | null
      readonly clearZone: Metres
    }
  | { readonly kind: 'at-clear-zone-limit'; readonly what: 'hazard' | 'barrier'; readonly clearZone: Metres }
  | { readonly kind: 'no-room-behind-barrier'; readonly hazard: string }
  | { readonly kind: 'inside-shy-line'; readonly offset: Metres; readonly shyLine: Metres }
  | { readonly kind: 'shy-line-not-tabulated'; readonly highestSpeed: number }
  | { readonly kind: 'flare-limit-not-tabulated'; readonly highestSpeed: number }
  | {
      readonly kind: 'flare-too-steep'
      readonly where: 'inside shy line' | 'beyond shy line'
      readonly rate: number
      readonly limit: number
    }
  | {
      readonly kind: 'flare-crosses-shy-line'
      /** Distance from the hazard, parallel to the road, at which it crosses. */
      readonly at: Metres
      readonly insideLimit: number
      readonly beyondLimit: number
      /** Need and lateral distance at its end if the flare went on at the steeper limit; null on curves, where it was not computed. */
      readonly compound: { readonly lengthOfNeed: Metres; readonly lateralAtEnd: Metres } | null
    }
  | { readonly kind: 'flare-not-reached'; readonly lengthOfNeed: Metres; readonly parallelLength: Metres }
  | { readonly kind: 'flare-on-curve' }
  | { readonly kind: 'barrier-covers-lateral-extent'; readonly offset: Metres; readonly lateralExtent: Metres }
  | {
      readonly kind: 'on-curve'
      readonly reading: 'path' | 'edge'
      readonly side: 'outside' | 'inside' | 'mixed'
      readonly straightFormula: Metres
    }
  | { readonly kind: 'later-hazard-governs'; readonly hazard: string; readonly behindFirst: Metres }
  | { readonly kind: 'crashworthy-end'; readonly why: 'barrier inside opposing clear zone' }
  | { readonly kind: 'anchor-only'; readonly why: 'no opposing traffic' | 'barrier outside opposing clear zone' }
  | { readonly kind: 'opposing-traffic-not-judged'; readonly why: 'no median width' | 'hazards in the median' }
  | { readonly kind: 'centre-of-odd-lanes'; readonly lanes: number }
  | {
      readonly kind: 'driveway-cuts-run'
      readonly driveway: string
      /** Barrier that can stand between the hazard and the driveway, and what is missing. */
      readonly available: Metres
      readonly shortfall: Metres
      readonly alternatives: readonly Alternative[]
    }

/** One change, of one thing, that would make the barrier up to a driveway long enough. */
export type Alternative =
  | { readonly change: 'flare'; readonly rate: number; readonly steeperThanLimit: number | null }
  | { readonly change: 'barrier offset'; readonly to: Metres }
  | { readonly change: 'far side of hazard'; readonly to: Metres }
  /** What the barrier that fits does cover: a runout length shorter than the table's. */
  | { readonly change: 'accept runout length'; readonly to: Metres }
