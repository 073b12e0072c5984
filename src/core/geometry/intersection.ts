import type { Metres } from '../units/quantity.ts'
import { azimuthAlong, type Clothoid, curvatureAlong, pointAlong } from './clothoid.ts'
import { azimuthFrom, distance, type Point, seenFrom } from './point.ts'
import { rootBetween } from './root.ts'

/** Where a straight line from one point to another meets a line. */
export interface Meeting {
  /** m from the start of the line that is met. */
  readonly along: Metres
  /** m from the first point. */
  readonly reach: Metres
}

/**
 * Every meeting of `line` with the straight line between `from` and `to`, in order along `line`.
 * A straight line that only touches, without crossing, is not a meeting.
 */
export function meetingsOf(line: Clothoid, from: Point, to: Point): readonly Meeting[] {
  const azimuth = azimuthFrom(from, to)
  const length = distance(from, to)
  const right = (along: Metres) => seenFrom(from, azimuth, pointAlong(line, along)).right
  // d(right)/d(along) = sin(direction of the line against the straight one): it changes sign once per half turn at most
  const drift = (along: Metres) => Math.sin(azimuthAlong(line, along) - azimuth)
  const bounds = [0, ...changesOf(drift, line), line.length]
  const meetings: Meeting[] = []
  for (let i = 1; i < bounds.length; i++) {
    const [low, high] = [bounds[i - 1]!, bounds[i]!]
    const [rLow, rHigh] = [right(low), right(high)]
    if (rHigh !== 0 && rLow > 0 === rHigh > 0) continue
    if (rLow === 0 && i > 1) continue
    const along = rootBetween(right, low, high, 1e-11)
    const reach = seenFrom(from, azimuth, pointAlong(line, along)).ahead
    if (reach >= 0 && reach <= length) meetings.push({ along, reach })
  }
  return meetings
}

function changesOf(f: (along: Metres) => number, line: Clothoid): readonly Metres[] {
  const sharpest = Math.max(Math.abs(curvatureAlong(line, 0)), Math.abs(curvatureAlong(line, line.length)))
  const pieces = Math.max(2, Math.ceil(sharpest * line.length * 2))
  const changes: Metres[] = []
  for (let i = 1; i <= pieces; i++) {
    const [low, high] = [(line.length * (i - 1)) / pieces, (line.length * i) / pieces]
    if (f(low) > 0 !== f(high) > 0 && f(low) !== 0) changes.push(rootBetween(f, low, high, 1e-11))
  }
  return changes
}
