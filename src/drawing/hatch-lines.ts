import { point } from './draw.ts'
import type { Point } from './drawing.ts'

/**
 * The parts inside the closed shape `corners` of lines that rise at 45 degrees, `spacing` inches apart.
 * The lines lie on one lattice through the origin, so that neighbouring shapes match.
 */
export function hatchLines(corners: readonly Point[], spacing: number): [Point, Point][] {
  // A line of the lattice is y - x = c; along it, u = x tells the place.
  const step = spacing * Math.SQRT2
  const levels = corners.map((corner) => corner.y - corner.x)
  const first = Math.ceil(Math.min(...levels) / step)
  const last = Math.floor(Math.max(...levels) / step)
  const lines: [Point, Point][] = []
  for (let index = first; index <= last; index++) {
    const c = index * step
    const crossings = crossingsOf(corners, c).sort((a, b) => a - b)
    for (let i = 0; i + 1 < crossings.length; i += 2) {
      const from = crossings[i]!
      const to = crossings[i + 1]!
      lines.push([point(from, from + c), point(to, to + c)])
    }
  }
  return lines
}

/** x of every point where the edges of `corners` cross the line y - x = c; a corner on it counts with one of its edges. */
function crossingsOf(corners: readonly Point[], c: number): number[] {
  const found: number[] = []
  corners.forEach((from, i) => {
    const to = corners[(i + 1) % corners.length]!
    const a = from.y - from.x - c
    const b = to.y - to.x - c
    if (a < 0 === b < 0) return
    found.push(from.x + ((to.x - from.x) * a) / (a - b))
  })
  return found
}
