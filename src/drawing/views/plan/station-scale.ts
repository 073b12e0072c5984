import { group, line, text } from '../../draw.ts'
import type { Item } from '../../drawing.ts'
import { textWidth } from '../../text-width.ts'
import { siteWords } from '../../words/site-words.ts'
import { roadBack } from './carriageways.ts'
import type { PlanCanvas } from './plan-canvas.ts'
import { stationWords } from './site-words.ts'

/**
 * Stations: ticks on the edge of travelled way beside the hazards, and a line with their numbers behind the road.
 * @param aside  points between the back of the road and the line
 */
export function stationScale(canvas: PlanCanvas, aside: number): Item {
  const { frame, input, lateralOf } = canvas
  const { from, to } = frame.range
  const level = roadBack(input.site) - lateralOf(aside)
  const { step, parts } = tickStep(canvas, level)
  const items: Item[] = []
  const axis = frame.line(level, from, to)
  if (axis.length > 0) items.push({ kind: 'polyline', layer: 'dimensions', points: axis })
  const tick = (station: number, lateral: number, points: number): Item =>
    line('dimensions', frame.toDrawing(station, lateral), frame.toDrawing(station, lateral - lateralOf(points)))
  const small = step / parts
  for (let i = Math.ceil(from / small - 1e-9); i * small <= to + 1e-9; i++) {
    const isNumbered = i % parts === 0
    items.push(tick(i * small, 0, isNumbered ? 3.5 : 2))
    if (axis.length === 0) continue
    items.push(tick(i * small, level, isNumbered ? 4 : 2))
    if (!isNumbered) continue
    const at = frame.toDrawing(i * small, level - lateralOf(frame.outward === -1 ? 6 : 11))
    const words = stationWords(input.site, i * small)
    const room = Math.min(at.x - frame.toDrawing(from, level).x, frame.toDrawing(to, level).x - at.x)
    if (room / canvas.perPoint > textWidth(words, 6.5) / 2 - 9)
      items.push(text('text', at, words, 6.5, { anchor: 'middle', turnDegrees: frame.turnAt(i * small) }))
  }
  return group(
    'stations',
    siteWords(input.print).stations(stationWords(input.site, from), stationWords(input.site, to)),
    items,
  )
}

/** Numbered steps, m, at least 46 points apart on the line at `level`, and how many small ones make one. */
function tickStep({ input, frame, perPoint }: PlanCanvas, level: number): { step: number; parts: number } {
  const unit = input.site.units === 'us' ? 0.3048 : 1
  const middle = (frame.range.from + frame.range.to) / 2
  const [a, b] = [frame.toDrawing(middle - 0.5, level), frame.toDrawing(middle + 0.5, level)]
  const least = (46 * perPoint) / Math.hypot(b.x - a.x, b.y - a.y)
  for (let power = unit; ; power *= 10)
    for (const times of [1, 2, 5])
      if (times * power >= least) return { step: times * power, parts: times === 2 ? 4 : 5 }
}
