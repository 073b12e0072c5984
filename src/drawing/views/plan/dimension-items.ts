import { group, line, point, polyline, text } from '../../draw.ts'
import type { Item, Point } from '../../drawing.ts'
import { textWidth } from '../../text-width.ts'
import { type Span, spreadRows } from '../strip/spread.ts'
import { roadBack } from './carriageways.ts'
import type { PlanCanvas } from './plan-canvas.ts'

/** A dimension square to the road from the edge of travelled way; its words are a callout at its outer end. */
export function lateralDimension(canvas: PlanCanvas, station: number, lateral: number): Item[] {
  const { frame } = canvas
  const [a, b] = [frame.toDrawing(station, 0), frame.toDrawing(station, lateral)]
  return [line('dimensions', a, b), tickAt(canvas, station, a), tickAt(canvas, station, b)]
}

/** A short stroke across a dimension line, slanted to it. */
function tickAt({ frame, perPoint }: PlanCanvas, station: number, at: Point): Item {
  const turn = ((frame.turnAt(station) + 45) * Math.PI) / 180
  const [x, y] = [1.8 * perPoint * Math.cos(turn), 1.8 * perPoint * Math.sin(turn)]
  return line('dimensions', point(at.x - x, at.y - y), point(at.x + x, at.y + y))
}

/** A length along the road, between two places of which each has its own lateral. */
export interface AlongDimension {
  readonly id: string
  readonly from: Place
  readonly to: Place
  /** From the longest form to the shortest; the first that fits its length is written, the last stands beside it. */
  readonly words: readonly [string, ...string[]]
}

interface Place {
  readonly station: number
  readonly lateral: number
}

const size = 6.5
const firstRow = 11
const rowPoints = 11

/**
 * Dimensions along the road in rows behind it, and the points that these rows take. Every tier keeps to rows further out
 * than those of the tier before it.
 */
export function alongDimensions(
  canvas: PlanCanvas,
  tiers: readonly (readonly AlongDimension[])[],
): { items: Item[]; points: number } {
  const items: Item[] = []
  let first = 0
  for (const tier of tiers) {
    const worded = tier.map((one) => withWords(canvas, one))
    const rows = spreadRows(worded.map((one) => one.span))
    items.push(...worded.map((one, i) => dimensionRow(canvas, one, first + rows[i]!)))
    first += Math.max(0, ...rows.map((row) => row + 1))
  }
  return { items, points: firstRow + rowPoints * first }
}

interface Worded {
  readonly id: string
  readonly from: Place
  readonly to: Place
  readonly words: string
  /** Station of the middle of the words. */
  readonly middle: number
  readonly span: Span
}

function withWords({ frame, input, lateralOf, perPoint }: PlanCanvas, one: AlongDimension): Worded {
  const [from, to] = one.from.station < one.to.station ? [one.from, one.to] : [one.to, one.from]
  const middle = (from.station + to.station) / 2
  // on a bend, a row is longer or shorter than the edge
  const level = roadBack(input.site) - lateralOf(30)
  const [a, b] = [frame.toDrawing(middle - 0.5, level), frame.toDrawing(middle + 0.5, level)]
  const perStation = Math.hypot(b.x - a.x, b.y - a.y) / perPoint
  const room = (to.station - from.station) * perStation - 4
  const fitting = one.words.find((form) => textWidth(form, size) <= room)
  const span = { from: from.station, to: to.station }
  if (fitting !== undefined) return { id: one.id, from, to, words: fitting, middle, span }
  const words = one.words.at(-1)!
  const half = (textWidth(words, size) / 2 + 2.5) / perStation
  return span.to + 2 * half <= frame.range.to
    ? { id: one.id, from, to, words, middle: span.to + half, span: { from: span.from, to: span.to + 2 * half } }
    : { id: one.id, from, to, words, middle: span.from - half, span: { from: span.from - 2 * half, to: span.to } }
}

function dimensionRow(canvas: PlanCanvas, { id, from, to, words, middle }: Worded, row: number): Item {
  const { frame, input, lateralOf, perPoint } = canvas
  const level = roadBack(input.site) - lateralOf(firstRow + rowPoints * row)
  const points = frame.line(level, from.station, to.station)
  if (points.length === 0) return group(id, words, [])
  const turn = (frame.turnAt(middle) * Math.PI) / 180
  const at = frame.toDrawing(middle, level)
  const above = point(at.x - 1.6 * perPoint * Math.sin(turn), at.y + 1.6 * perPoint * Math.cos(turn))
  return group(id, words, [
    ...[from, to].flatMap(({ station, lateral }) => [
      line('leaders', frame.toDrawing(station, lateral), frame.toDrawing(station, level - lateralOf(2))),
      tickAt(canvas, station, frame.toDrawing(station, level)),
    ]),
    polyline('dimensions', points),
    text('dimensions', above, words, size, { anchor: 'middle', turnDegrees: frame.turnAt(middle) }),
  ])
}
