import type { EndSheet, LongitudinalSheet, SplicePosition } from '../hardware/hardware-sheet.ts'
import type { Speed } from '../hardware/tested-criteria.ts'
import type { Nanometres } from '../units/exact-length.ts'

/**
 * What of a site decides whether hardware is right there; null where the site does not say. Lengths are whole
 * nanometres, so that 5 ft of room is 5 ft however it came about.
 */
export interface FitFacts {
  readonly speed: Speed
  readonly system: LongitudinalSheet | null
  readonly approach: EndSheet | null
  readonly departure: EndSheet | null
  readonly work: 'new' | 'standing' | null
  /** ISO date. */
  readonly letting: string | null
  readonly spacing: 'full' | 'half' | 'quarter'
  /** Front face of rail to the near side of the nearest hazard, and that hazard's length along the road. */
  readonly nearest: { readonly hazard: string; readonly clear: Nanometres; readonly length: Nanometres } | null
  readonly twoWay: boolean
  /** Whether opposing traffic can reach the departure end. */
  readonly opposingReaches: boolean | null
  /** A standing run that this one meets. */
  readonly adjoining: { readonly railHeight: Nanometres; readonly splice: SplicePosition | null } | null
  readonly ground: Ground
  readonly curb: Curb | 'none' | null
  /** Anchor to anchor. */
  readonly runLength: Nanometres | null
}

/** Slopes as the run of 1 vertical: 10 for 1V:10H. */
export interface Ground {
  readonly platformSlope: number | null
  readonly behindPostOne: Nanometres | null
  readonly recoveryLength: Nanometres | null
  readonly recoveryWidth: Nanometres | null
  /** Foreslope beside the platform. */
  readonly besideSlope: number | null
  /** From the back of the posts to where the slope breaks, and the slope beyond. */
  readonly breakBehindPost: Nanometres | null
  readonly slopeBehind: number | null
}

export interface Curb {
  readonly height: Nanometres
  readonly face: 'vertical' | 'sloping'
  /** Slope of a sloping face as the run of 1 vertical; null where the site does not say. */
  readonly faceSlope: number | null
  /** From the face of the curb back to the face of the rail; negative where the rail stands in front. */
  readonly toRail: Nanometres
}
