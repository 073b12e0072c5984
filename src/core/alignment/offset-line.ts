import { azimuthAlong, curvatureAlong, pointAlong } from '../geometry/clothoid.ts'
import { movedBy, type Point } from '../geometry/point.ts'
import type { Polyline } from '../geometry/polyline.ts'
import { err, ok, type Result } from '../result.ts'
import type { Metres } from '../units/quantity.ts'
import { azimuthAt, type HorizontalAlignment, sharpestCurvature } from './horizontal-alignment.ts'

export interface TighterThanOffset {
  readonly kind: 'tighter-than-offset'
  /** Smallest radius of the line on the side of the offset, m. */
  readonly radius: Metres
  readonly offset: Metres
}

/**
 * Length of the line that runs `offset` m beside the alignment (positive right) between two stations. Exact on every
 * element: the offset line is shorter than the alignment by the offset times the turning towards it.
 */
export const offsetLength = (alignment: HorizontalAlignment, from: Metres, to: Metres, offset: Metres): Metres =>
  to - from - offset * (azimuthAt(alignment, to) - azimuthAt(alignment, from))

/** Whether the alignment is nowhere so sharp between two stations that the line `offset` m beside it folds back. */
export function checkOffset(
  alignment: HorizontalAlignment,
  from: Metres,
  to: Metres,
  offset: Metres,
): TighterThanOffset | null {
  const curvature = sharpestCurvature(alignment, from, to, offset < 0 ? -1 : 1)
  return curvature * Math.abs(offset) >= 1 ? { kind: 'tighter-than-offset', radius: 1 / curvature, offset } : null
}

/**
 * Points of the line `offset` m beside the alignment between two stations, which leave it by no more than `sagitta` m.
 */
export function offsetLine(
  alignment: HorizontalAlignment,
  from: Metres,
  to: Metres,
  offset: Metres,
  sagitta: Metres,
): Result<Polyline, TighterThanOffset> {
  const tighter = checkOffset(alignment, from, to, offset)
  if (tighter !== null) return err(tighter)
  const points: Point[] = []
  for (const element of alignment.elements) {
    const low = Math.max(from - element.station, 0)
    const high = Math.min(to - element.station, element.length)
    if (low >= high) continue
    const sharpest = Math.max(Math.abs(curvatureAlong(element, low)), Math.abs(curvatureAlong(element, high)))
    const radius = Math.max(1 / sharpest + Math.abs(offset), sagitta)
    // a chord of an arc with radius r and sagitta e spans 2 acos(1 - e/r)
    const pieces = Math.ceil(((high - low) * sharpest) / (2 * Math.acos(1 - sagitta / radius))) || 1
    for (let i = points.length === 0 ? 0 : 1; i <= pieces; i++) {
      const along = low + ((high - low) * i) / pieces
      points.push(movedBy(pointAlong(element, along), azimuthAlong(element, along), 0, offset))
    }
  }
  return ok(points)
}
