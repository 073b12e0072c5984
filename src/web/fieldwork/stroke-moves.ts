import type { PhotoStrokes, Stroke } from '../../core/record/photo-strokes.ts'

type Size = Pick<PhotoStrokes, 'width' | 'height'>
type Point = Stroke['points'][number]

/** Where a pointer is, in parts of what it is on; at its edge where it is beyond that. */
export function partOf({ currentTarget, clientX, clientY }: PointerEvent): Point {
  const box = (currentTarget as Element).getBoundingClientRect()
  const part = (value: number): number => rounded(Math.min(1, Math.max(0, value)))
  return [part((clientX - box.left) / box.width), part((clientY - box.top) / box.height)]
}

/** A stroke at the place where a pointer came down. */
export const startedStroke = (kind: Stroke['kind'], at: Point): Stroke => ({ kind, points: [at, at] })

/** A stroke in the middle of a photo, to be moved from there. */
export function centredStroke(kind: Stroke['kind'], size: Size): Stroke {
  const edge = Math.max(size.width, size.height)
  const points: readonly [Point, Point] = [
    [0.5, 0.5],
    [rounded(0.5 + edge / 8 / size.width), rounded(0.5 - edge / 12 / size.height)],
  ]
  return { kind, points }
}

/** By so many steps to the right and down, each a fortieth of the longer edge. */
export function movedStroke(stroke: Stroke, { width, height }: Size, right: number, down: number): Stroke {
  const step = Math.max(width, height) / 40
  return changed(stroke, ([x, y]) => [x + (right * step) / width, y + (down * step) / height])
}

/** About its first point: `by` times as long, and turned by so many radians. */
export function grownStroke(stroke: Stroke, { width, height }: Size, by: number, turn: number): Stroke {
  const [[fromX, fromY]] = stroke.points as readonly [Point]
  const [cos, sin] = [by * Math.cos(turn), by * Math.sin(turn)]
  return changed(stroke, ([x, y]) => {
    const [dx, dy] = [(x - fromX) * width, (y - fromY) * height]
    return [fromX + (dx * cos - dy * sin) / width, fromY + (dx * sin + dy * cos) / height]
  })
}

/** Whether all of its points lie on the photo. */
export const isWithin = ({ points }: Stroke): boolean => points.every((point) => point.every((n) => n >= 0 && n <= 1))

/** Whether a pointer hardly moved for it: that leaves no stroke. */
export const isTap = ({ points }: Stroke): boolean => {
  const [from] = points as readonly [Point]
  return points.every(([x, y]) => Math.hypot(x - from[0], y - from[1]) < 0.015)
}

function changed(stroke: Stroke, change: (point: Point) => Point): Stroke {
  const moved = (point: Point): Point => {
    const [x, y] = change(point)
    return [rounded(x), rounded(y)]
  }
  return stroke.kind === 'line'
    ? { kind: stroke.kind, points: stroke.points.map(moved) }
    : { kind: stroke.kind, points: [moved(stroke.points[0]), moved(stroke.points[1])] }
}

/** To less than half a pixel of a photo of 4000. */
const rounded = (part: number): number => Math.round(part * 10_000) / 10_000
