import { line, point } from './draw.ts'
import type { Dimension, Line, Point, Text } from './drawing.ts'

/**
 * A dimension as lines and text, for a writer that has no dimensions of its own: two witness lines, the dimension line,
 * a slanted tick at each end, and the text on its left side, readable from below or from the right.
 *
 * @param perPoint inches in the world for one point on paper
 */
export function dimensionParts(dimension: Dimension, perPoint: number): { lines: Line[]; text: Text } {
  const { from, to, offset, layer } = dimension
  const length = Math.hypot(to.x - from.x, to.y - from.y)
  const along = point((to.x - from.x) / length, (to.y - from.y) / length)
  const left = point(-along.y, along.x)
  const at = (base: Point, forward: number, aside: number): Point =>
    point(base.x + along.x * forward + left.x * aside, base.y + along.y * forward + left.y * aside)

  const side = offset < 0 ? -1 : 1
  const gap = 2 * perPoint * side
  const tick = 2 * perPoint
  const isOnLine = Math.abs(offset) < 4 * perPoint
  const witnesses = [from, to].map((end) =>
    isOnLine
      ? line(layer, at(end, 0, offset - gap), at(end, 0, offset + gap))
      : line(layer, at(end, 0, gap), at(end, 0, offset + gap)),
  )
  const ticks = [from, to].map((end) => line(layer, at(end, -tick, offset - tick), at(end, tick, offset + tick)))
  const size = 'points' in dimension.height ? dimension.height.points * perPoint : dimension.height.inches
  const degrees = (Math.atan2(along.y, along.x) * 180) / Math.PI
  const isUpsideDown = degrees > 90.001 || degrees < -89.999
  const aside = isUpsideDown ? -1 : 1
  return {
    lines: [...witnesses, ...ticks, line(layer, at(from, 0, offset), at(to, 0, offset))],
    text: {
      kind: 'text',
      layer,
      at: at(from, length / 2, offset + aside * (size * 0.5 + perPoint)),
      text: dimension.text,
      height: dimension.height,
      anchor: 'middle',
      level: 'middle',
      bold: false,
      turnDegrees: isUpsideDown ? degrees + (degrees < 0 ? 180 : -180) : degrees,
    },
  }
}
