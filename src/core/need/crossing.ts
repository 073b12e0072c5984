import type { RunoutReading } from '../site/site.ts'
import type { Metres } from '../units/quantity.ts'

/**
 * One hazard as one direction of traffic meets it. Laterals are measured from the edge of that direction's travelled
 * way, m; `upstream` is against that direction.
 */
export interface Exposure {
  /** L_A: edge of travelled way to the far side of the hazard, or to the limit of the clear zone. */
  readonly lateralExtent: Metres
  /** L_2: to the face of the parallel part of the barrier. */
  readonly barrierOffset: Metres
  /** L_R */
  readonly runout: Metres
  /** L_1: parallel barrier upstream of this hazard. */
  readonly parallelLength: Metres
  /** b/a: how far the flare leaves the road per metre; 0 for a parallel barrier. */
  readonly flareSlope: number
  readonly reading: RunoutReading
}

/** Where the barrier that shields an exposure has to end. */
export interface Crossing {
  /** X: from the hazard's upstream edge, parallel to the road along the barrier, m. */
  readonly length: Metres
  /** Y: lateral distance there, m. */
  readonly lateral: Metres
  /** The same end, and the place where the path leaves the edge, as distances along the site's stations, m. */
  readonly upstream: Metres
  readonly leavesUpstream: Metres
  readonly rule: Rule
}

/**
 * - `parallel`, `flared`: the runout line meets the parallel part, or the flare
 * - `tangent path`: on the outside of a curve, the vehicle leaves tangentially within the runout length
 * - `runout path`: on a curve, it leaves where the runout length begins
 * - `nothing to shield`: no length is needed
 */
export type Rule = 'parallel' | 'flared' | 'tangent path' | 'runout path' | 'nothing to shield'

/** Differences below this are arithmetic noise, m. */
export const numericTolerance = 1e-9
