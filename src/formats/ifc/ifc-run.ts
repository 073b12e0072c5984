import type { HorizontalAlignment } from '../../core/alignment/horizontal-alignment.ts'
import type { VerticalAlignment } from '../../core/alignment/vertical-alignment.ts'
import type { GroundUnit } from '../../core/units/ground-unit.ts'
import type { Metres, Radians } from '../../core/units/quantity.ts'
import type { ReferenceSystem } from '../map/reference-system.ts'
import type { Place } from './geometry.ts'

/** A run as a building model holds it. Places are in the plane of the road's coordinates, m. */
export interface IfcRun {
  readonly name: string
  /** What the same run is known by in every file of it. */
  readonly identity: string
  readonly road: string
  /** Null where the coordinates belong to no known system. */
  readonly system: ReferenceSystem | null
  readonly alignment: HorizontalAlignment
  readonly profile: VerticalAlignment | null
  readonly stations: readonly IfcStation[]
  readonly properties: readonly IfcProperty[]
  readonly units: readonly IfcEndUnit[]
  /** Posts and panels from the first end on. */
  readonly posts: readonly IfcPost[]
  readonly panels: readonly IfcPanel[]
  readonly findings: readonly IfcFinding[]
}

interface Named {
  /** Stable within the run, as `post-9`. */
  readonly id: string
  readonly name: string
  readonly properties: readonly IfcProperty[]
}

/** A place of the alignment whose station is written down. */
export interface IfcStation {
  readonly id: string
  readonly name: string
  /** Continuous. */
  readonly internal: Metres
  /** As it is written; `incoming` is the one that ends here at a station equation. */
  readonly station: Metres
  readonly incoming: Metres | null
  /** Whether it says how the alignment is stationed, or only where something stands. */
  readonly kind: 'STATION' | 'POSITION'
  readonly place: Place
}

export interface IfcEndUnit extends Named {
  readonly unit: 'first' | 'second'
  readonly kind: string
}

/** Of a post or a panel: to which side of the run, looking along it from the first end, the road does not lie. */
export type Outward = 'left' | 'right'

interface Piece extends Named {
  /** Whether it belongs to the end unit of that end, or to the run. */
  readonly unit: 'first' | 'run' | 'second'
  readonly kind: string
  /** Top of rail above the ground. */
  readonly top: Metres
  readonly outward: Outward
}

export interface IfcPost extends Piece {
  /** Of the face of rail square to it, on the ground. */
  readonly at: Place
  /** Direction of the rail, from the first end. */
  readonly azimuth: Radians
  readonly block: boolean
}

export interface IfcPanel extends Piece {
  /** Face of rail on the ground from end to end, two places or more. */
  readonly line: readonly Place[]
}

export interface IfcFinding extends Named {
  readonly description: string
  readonly at: Place
}

export interface IfcProperty {
  readonly name: string
  readonly value: IfcValue
}

export type IfcValue =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'count'; readonly count: number }
  | { readonly kind: 'truth'; readonly yes: boolean }
  /** In its unit. */
  | { readonly kind: 'length'; readonly length: number; readonly unit: LengthName }

export type LengthName = 'inch' | GroundUnit
