import type { Drawing, Point, Text } from '../../../src/drawing/drawing.ts'
import { textWidth } from '../../../src/drawing/text-width.ts'
import { drawnItems } from './drawn.ts'

/** Pairs of texts of the drawing that overlap, turned ones too. */
export function touchingTexts(drawing: Drawing): string[] {
  const texts = drawnItems(drawing.items).filter((item): item is Text => item.kind === 'text')
  const boxes = texts.map((item) => cornersOf(item, drawing.scale / 72))
  return texts.flatMap((a, i) =>
    texts.slice(i + 1).flatMap((b, j) => (overlap(boxes[i]!, boxes[i + 1 + j]!) ? [`${a.text} | ${b.text}`] : [])),
  )
}

/** Corners of the box from the base line to the height of capitals. */
export function cornersOf(item: Text, perPoint: number): readonly Point[] {
  const size = ('points' in item.height ? item.height.points : item.height.inches / perPoint) * perPoint
  const width = textWidth(item.text, size, item.bold)
  const height = size * 0.72
  const left = -{ start: 0, middle: 0.5, end: 1 }[item.anchor] * width
  const low = -{ base: 0, middle: 0.5, top: 1 }[item.level] * height
  const turn = (item.turnDegrees * Math.PI) / 180
  return [
    [left, low],
    [left + width, low],
    [left + width, low + height],
    [left, low + height],
  ].map(([x = 0, y = 0]) => ({
    x: item.at.x + x * Math.cos(turn) - y * Math.sin(turn),
    y: item.at.y + x * Math.sin(turn) + y * Math.cos(turn),
  }))
}

/** Two rectangles are apart when a side of one of them has the other wholly on its far side. */
function overlap(a: readonly Point[], b: readonly Point[]): boolean {
  return ![a, b].some((corners) =>
    [0, 1].some((side) => {
      const [from, to] = [corners[side]!, corners[side + 1]!]
      const along = (p: Point): number => p.x * (to.x - from.x) + p.y * (to.y - from.y)
      const [ours, theirs] = [a.map(along), b.map(along)]
      const slack = 1e-6 * Math.abs(along(from))
      return Math.max(...ours) <= Math.min(...theirs) + slack || Math.max(...theirs) <= Math.min(...ours) + slack
    }),
  )
}
