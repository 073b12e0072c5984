import type { Metres } from '../units/quantity.ts'
import { distance, type Point } from './point.ts'

/** Points joined by straight lines, in order; at least one. */
export type Polyline = readonly Point[]

/** Length along the line, m. */
export function polylineLength(line: Polyline): Metres {
  let sum = 0
  for (let i = 1; i < line.length; i++) sum += distance(line[i - 1]!, line[i]!)
  return sum
}

/** The place of `line` nearest to `point`: how far along it lies, and how far away the point is, m. The first of equals. */
export function nearestOnPolyline(line: Polyline, point: Point): { readonly along: Metres; readonly away: Metres } {
  let best = { along: 0, away: distance(line[0]!, point) }
  let passed = 0
  for (let i = 1; i < line.length; i++) {
    const [a, b] = [line[i - 1]!, line[i]!]
    const length = distance(a, b)
    if (length === 0) continue
    const [east, north] = [(b.easting - a.easting) / length, (b.northing - a.northing) / length]
    const ahead = (point.easting - a.easting) * east + (point.northing - a.northing) * north
    const held = Math.min(Math.max(ahead, 0), length)
    const away = distance({ easting: a.easting + held * east, northing: a.northing + held * north }, point)
    if (away < best.away) best = { along: passed + held, away }
    passed += length
  }
  return best
}
