import type { HorizontalAlignment } from '../alignment/horizontal-alignment.ts'
import type { StationEquation } from '../alignment/station-equations.ts'
import type { Metres } from '../units/quantity.ts'

/** Which family of tables and which speed unit the site works in: mi/h and feet, or km/h and metres. */
export type UnitSystem = 'us' | 'metric'

/** `rdg-2006` stands for the older editions 1996, 2002 and 2006 of the Roadside Design Guide, which share their tables. */
export type Edition = 'rdg-2011' | 'rdg-2006'

/**
 * One place where a barrier is to shield hazards: road, traffic, ground and hazards. The input of a design.
 *
 * Every lateral distance is measured square to the road from the edge of travelled way beside the hazards, positive
 * away from the road. Stations are continuous, m. Traffic keeps to the right.
 */
export interface Site {
  readonly units: UnitSystem
  readonly edition: Edition
  /** True: runout lengths between two speeds of the table are interpolated. False: the next higher speed of it is used. */
  readonly interpolateSpeeds: boolean
  readonly runoutOnCurves: RunoutReading
  readonly road: Road
  readonly clearZone: ClearZone
  /** Used instead of the table's, m. */
  readonly runoutLength: Metres | null
  /** All on one side of the road. */
  readonly side: Side
  /** At least one. */
  readonly hazards: readonly Hazard[]
  readonly barrier: BarrierPlan
  readonly driveways: readonly Driveway[]
}

/** What the runout length measures on a curve: the vehicle's straight path, or the edge of travelled way beside it. */
export type RunoutReading = 'path' | 'edge'

/** Looking up-station. */
export type Side = 'right' | 'left'

export interface Road {
  /** Design speed, mi/h or km/h after `Site.units`. */
  readonly speed: number
  /** Vehicles a day. */
  readonly adt: number
  readonly traffic: 'one-way' | 'two-way' | 'divided'
  /** Through lanes of both directions together; of the one direction when traffic is one-way. */
  readonly lanes: number
  readonly laneWidth: Metres
  readonly shoulderWidth: Metres
  /** Between the inner edges of the two travelled ways of a divided road; null where it is not known. */
  readonly medianWidth: Metres | null
  readonly alignment: SiteAlignment
}

export type SiteAlignment =
  | { readonly kind: 'straight' }
  /** `radius` is that of the edge of travelled way beside the hazards, and stations run along that edge. */
  | { readonly kind: 'curve'; readonly radius: Metres; readonly turn: Side }
  | {
      readonly kind: 'elements'
      /** What the elements describe, and what stations run along. */
      readonly line: 'edge' | 'centreline'
      readonly horizontal: HorizontalAlignment
      readonly equations: readonly StationEquation[]
    }

/** Its width, or the slope to look it up by: 1 vertical to `run` horizontal. */
export type ClearZone =
  | { readonly kind: 'width'; readonly width: Metres }
  | {
      readonly kind: 'slope'
      readonly slope: 'foreslope' | 'backslope'
      readonly run: number
      /** Which end of the table's range is used. */
      readonly take: 'low' | 'high'
    }

export interface Hazard {
  readonly name: string
  readonly from: Metres
  readonly to: Metres
  readonly near: Metres
  /** Its far side; null only where it goes on beyond the clear zone. */
  readonly far: Metres | null
  /** Water, a slope, a cliff that does not end at `far`. */
  readonly beyondClearZone: boolean
}

interface BarrierPlan {
  /** Lateral distance to the front face of the part that runs parallel to the road. */
  readonly offset: Metres
  readonly flare: Flare | null
  /** Hardware sheets of the two ends, if chosen. */
  readonly approachEnd: string | null
  readonly departureEnd: string | null
}

interface Flare {
  /** The a of a flare of a:1, along to across. */
  readonly rate: number
  /** Parallel barrier between the hazards and the start of the flare. */
  readonly parallelLength: Metres
  readonly ends: 'approach' | 'both'
}

/** A stretch where no barrier can stand. */
interface Driveway {
  readonly name: string
  readonly from: Metres
  readonly to: Metres
}
