import { point } from '../draw.ts'
import type { Drawing, Item } from '../drawing.ts'
import { siteWords } from '../words/site-words.ts'
import { barrierCallouts, barrierItems } from './plan/barrier-items.ts'
import { type Callout, inOrder, nameLines, placeCallouts } from './plan/callouts.ts'
import { alongDimensions } from './plan/dimension-items.ts'
import { footBlock, headBlock, needNotes } from './plan/foot.ts'
import { handleItems, handlesOf, type PlanHandle } from './plan/handles.ts'
import { boxAround } from './plan/item-box.ts'
import { directions, needCallouts, needDimensions, needItems } from './plan/need-items.ts'
import { type PlanCanvas, planCanvases } from './plan/plan-canvas.ts'
import type { PlanFrame } from './plan/plan-frame.ts'
import { roadItems, roadNames } from './plan/road-items.ts'
import { limitLines, roadsideCallouts, roadsideItems } from './plan/roadside-items.ts'
import { siteLayers } from './plan/site-layers.ts'
import { fitsPage, siteSheet } from './plan/site-sheet.ts'
import type { PlanInput } from './plan/site-view.ts'
import { roadWords, saidLength, stationWords } from './plan/site-words.ts'
import { stationScale } from './plan/station-scale.ts'

/** Where places by the road lie on the plan of `input` and back; what a page needs to make a drag a change of the site. */
export const planFrame = (input: PlanInput): PlanFrame => planCanvases(input)[0]!.frame

/** What can be moved on the plan, each with its `data-place` in the picture. */
export const planHandles = (input: PlanInput): readonly PlanHandle[] => handlesOf(planCanvases(input)[0]!)

/** The plan of a site with its barrier and the reason for its length; up-station to the right. On paper true to a plain scale. */
export function planDrawing(input: PlanInput): Drawing {
  const canvases = planCanvases(input)
  for (const canvas of canvases) {
    const drawing = drawOn(canvas)
    if (canvas === canvases.at(-1) || fitsPage(drawing)) return drawing
  }
  throw new RangeError('there is no scale to choose from')
}

function drawOn(canvas: PlanCanvas): Drawing {
  const { input, frame, perPoint, widths, scale } = canvas
  const dimensions = alongDimensions(canvas, needDimensions(canvas))
  const shown: Item[] = [
    roadItems(canvas),
    ...roadsideItems(canvas),
    ...dimensions.items,
    stationScale(canvas, dimensions.points + 6),
    ...barrierItems(canvas),
    ...handleItems(canvas),
    ...needItems(canvas),
  ]
  const bare = boxAround(shown, perPoint)
  const names = lineNames(canvas)
  if (!widths.isNarrow) shown.push(...nameLines(names, Math.max(...names.map(({ at }) => at.x)), perPoint))
  const box = boxAround(shown, perPoint)
  const callouts = inOrder([
    ...roadsideCallouts(canvas),
    ...barrierCallouts(canvas),
    ...needCallouts(canvas),
    ...(widths.isNarrow ? names : []),
  ])
  const placed = placeCallouts(callouts, box, frame.outward, perPoint, widths.isNarrow)
  shown.push(...placed.items)

  const left = bare.minX - 6 * perPoint
  const room = widths.width - 2 * widths.margin
  const highest = box.maxY + (frame.outward === 1 ? placed.depth : 0) * perPoint
  const lowest = box.minY - (frame.outward === -1 ? placed.depth : 0) * perPoint
  const lines = [`${roadWords(input)}. ${siteWords(input.print).upStation}`, scaleLine(canvas)]
  const headPoints = headBlock(titleOf(input), lines, point(0, 0), room, perPoint).points
  const top = highest + (headPoints + 4) * perPoint
  const head = headBlock(titleOf(input), lines, point(left, top), room, perPoint)

  const start = point(left, lowest - 8 * perPoint)
  const sentences = needNotes(input.need, input.site.units, input.print)
  const keyed = widths.isNarrow ? callouts : []
  const foot = footBlock(input, frame.across, keyed, sentences, start, room, perPoint)
  const items = [...head.items, ...shown, ...foot.items]
  return {
    title: titleOf(input),
    description: descriptionOf(canvas),
    layers: siteLayers,
    scale,
    ...siteSheet(input.page, items, left, top, start.y - foot.points * perPoint, perPoint),
    items,
  }
}

/** The lines along the road with the places where their names point: at the right end, side by side where there is no room. */
function lineNames(canvas: PlanCanvas): readonly Callout[] {
  const { frame, widths, alongOf } = canvas
  return [...roadNames(canvas), ...limitLines(canvas)].map(({ id, words, lateral }, i) => {
    const back = widths.isNarrow ? alongOf(2 + 13 * i) : 0
    return { id, words, at: frame.toDrawing(frame.range.to - back, lateral) }
  })
}

function scaleLine({ input, scaleWords, frame }: PlanCanvas): string {
  if (scaleWords !== null) return scaleWords
  const { toScale, acrossLarger } = siteWords(input.print)
  return frame.across === 1 ? toScale : acrossLarger(frame.across)
}

const titleOf = ({ site, print }: PlanInput): string =>
  siteWords(print).plan(
    print.list(
      site.hazards.map(({ name }) => print.theirs(name)),
      'and',
    ),
  )

function descriptionOf(canvas: PlanCanvas): string {
  const { input, frame } = canvas
  const { site, print } = input
  const words = siteWords(print)
  const long = (length: number): string => saidLength(length, input)
  const station = (at: number): string => stationWords(site, at)
  const hazards = site.hazards.map(({ name, from, to, near, far }) =>
    words.hazardAt(print.theirs(name), station(from), station(to), long(near), far === null ? null : long(far)),
  )
  const needs = directions(canvas).map(
    ([
      direction,
      {
        lengthOfNeed,
        lateralAtEnd,
        governs: { hazard },
      },
    ]) =>
      words.needEnds(direction, long(lengthOfNeed), hazard === null ? null : print.theirs(hazard), long(lateralAtEnd)),
  )
  return [
    words.planShows(station(frame.range.from), station(frame.range.to), site.side),
    words.hazards(hazards),
    words.barrierStands(long(site.barrier.offset)),
    ...needs,
  ].join(' ')
}
