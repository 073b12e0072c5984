import type { Place } from '../requirements/requirement.ts'
import type { Metres, Radians } from '../units/quantity.ts'

/**
 * A point or direction of the scene, m: x downstream along the line of the run from post 1, y up from finish grade at the
 * face of rail, z to the right looking downstream. Right-handed.
 */
export interface Vector {
  readonly x: Metres
  readonly y: Metres
  readonly z: Metres
}

/** A closed surface, but for ribbons of ground; each triangle turns against the clock seen from outside. */
export interface Mesh {
  readonly points: readonly Vector[]
  /** Three numbers of points for each triangle. */
  readonly triangles: readonly number[]
}

export type Part =
  | 'panel'
  | 'post'
  | 'lower post'
  | 'soil tube'
  | 'offset block'
  | 'rail bolt'
  | 'washer'
  | 'splice bolts'
  | 'hinge bolt'
  | 'hole'
  | 'slots'
  | 'impact head'
  | 'anchor cable'
  | 'bearing plate'
  | 'cable bracket'
  | 'ground strut'
  | 'end marker'
  | 'bridge end'
  | 'unknown end'
  | 'standing run'
  | 'obstruction'
  | 'ground'
  | 'road'
  | 'lane line'
  | 'curb'

export type Material =
  | 'steel'
  | 'wood'
  | 'concrete'
  | 'cable'
  | 'dark'
  | 'marker'
  | 'ground'
  | 'road'
  | 'lane'
  | 'unknown'

/** One thing of the scene, of its own shape or a copy of one that others have too. */
export interface Solid {
  readonly part: Part
  /** Id of the place that it belongs to; null where nothing is asked of it. */
  readonly place: string | null
  readonly material: Material
  /** Whether its shape is a sign: the sheet says that it is there and where, not what it looks like. */
  readonly isSign: boolean
  readonly form: Mesh | Copy
}

/** The shape of that name, turned round the vertical (right-handed, 0 with its x downstream) and moved there. */
export interface Copy {
  readonly of: string
  readonly at: Vector
  readonly turn: Radians
}

/** Where a place is looked at. */
export interface ScenePlace {
  readonly id: string
  readonly kind: Exclude<Place['kind'], 'run'>
  readonly number: number
  /** Its middle, or where what is looked at lies. */
  readonly at: Vector
  readonly turn: Radians
}

export interface Scene {
  readonly shapes: ReadonlyMap<string, Mesh>
  readonly solids: readonly Solid[]
  /** In the order in which they are walked. */
  readonly places: readonly ScenePlace[]
  /** What of it is not known, and drawn all the same. */
  readonly unknown: readonly ('flare' | 'places of posts')[]
  /** Away from the road: 1 to the right looking downstream, -1 to the left. */
  readonly outward: 1 | -1
}

export const isMesh = (form: Mesh | Copy): form is Mesh => 'points' in form
