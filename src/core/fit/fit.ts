import type { Confirmation, EndSheet, LongitudinalSheet, SplicePosition } from '../hardware/hardware-sheet.ts'

/** Whether one thing about the chosen hardware is right for the site. Nothing said is `unread`, never `meets`. */
export interface FitCheck {
  readonly what: string
  readonly verdict: 'meets' | 'fails' | 'unread'
  readonly limit: string
  readonly value: string
  readonly source: string
  readonly confirmation: Confirmation
  /** The smallest change that makes it lawful; null when it meets or when the site says too little. */
  readonly smallestChange: string | null
}

/** What of a site decides whether hardware is right there; null where the site does not say. */
export interface FitFacts {
  readonly speed: { readonly value: number; readonly unit: 'mi/h' | 'km/h' }
  readonly system: LongitudinalSheet | null
  readonly approach: EndSheet | null
  readonly departure: EndSheet | null
  readonly work: 'new' | 'standing' | null
  /** ISO date. */
  readonly letting: string | null
  readonly spacing: 'full' | 'half' | 'quarter'
  /** Front face of rail to the near side of the nearest hazard, inches, and that hazard's length along the road, feet. */
  readonly nearest: { readonly hazard: string; readonly clearInches: number; readonly lengthFeet: number } | null
  readonly twoWay: boolean
  /** Whether opposing traffic can reach the departure end. */
  readonly opposingReaches: boolean | null
  /** A standing run that this one meets. */
  readonly adjoining: { readonly railHeightInches: number; readonly splice: SplicePosition | null } | null
  readonly ground: Ground
  readonly curb: Curb | null
  /** Anchor to anchor, feet. */
  readonly runFeet: number | null
}

/** Slopes as the run of 1 vertical: 10 for 1V:10H. Distances in feet. */
export interface Ground {
  readonly platformSlope: number | null
  readonly behindPostOneFeet: number | null
  readonly recoveryLengthFeet: number | null
  readonly recoveryWidthFeet: number | null
  /** Foreslope beside the platform. */
  readonly besideSlope: number | null
  /** From the back of the posts to where the slope breaks, and the slope beyond. */
  readonly breakBehindPostFeet: number | null
  readonly slopeBehind: number | null
}

export interface Curb {
  readonly heightInches: number
  readonly face: 'vertical' | 'sloping'
  /** From the face of the curb back to the face of the rail, inches; negative where the rail stands in front. */
  readonly toRailInches: number
}
