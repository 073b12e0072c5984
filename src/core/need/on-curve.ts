import { firstRoot } from '../geometry/root.ts'
import { err, ok, type Result } from '../result.ts'
import type { Metres, Radians } from '../units/quantity.ts'
import type { Crossing, Exposure, Rule } from './crossing.ts'
import type { NeedRefusal } from './refusal.ts'

export interface Curve {
  /** Of the edge of this direction's travelled way, m. */
  readonly radius: Metres
  /** Of the line along which the site's stations run, m. */
  readonly stationRadius: Metres
  /** 1: the hazards lie on the outside, -1: on the inside. */
  readonly side: 1 | -1
}

/**
 * The end of need on a circular curve, with the barrier concentric to it (or flared away from that).
 *
 * On the outside the vehicle leaves on the tangent to the edge through the outer limit of the hazard, if that leaves
 * the edge within the runout length; otherwise on the straight line that leaves it where the runout length begins.
 * On the inside it is always that straight line. Which length of this line the runout length is, the path's own or
 * that of the edge beside it, is `exposure.reading`: the sources leave it open.
 *
 * @source AASHTO Roadside Design Guide, 2011, sec. 5.6.4 (method, from memory); the closed form follows from it
 */
export function crossOnCurve(exposure: Exposure, curve: Curve): Result<Crossing, NeedRefusal> {
  const { lateralExtent, barrierOffset } = exposure
  const reach = curve.side * lateralExtent
  if (curve.radius + reach <= 0)
    return err({ kind: 'curve-tighter-than-offset', radius: curve.radius, offset: lateralExtent })
  const leaving = leavingAngle(exposure, curve)
  if (!leaving.ok) return leaving
  const { angle, rule } = leaving.value
  const path = pathFrom(curve.radius, reach, angle)
  if (exposure.flareSlope > 0) {
    const flared = crossFlare(exposure, curve, path)
    if (flared !== null) return ok({ ...flared, leavesUpstream: angle * curve.stationRadius, rule })
  }
  const share = shareAtOffset(curve, path, reach, curve.side * barrierOffset)
  const crossing = angleOf(curve.radius, path, share)
  return ok({
    length: crossing * (curve.radius + curve.side * barrierOffset),
    lateral: barrierOffset,
    upstream: crossing * curve.stationRadius,
    leavesUpstream: angle * curve.stationRadius,
    rule,
  })
}

/** Angle at the centre from the hazard's upstream edge back to where the path leaves the edge. */
function leavingAngle(exposure: Exposure, curve: Curve): Result<{ angle: Radians; rule: Rule }, NeedRefusal> {
  const { lateralExtent, runout, reading } = exposure
  const { radius } = curve
  const beyond = radius + curve.side * lateralExtent
  if (curve.side === 1) {
    const tangent = Math.sqrt(lateralExtent * (2 * radius + lateralExtent))
    const angle = Math.atan2(tangent, radius)
    if (reading === 'edge' ? runout >= angle * radius : runout >= tangent) return ok({ angle, rule: 'tangent path' })
  }
  if (reading === 'edge') {
    const angle = runout / radius
    return angle < Math.PI
      ? ok({ angle, rule: 'runout path' })
      : err({ kind: 'runout-wraps-curve', radius, runoutLength: runout })
  }
  if (runout <= lateralExtent) return err({ kind: 'runout-too-short', runoutLength: runout, lateralExtent })
  // chord: L_R² = L_A² + 4 R (R ± L_A) sin²(ψ/2)
  const sine = Math.sqrt((runout * runout - lateralExtent * lateralExtent) / (4 * radius * beyond))
  return sine < 1
    ? ok({ angle: 2 * Math.asin(sine), rule: 'runout path' })
    : err({ kind: 'runout-wraps-curve', radius, runoutLength: runout })
}

/**
 * The straight path in a frame at the edge beside the hazard: x upstream along the tangent, y away from the centre.
 * It runs from (0, y) at the hazard to (x + dx, y + dy) at the edge.
 */
interface Path {
  readonly y: Metres
  readonly dx: Metres
  readonly dy: Metres
}

function pathFrom(radius: Metres, reach: Metres, angle: Radians): Path {
  const half = Math.sin(angle / 2)
  return { y: reach, dx: radius * Math.sin(angle), dy: -2 * radius * half * half - reach }
}

const angleOf = (radius: Metres, path: Path, share: number): Radians =>
  Math.atan2(share * path.dx, radius + path.y + share * path.dy)

/**
 * Share of the path, from the hazard, at which it crosses the circle `offset` outside the edge:
 * (x² + y²)/2R + y = offset (1 + offset/2R), a form that keeps its digits however large R is.
 */
function shareAtOffset(curve: Curve, path: Path, reach: Metres, offset: Metres): number {
  const q = 1 / (2 * curve.radius)
  if (Math.abs(offset) >= Math.abs(reach)) return 0
  const a = q * (path.dx * path.dx + path.dy * path.dy)
  const b = path.dy * (1 + 2 * q * path.y)
  const c = path.y + q * path.y * path.y - offset * (1 + q * offset)
  const root = Math.sqrt(b * b - 4 * a * c)
  if (curve.side === 1) return (2 * c) / (root - b)
  return b >= 0 ? (-2 * c) / (b + root) : (root - b) / (2 * a)
}

/** Where the path meets the flared part, or null where it meets the parallel part. */
function crossFlare(exposure: Exposure, curve: Curve, path: Path): Omit<Crossing, 'leavesUpstream' | 'rule'> | null {
  const { radius, side } = curve
  const { parallelLength, flareSlope, barrierOffset } = exposure
  const along = radius + side * barrierOffset
  const lateralAt = (share: number) => {
    const x = share * path.dx
    const y = path.y + share * path.dy
    return (side * (x * x + y * y + 2 * radius * y)) / (Math.hypot(x, y + radius) + radius)
  }
  const barrierAt = (share: number) =>
    barrierOffset + Math.max(0, angleOf(radius, path, share) * along - parallelLength) * flareSlope
  const share = firstRoot((s) => lateralAt(s) - barrierAt(s), 1, 0, 24, 1e-13)
  if (share === null) return null
  const angle = angleOf(radius, path, share)
  if (angle * along <= parallelLength) return null
  return { length: angle * along, lateral: lateralAt(share), upstream: angle * curve.stationRadius }
}
