import { endOf } from '../geometry/clothoid.ts'
import { azimuthFrom, distance, type Point } from '../geometry/point.ts'
import type { Metres, Radians } from '../units/quantity.ts'
import type { ElementShape } from './horizontal-alignment.ts'

/** A circular curve with two equal spirals between two tangents, by the names surveyors use. Lengths in m. */
export interface SpiralCurve {
  /** θ, turning of one spiral. */
  readonly spiralAngle: Radians
  /** X and Y of the end of the spiral, along and square to the tangent. */
  readonly x: Metres
  readonly y: Metres
  /** p: how far the circle is shifted away from the tangent; k: where along the tangent, from the spiral's start. */
  readonly shift: Metres
  readonly shiftAt: Metres
  /** From the point of intersection to the spiral's start (T_s) and to the middle of the curve (E_s). */
  readonly tangent: Metres
  readonly external: Metres
  /** Length of the circular part. */
  readonly arc: Metres
  /** The two tangents of one spiral, from its start and from its end to where they meet. */
  readonly longTangent: Metres
  readonly shortTangent: Metres
}

/**
 * The parts of the spiralled curve that turns by `deflection` (positive, either way); null when the spirals alone turn
 * further than that.
 *
 * @source the usual relations of route surveying: θ = L/2R, p = Y - R(1 - cos θ), k = X - R sin θ,
 *         T_s = (R + p) tan(I/2) + k, E_s = (R + p)/cos(I/2) - R, arc = R(I - 2θ)
 */
export function spiralCurve(radius: Metres, spiral: Metres, deflection: Radians): SpiralCurve | null {
  const spiralAngle = spiral / (2 * radius)
  if (deflection <= 2 * spiralAngle) return null
  const { northing: x, easting: y } = endOf({
    start: origin,
    azimuth: 0,
    length: spiral,
    curvatureStart: 0,
    curvatureEnd: 1 / radius,
  })
  const half = Math.sin(spiralAngle / 2)
  const shift = y - 2 * radius * half * half
  const shiftAt = x - radius * Math.sin(spiralAngle)
  return {
    spiralAngle,
    x,
    y,
    shift,
    shiftAt,
    tangent: (radius + shift) * Math.tan(deflection / 2) + shiftAt,
    external: (radius + shift) / Math.cos(deflection / 2) - radius,
    arc: radius * (deflection - 2 * spiralAngle),
    longTangent: x - y / Math.tan(spiralAngle),
    shortTangent: y / Math.sin(spiralAngle),
  }
}

/** Spiral in, circle, spiral out, as elements to lay; `turn` 1 to the right, -1 to the left. */
export function spiralCurveElements(
  radius: Metres,
  spiral: Metres,
  arc: Metres,
  turn: 1 | -1,
): readonly ElementShape[] {
  const curvature = turn / radius
  return [
    { length: spiral, curvatureStart: 0, curvatureEnd: curvature },
    { length: arc, curvatureStart: curvature, curvatureEnd: curvature },
    { length: spiral, curvatureStart: curvature, curvatureEnd: 0 },
  ]
}

/** Deflection angle and chord from the start of a line with azimuth 0 to `point`, as set out with an instrument there. */
export const deflectionTo = (point: Point): { readonly angle: Radians; readonly chord: Metres } => ({
  angle: azimuthFrom(origin, point),
  chord: distance(origin, point),
})

const origin: Point = { easting: 0, northing: 0 }
