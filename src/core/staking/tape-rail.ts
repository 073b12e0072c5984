import { azimuthAt } from '../alignment/horizontal-alignment.ts'
import { movedBy, type Point } from '../geometry/point.ts'
import { ok, type Result } from '../result.ts'
import { inches, type Metres } from '../units/quantity.ts'
import type { Barrier } from './barrier.ts'
import { type RailLine, type RailLineRefusal, railLine } from './rail-line.ts'
import { outwardSign, type StakingFrame } from './staking-frame.ts'
import { nodesBetween, type OffAlignment, stationsAlong } from './stations-along.ts'

/** Longest stretch of rail followed at once, m. */
const step = 0.1

/**
 * The points reached from `start`, the face of rail at the first of `alongInches`, by following the rail piece by piece in its
 * own direction. Only direction and length of the rail are used, no offset: the other way to each stake.
 *
 * Each short piece is integrated by Gauss's two points, m - h/(2√3) and m + h/(2√3), so that bends between pieces do no
 * harm.
 */
export function tapeRail(
  barrier: Barrier,
  frame: StakingFrame,
  datum: Metres,
  alongInches: readonly number[],
  start: Point,
): Result<readonly Point[], OffAlignment | RailLineRefusal> {
  const found = railLine(barrier)
  if (!found.ok) return found
  const line = found.value
  const rails = alongInches.map(inches)
  const spaces = rails.slice(1).map((rail, i) => piecesBetween(line, rails[i]!, rail))
  const looks = spaces.flat().flatMap(({ from, to }) => gaussPoints(from, to))
  const stations = stationsAlong(frame, line, datum, looks)
  if (!stations.ok) return stations
  let look = 0
  let point = start
  const points = [start]
  for (const pieces of spaces) {
    for (const { from, to } of pieces) {
      for (let k = 0; k < 2; k++) {
        const slope = line.slopeAt(looks[look]!)
        const length = (to - from) / 2
        const ahead = frame.direction * length * Math.sqrt(1 - slope * slope)
        const right = outwardSign(frame.side) * length * slope
        point = movedBy(point, azimuthAt(frame.alignment, stations.value[look]!), ahead, right)
        look++
      }
    }
    points.push(point)
  }
  return ok(points)
}

function piecesBetween(line: RailLine, from: Metres, to: Metres): { readonly from: Metres; readonly to: Metres }[] {
  const corners = [from, ...nodesBetween(line, from, to)]
  return corners.slice(1).flatMap((corner, i) => {
    const before = corners[i]!
    const count = Math.max(1, Math.ceil((corner - before) / step - 1e-9))
    return Array.from({ length: count }, (_, k) => ({
      from: before + ((corner - before) * k) / count,
      to: before + ((corner - before) * (k + 1)) / count,
    }))
  })
}

function gaussPoints(from: Metres, to: Metres): readonly [Metres, Metres] {
  const reach = (to - from) / (2 * Math.sqrt(3))
  return [(from + to) / 2 - reach, (from + to) / 2 + reach]
}
