import type { Metres } from '../units/quantity.ts'
import { azimuthAlong, type Clothoid, curvatureAlong, pointAlong } from './clothoid.ts'
import { distance, movedBy, type Point, seenFrom } from './point.ts'
import { rootBetween } from './root.ts'

/**
 * A place on a line from which a point is seen square to the line and which is nearer to it than its neighbours.
 * For the centre of an arc that holds of a whole stretch, so `to` can lie beyond `from`.
 */
export interface Foot {
  /** m from the start of the line; `from` equals `to` except on the arc whose centre the point is. */
  readonly from: Metres
  readonly to: Metres
  /** m, positive where the point lies to the right of the line. */
  readonly offset: Metres
}

/** Distances below this are arithmetic noise, m: coordinates of 1e6 m carry 1e-10 m. */
const numericTolerance = 1e-9

/** Feet this far outside the ends of a line are taken as lying on the end, m, so that joints are not fallen through. */
const endTolerance = 1e-7

/** Every foot of `point` on `line`, in order along the line; none where no place of the line faces the point. */
export function feetOn(line: Clothoid, point: Point): readonly Foot[] {
  if (line.curvatureStart !== line.curvatureEnd) return feetOnClothoid(line, point)
  return line.curvatureStart === 0 ? feetOnSegment(line, point) : feetOnArc(line, point)
}

/** How far `point` lies ahead of and to the right of the place `along` m from the start of `line`. */
export const seenFromPlace = (line: Clothoid, along: Metres, point: Point) =>
  seenFrom(pointAlong(line, along), azimuthAlong(line, along), point)

function feetOnSegment(line: Clothoid, point: Point): readonly Foot[] {
  const seen = seenFrom(line.start, line.azimuth, point)
  return within(line, seen.ahead) ? [footAt(line, seen.ahead, seen.right)] : []
}

function feetOnArc(line: Clothoid, point: Point): readonly Foot[] {
  const radius = 1 / line.curvatureStart
  const centre = movedBy(line.start, line.azimuth, 0, radius)
  const reach = distance(centre, point)
  if (reach < numericTolerance * Math.max(1, Math.abs(radius) * 1e-3))
    return [{ from: 0, to: line.length, offset: radius }]
  const seen = seenFrom(centre, line.azimuth, point)
  // on a right turn the start lies to the left of the centre; the swept angle grows clockwise from there
  const side = Math.sign(radius)
  const swept = Math.atan2(seen.ahead, -side * seen.right)
  const round = 2 * Math.PI * Math.abs(radius)
  const first = (swept < 0 ? swept + 2 * Math.PI : swept) * Math.abs(radius)
  const feet: Foot[] = []
  for (const along of [first - round, first, first + round])
    if (within(line, along)) feet.push(footAt(line, along, side * (Math.abs(radius) - reach)))
  return feet
}

// The foot is where g(along) = "how far ahead the point lies" falls through zero; g' = -(1 - curvature · offset).
function feetOnClothoid(line: Clothoid, point: Point): readonly Foot[] {
  const ahead = (along: Metres) => seenFromPlace(line, along, point).ahead
  const slope = (along: Metres) => curvatureAlong(line, along) * seenFromPlace(line, along, point).right - 1
  const turning = (Math.max(Math.abs(line.curvatureStart), Math.abs(line.curvatureEnd)) * line.length) / 0.2
  const pieces = Math.max(8, Math.ceil(turning))
  const feet: Foot[] = []
  const takeBetween = (low: Metres, high: Metres) => {
    const along = rootBetween(ahead, low, high, 1e-11)
    feet.push(footAt(line, along, seenFromPlace(line, along, point).right))
  }
  let low = 0
  let gLow = ahead(0)
  if (gLow <= 0 && gLow > -endTolerance && slope(0) < 0) feet.push(footAt(line, 0, seenFromPlace(line, 0, point).right))
  for (let i = 1; i <= pieces; i++) {
    const high = (line.length * i) / pieces
    const gHigh = ahead(high)
    if (gLow > 0 && gHigh <= 0) takeBetween(low, high)
    else if (gLow < 0 && gHigh < 0 && slope(low) > 0 && slope(high) < 0) {
      // g rises and falls inside the piece: it may reach zero twice, and the second time is a foot
      const top = rootBetween(slope, low, high, 1e-11)
      if (ahead(top) >= 0) takeBetween(top, high)
    } else if (gLow > 0 && gHigh > 0 && slope(low) < 0 && slope(high) > 0) {
      const bottom = rootBetween(slope, low, high, 1e-11)
      if (ahead(bottom) <= 0) takeBetween(low, bottom)
    }
    low = high
    gLow = gHigh
  }
  if (gLow > 0 && gLow < endTolerance && slope(line.length) < 0)
    feet.push(footAt(line, line.length, seenFromPlace(line, line.length, point).right))
  return feet
}

const within = (line: Clothoid, along: Metres): boolean => along >= -endTolerance && along <= line.length + endTolerance

function footAt(line: Clothoid, along: Metres, offset: Metres): Foot {
  const held = Math.min(Math.max(along, 0), line.length)
  return { from: held, to: held, offset }
}
