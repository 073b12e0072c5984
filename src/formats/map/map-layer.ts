import type { Point } from '../../core/geometry/point.ts'
import { isInArea, type ReferenceSystem, toGeographic } from './reference-system.ts'

/** What a map program shows as one layer. */
export interface MapLayer {
  /** Letters, digits and underscores: it names a table. */
  readonly name: string
  readonly title: string
  readonly geometry: 'point' | 'line'
  readonly fields: readonly MapField[]
  readonly features: readonly MapFeature[]
}

export interface MapField {
  readonly name: string
  readonly type: 'text' | 'number'
}

export interface MapFeature {
  /** Stable, as `post-9`. */
  readonly id: string
  /** One for a point, two or more for a line; m in the plane of the reference system. */
  readonly points: readonly Point[]
  /** One for each field, in their order. */
  readonly values: readonly (string | number | null)[]
}

/** The first feature that lies where the system may not be used; null when all lie inside. */
export const firstOutside = (layers: readonly MapLayer[], system: ReferenceSystem): MapFeature | null =>
  layers
    .flatMap(({ features }) => features)
    .find(({ points }) => !points.every((point) => isInArea(system, toGeographic(system, point)))) ?? null
