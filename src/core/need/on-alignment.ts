import { alignmentBreaks } from '../alignment/alignment-breaks.ts'
import {
  azimuthAt,
  endStation,
  type HorizontalAlignment,
  pointAt,
  sharpestCurvature,
} from '../alignment/horizontal-alignment.ts'
import { checkOffset, offsetLength } from '../alignment/offset-line.ts'
import { movedBy, type Point } from '../geometry/point.ts'
import { firstRoot, rootBetween } from '../geometry/root.ts'
import { err, ok, type Result } from '../result.ts'
import type { Metres } from '../units/quantity.ts'
import { type Crossing, type Exposure, numericTolerance, type Rule } from './crossing.ts'
import { crossOnStraight } from './on-straight.ts'
import type { NeedRefusal } from './refusal.ts'

/** One direction of traffic on an alignment, and the hazard it meets. */
export interface AlignedTraffic {
  readonly alignment: HorizontalAlignment
  /** 1 up-station, -1 down-station. */
  readonly direction: 1 | -1
  /** Of the edge of this direction's travelled way from the alignment, m, positive right. */
  readonly edgeOffset: Metres
  /** 1: the hazards lie to the right of the alignment, -1: to the left. */
  readonly side: 1 | -1
  /** Station of the hazard's edge that this traffic meets first. */
  readonly front: Metres
}

/**
 * The end of need on any alignment, by the rule of `crossOnCurve` made general: going upstream from the hazard along
 * the edge, the vehicle leaves at the first place from which the straight line to the hazard's outer limit is tangent
 * to the edge, or where the runout length begins, whichever comes first. The barrier ends where it first crosses that
 * line. Where the edge is straight over the runout length this is the straight formula, and that is used.
 */
export function crossOnAlignment(exposure: Exposure, traffic: AlignedTraffic): Result<Crossing, NeedRefusal> {
  const { alignment, direction, edgeOffset, side, front } = traffic
  const back = front - direction * exposure.runout
  const [low, high] = [Math.min(front, back), Math.max(front, back)]
  const broken = alignmentBreaks(alignment).find(({ station }) => station > low && station <= high)
  if (broken !== undefined) return err({ kind: 'alignment-broken', ...broken })
  const straight = sharpestCurvature(alignment, low, high, 1) === 0 && sharpestCurvature(alignment, low, high, -1) === 0
  const outer = edgeOffset + side * exposure.lateralExtent
  const tighter = checkOffset(alignment, low, high, outer) ?? checkOffset(alignment, low, high, edgeOffset)
  if (tighter !== null) return err({ ...tighter, kind: 'curve-tighter-than-offset', offset: Math.abs(tighter.offset) })
  if (straight && low >= alignment.startStation && high <= endStation(alignment)) return ok(crossOnStraight(exposure))

  const leaving = leavingPlace(exposure, traffic)
  if (!leaving.ok) return leaving
  const { upstream: leavesUpstream, rule } = leaving.value
  const barrierLine = edgeOffset + side * exposure.barrierOffset
  const along = (upstream: Metres) =>
    Math.abs(offsetLength(alignment, front, front - direction * upstream, barrierLine))
  const barrierAt = (upstream: Metres) =>
    exposure.barrierOffset + Math.max(0, along(upstream) - exposure.parallelLength) * exposure.flareSlope
  const lateralAt = lateralOfPath(traffic, exposure.lateralExtent, leavesUpstream)
  const upstream = firstRoot((place) => lateralAt(place) - barrierAt(place), leavesUpstream, 0, 16, 1e-10) ?? 0
  return ok({ length: along(upstream), lateral: barrierAt(upstream), upstream, leavesUpstream, rule })
}

