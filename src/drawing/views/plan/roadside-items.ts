import type { Hazard } from '../../../core/site/site.ts'
import { area, circle, group, line, polyline } from '../../draw.ts'
import type { Item } from '../../drawing.ts'
import { siteWords } from '../../words/site-words.ts'
import type { Callout } from './callouts.ts'
import { lateralDimension } from './dimension-items.ts'
import type { PlanCanvas } from './plan-canvas.ts'
import { saidLength, shortLength } from './site-words.ts'

/** Clear zone, shy line, driveways and hazards. */
export function roadsideItems(canvas: PlanCanvas): readonly Item[] {
  return [
    ...limits(canvas),
    ...shownDriveways(canvas).map((i) => driveway(canvas, i)),
    ...canvas.input.site.hazards.map((_, i) => hazardItems(canvas, i)),
  ]
}

function limits(canvas: PlanCanvas): Item[] {
  const { frame } = canvas
  const items: Item[] = []
  for (const { id, words, lateral, layer } of limitLines(canvas)) {
    const points = frame.line(lateral, frame.range.from, frame.range.to)
    if (points.length > 0) items.push(group(id, words, [polyline(layer, points)]))
  }
  const opposing = opposingLimit(canvas)
  if (opposing === null) return items
  const points = frame.line(opposing.lateral, opposing.from, opposing.to)
  if (points.length > 0) items.push(group(opposing.id, opposing.words, [polyline('clear zone', points)]))
  return items
}

/** The clear zone of opposing traffic, where it and not the hazard's far side is what the barrier shields. */
function opposingLimit({ input }: PlanCanvas) {
  const departure = input.need?.departure
  if (departure == null || departure.governs.extentBy !== 'clear zone') return null
  const [, end, outer] = departure.path
  if (end === undefined || outer === undefined) return null
  return {
    id: 'departure-clear-zone',
    words: siteWords(input.print).lines.opposingClearZone(saidLength(departure.clearZone, input)),
    lateral: outer.lateral,
    from: Math.min(end.station, outer.station),
    to: Math.max(end.station, outer.station),
  }
}

interface LimitLine {
  readonly id: string
  readonly words: string
  readonly lateral: number
  readonly layer: string
}

/** The lines of the roadside that run along the whole plan. */
export function limitLines({ input }: PlanCanvas): readonly LimitLine[] {
  const { clearZone, shyLine, print } = input
  const words = siteWords(print).lines
  const lines: LimitLine[] = []
  if (shyLine !== null)
    lines.push({
      id: 'shy-line',
      words: words.shyLine(shortLength(shyLine, input)),
      lateral: shyLine,
      layer: 'shy line',
    })
  if (clearZone !== null)
    lines.push({
      id: 'clear-zone',
      words: words.clearZone(shortLength(clearZone, input)),
      lateral: clearZone,
      layer: 'clear zone',
    })
  return lines
}

/** Indices of the driveways that lie wholly in the range. */
const shownDriveways = ({ input, frame }: PlanCanvas): readonly number[] =>
  input.site.driveways.flatMap(({ from, to }, i) => (from >= frame.range.from && to <= frame.range.to ? [i] : []))

function driveway(canvas: PlanCanvas, index: number): Item {
  const { input, frame, lateralOf } = canvas
  const { name, from, to } = input.site.driveways[index]!
  const reach = (input.clearZone ?? input.site.barrier.offset) + lateralOf(4)
  const side = (station: number): Item =>
    line('driveways', frame.toDrawing(station, 0), frame.toDrawing(station, reach))
  return group(`driveway-${index + 1}`, input.print.theirs(name), [side(from), side(to)])
}

function hazardItems(canvas: PlanCanvas, index: number): Item {
  const { input, frame, perPoint } = canvas
  const hazard = input.site.hazards[index]!
  const { from, to, near } = hazard
  const outer = outerLateral(canvas, hazard)
  const inside = frame.line(near, from, to)
  const outside = frame.line(outer, from, to)
  const corners = [
    ...(inside.length > 0 ? inside : [frame.toDrawing(from, near), frame.toDrawing(to, near)]),
    ...outside.toReversed(),
  ]
  const isOpen = hazard.far === null
  const items: Item[] = [area('hazards', corners, 'hatch', !isOpen)]
  if (isOpen) {
    const [a, b] = [frame.toDrawing(from, outer), frame.toDrawing(to, outer)]
    items.push(polyline('hazards', [a, ...inside, b]))
  }
  const [a, c] = [frame.toDrawing(from, near), frame.toDrawing(to, outer)]
  if (Math.abs(c.x - a.x) < 3 * perPoint && Math.abs(c.y - a.y) < 3 * perPoint)
    items.push(circle('hazards', frame.toDrawing((from + to) / 2, (near + outer) / 2), 1.8 * perPoint, 'solid'))
  const dimensions = hazardDimensions(canvas, hazard).map(({ station, lateral }) =>
    lateralDimension(canvas, station, lateral),
  )
  return group(`hazard-${index + 1}`, hazardWords(canvas, hazard), [...items, ...dimensions.flat()])
}

/** Its far side; for one that goes on, a little beyond the clear zone. */
const outerLateral = ({ input, lateralOf }: PlanCanvas, { far, near }: Hazard): number =>
  far ?? Math.max(input.clearZone ?? 0, near) + lateralOf(8)

/** Where the near and the far dimension of a hazard stand: beside its downstream edge. */
function hazardDimensions(
  { alongOf }: PlanCanvas,
  { to, near, far }: Hazard,
): { station: number; lateral: number; side: 'near' | 'far' }[] {
  const nearOne = { station: to + alongOf(4), lateral: near, side: 'near' } as const
  return far === null ? [nearOne] : [nearOne, { station: to + alongOf(9), lateral: far, side: 'far' }]
}

export function roadsideCallouts(canvas: PlanCanvas): readonly Callout[] {
  const { input, frame } = canvas
  const { site, print } = input
  const words = siteWords(print)
  const hazards = site.hazards.flatMap((hazard, i) => {
    const id = `hazard-${i + 1}`
    const name = {
      id,
      at: frame.toDrawing((hazard.from + hazard.to) / 2, outerLateral(canvas, hazard)),
      words: hazardWords(canvas, hazard),
    }
    const laterals = hazardDimensions(canvas, hazard).map(({ station, lateral, side }) => {
      const place = words.hazardSide(side, saidLength(lateral, input))
      return {
        id,
        at: frame.toDrawing(station, lateral),
        words: canvas.widths.isNarrow ? words.ofHazard(print.theirs(hazard.name), place) : place,
      }
    })
    return [name, ...laterals]
  })
  const driveways = shownDriveways(canvas).map((i) => {
    const { name, from, to } = site.driveways[i]!
    const at = frame.toDrawing((from + to) / 2, input.clearZone ?? site.barrier.offset)
    return { id: `driveway-${i + 1}`, at, words: print.theirs(name) }
  })
  const opposing = opposingLimit(canvas)
  if (opposing === null) return [...hazards, ...driveways]
  const at = frame.toDrawing(opposing.from + 0.7 * (opposing.to - opposing.from), opposing.lateral)
  return [...hazards, ...driveways, { id: opposing.id, words: opposing.words, at }]
}

function hazardWords({ input }: PlanCanvas, { name, beyondClearZone }: Hazard): string {
  const { need, print } = input
  const governs = (['approach', 'departure'] as const).filter((one) => need?.[one]?.governs.hazard === name)
  return siteWords(print).hazard(print.theirs(name), beyondClearZone, governs)
}
