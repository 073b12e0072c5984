import type { HorizontalAlignment } from '../alignment/horizontal-alignment.ts'
import type { StationEquation } from '../alignment/station-equations.ts'
import type { HardwareSheet, SplicePosition } from '../hardware/hardware-sheet.ts'
import type { GroundUnit } from '../units/ground-unit.ts'
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
  /** Used instead of the table's. */
  readonly shyLine: Metres | null
  /** Used instead of the table's. */
  readonly flareLimits: FlareLimits | null
  /** All on one side of the road. */
  readonly side: Side
  /** At least one. */
  readonly hazards: readonly Hazard[]
  readonly barrier: BarrierPlan
  readonly driveways: readonly Driveway[]
  readonly hardware: SiteHardware
  /** Sheets of the site's own, which replace shipped ones of the same id or add to them. */
  readonly sheets: readonly HardwareSheet[]
}

/** Steepest flare of a semi-rigid barrier, as the a of a:1, by where the flared part lies. */
export interface FlareLimits {
  readonly inside: number
  readonly beyond: number
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
      /** Of the coordinates, as the site states them. */
      readonly unit: GroundUnit
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

/** What decides whether the chosen hardware is right here; null where the site does not say. */
export interface SiteHardware {
  /** Id of the longitudinal system's sheet. */
  readonly system: string | null
  /** Post spacing beside the hazards. */
  readonly spacing: 'full' | 'half' | 'quarter'
  readonly work: 'new' | 'standing' | null
  /** ISO date. */
  readonly letting: string | null
  /** A standing run that this one meets. */
  readonly adjoining: { readonly railHeight: Metres; readonly splice: SplicePosition | null } | null
  readonly ground: SiteGround
  readonly curb: SiteCurb | 'none' | null
}

export interface SiteCurb {
  readonly height: Metres
  readonly face: 'vertical' | 'sloping'
  /** Slope of a sloping face as the run of 1 vertical: 3 for 1V:3H; null where the site does not say. */
  readonly faceSlope: number | null
  /** From the face of the curb back to the face of the rail. */
  readonly toRail: Metres
}

/** Slopes as the run of 1 vertical: 10 for 1V:10H. */
export interface SiteGround {
  readonly platformSlope: number | null
  readonly behindPostOne: Metres | null
  readonly recoveryLength: Metres | null
  readonly recoveryWidth: Metres | null
  readonly besideSlope: number | null
  readonly breakBehindPost: Metres | null
  readonly slopeBehind: number | null
}
