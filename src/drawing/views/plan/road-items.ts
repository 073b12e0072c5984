import { area, group, line, point, polyline, text } from '../../draw.ts'
import type { Item } from '../../drawing.ts'
import { textWidth } from '../../text-width.ts'
import { siteWords } from '../../words/site-words.ts'
import type { Callout } from './callouts.ts'
import { type Carriageway, carriageways, type Lane, shoulders } from './carriageways.ts'
import type { PlanCanvas } from './plan-canvas.ts'
import { shortLength } from './site-words.ts'

/** Travelled ways with their edges, lanes and arrows of traffic, and the shoulders. */
export function roadItems(canvas: PlanCanvas): Item {
  const { frame, input } = canvas
  const { from, to } = frame.range
  const along = (layer: string, lateral: number): Item[] => lineOf(layer, frame.line(lateral, from, to))
  const ways = carriageways(input.site)
  return group('road', siteWords(input.print).traffic.road, [
    ...shoulders(input.site).flatMap((shoulder) => along('shoulder', shoulder.to)),
    ...ways.flatMap((way) => [
      ...along('travelled way', way.from),
      ...along('travelled way', way.to),
      ...laneLines(way).flatMap(([layer, lateral]) => along(layer, lateral)),
      ...way.lanes.flatMap((lane, i) => arrows(canvas, lane, isFirstOfItsKind(way, i))),
    ]),
  ])
}

const lineOf = (layer: string, points: Parameters<typeof polyline>[1]): Item[] =>
  points.length === 0 ? [] : [polyline(layer, points)]

/** Between lanes of one direction a lane line, between directions the centre line. */
const laneLines = (way: Carriageway): [string, number][] =>
  way.lanes.slice(1).map((lane, i) => {
    const before = way.lanes[i]!
    return [lane.travel === before.travel ? 'lane line' : 'centre line', (lane.middle + before.middle) / 2]
  })

const isFirstOfItsKind = (way: Carriageway, index: number): boolean =>
  way.lanes.findIndex((lane) => lane.isAdjacent === way.lanes[index]!.isAdjacent) === index

/** Where the lines of the road itself are named. */
export function roadNames({ frame, input }: PlanCanvas): readonly (Omit<Callout, 'at'> & { lateral: number })[] {
  const { site } = input
  const [beside] = carriageways(site)
  const centre = laneLines(beside!).find(([layer]) => layer === 'centre line')
  const shoulder = site.road.shoulderWidth
  const words = siteWords(input.print).lines
  return [
    ...(centre === undefined || frame.line(centre[1], frame.range.from, frame.range.to).length === 0
      ? []
      : [{ id: 'road', words: words.centre, lateral: centre[1] }]),
    { id: 'road', words: words.edge, lateral: 0 },
    ...(shoulder === 0 ? [] : [{ id: 'road', words: words.shoulder(shortLength(shoulder, input)), lateral: shoulder }]),
  ]
}

/** An arrow every 220 points along a lane, the first of each direction with its words where the lane is wide enough. */
function arrows(canvas: PlanCanvas, lane: Lane, isNamed: boolean): Item[] {
  const { frame, perPoint, alongOf, widths } = canvas
  if (lane.travel === 0) return []
  const { from, to } = frame.range
  const laneWidth = (canvas.input.site.road.laneWidth / 0.0254 / perPoint) * frame.across
  const { adjacent, opposing } = siteWords(canvas.input.print).traffic
  const words = lane.isAdjacent ? adjacent : opposing
  const hasWords = isNamed && laneWidth >= 8
  const items: Item[] = []
  const apart = alongOf(widths.isNarrow ? 130 : 220)
  for (let start = from + alongOf(8); start + alongOf(30) < to; start += apart) {
    const [tail, tip] = lane.travel === 1 ? [start, start + alongOf(24)] : [start + alongOf(24), start]
    items.push(...arrow(canvas, lane, tail, tip))
    const half = alongOf(textWidth(words, 6.5) / 2)
    const at = start + alongOf(28) + half
    if (hasWords && items.length === 2 && at + half < to)
      items.push(
        text('text', frame.toDrawing(at, lane.middle), words, 6.5, {
          anchor: 'middle',
          level: 'middle',
          turnDegrees: frame.turnAt(at),
        }),
      )
  }
  return items
}

function arrow({ frame, perPoint, input }: PlanCanvas, lane: Lane, tail: number, tip: number): Item[] {
  const [a, b] = [frame.toDrawing(tail, lane.middle), frame.toDrawing(tip, lane.middle)]
  const length = Math.hypot(b.x - a.x, b.y - a.y)
  const [x, y] = [((b.x - a.x) / length) * perPoint, ((b.y - a.y) / length) * perPoint]
  const back = point(b.x - 7 * x, b.y - 7 * y)
  const half = Math.min(2, (input.site.road.laneWidth / 0.0254 / perPoint) * frame.across * 0.3)
  return [
    line('traffic', a, back),
    area(
      'traffic',
      [point(back.x - half * y, back.y + half * x), b, point(back.x + half * y, back.y - half * x)],
      'solid',
    ),
  ]
}