function leavingPlace(
  exposure: Exposure,
  traffic: AlignedTraffic,
): Result<{ upstream: Metres; rule: Rule }, NeedRefusal> {
  const { alignment, direction, edgeOffset, side, front } = traffic
  const { lateralExtent, runout, reading } = exposure
  if (reading === 'path' && runout <= lateralExtent)
    return err({ kind: 'runout-too-short', runoutLength: runout, lateralExtent })
  const hazard = edgePoint(traffic, 0, lateralExtent)
  const available = direction > 0 ? front - alignment.startStation : endStation(alignment) - front

  // positive while the hazard lies outside the tangent to the edge
  const outside = (upstream: Metres) => {
    const station = front - direction * upstream
    const place = pointAt(alignment, station)
    const azimuth = azimuthAt(alignment, station)
    const right =
      (hazard.easting - place.easting) * Math.cos(azimuth) - (hazard.northing - place.northing) * Math.sin(azimuth)
    return side * (right - edgeOffset)
  }
  const runoutLeft = (upstream: Metres) => {
    if (reading === 'edge')
      return runout - Math.abs(offsetLength(alignment, front, front - direction * upstream, edgeOffset))
    const place = edgePoint(traffic, upstream, 0)
    return runout - Math.hypot(hazard.easting - place.easting, hazard.northing - place.northing)
  }

  const step = runout / 6
  for (let from = 0; from < available; ) {
    const to = Math.min(from + step, nextJoint(traffic, from), available)
    const tangent = outside(to) <= 0 ? rootBetween(outside, from, to, 1e-10) : null
    const begin = runoutLeft(to) <= 0 ? rootBetween(runoutLeft, from, to, 1e-10) : null
    if (tangent !== null && (begin === null || tangent <= begin)) return ok({ upstream: tangent, rule: 'tangent path' })
    if (begin !== null) return ok({ upstream: begin, rule: 'runout path' })
    from = to
  }
  return err({
    kind: 'alignment-too-short',
    missing: direction > 0 ? 'before its start' : 'past its end',
    needed: front - direction * runout,
    limit: direction > 0 ? alignment.startStation : endStation(alignment),
  })
}

/** The point `lateral` m outside this direction's edge, `upstream` m along the alignment from the hazard. */
function edgePoint(traffic: AlignedTraffic, upstream: Metres, lateral: Metres): Point {
  const { alignment, direction, edgeOffset, side, front } = traffic
  const station = front - direction * upstream
  return movedBy(pointAt(alignment, station), azimuthAt(alignment, station), 0, edgeOffset + side * lateral)
}

/** Distance upstream of the next joint of elements beyond `from`, or of an inflexion inside a reversing spiral. */
function nextJoint(traffic: AlignedTraffic, from: Metres): Metres {
  const { alignment, direction, front } = traffic
  let next = Number.POSITIVE_INFINITY
  for (const element of alignment.elements) {
    const { curvatureStart: k0, curvatureEnd: k1 } = element
    const inflexion = k0 * k1 < 0 ? (element.length * k0) / (k0 - k1) : 0
    for (const along of [0, inflexion]) {
      const upstream = direction * (front - element.station - along)
      if (upstream > from + numericTolerance && upstream < next) next = upstream
    }
  }
  return next
}

/** Lateral distance of the path, square to the edge, by distance upstream of the hazard. */
function lateralOfPath(traffic: AlignedTraffic, lateralExtent: Metres, leavesUpstream: Metres) {
  const { alignment, direction, edgeOffset, side, front } = traffic
  const hazard = edgePoint(traffic, 0, lateralExtent)
  const leaves = edgePoint(traffic, leavesUpstream, 0)
  const east = hazard.easting - leaves.easting
  const north = hazard.northing - leaves.northing
  return (upstream: Metres): Metres => {
    const station = front - direction * upstream
    const place = pointAt(alignment, station)
    const azimuth = azimuthAt(alignment, station)
    const cos = Math.cos(azimuth)
    const sin = Math.sin(azimuth)
    // the line place + offset·(cos, -sin) meets the path where its cross product with the path's direction vanishes
    const reach = (leaves.easting - place.easting) * north - (leaves.northing - place.northing) * east
    return side * (reach / (cos * north + sin * east) - edgeOffset)
  }
}
