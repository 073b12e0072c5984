import { point } from '../draw.ts'
import type { Drawing, Item } from '../drawing.ts'
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
import { lengthWords, listed, roadWords, stationWords } from './plan/site-words.ts'
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
  const lines = [`${roadWords(input.site)}. Up-station is to the right.`, scaleLine(canvas)]
  const headPoints = headBlock(titleOf(input), lines, point(0, 0), room, perPoint).points
  const top = highest + (headPoints + 4) * perPoint
  const head = headBlock(titleOf(input), lines, point(left, top), room, perPoint)

  const start = point(left, lowest - 8 * perPoint)
  const sentences = needNotes(input.need, input.site.units, input.print)
  const keyed = widths.isNarrow ? callouts : []
  const foot = footBlock(input.site.units, frame.across, keyed, sentences, start, room, perPoint)
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

function scaleLine({ scaleWords, frame }: PlanCanvas): string {
  if (scaleWords !== null) return scaleWords
  return frame.across === 1
    ? 'To scale: see the bar.'
    : `Lengths along the road to scale: see the bar. ACROSS THE ROAD DRAWN ${frame.across} TIMES LARGER.`
}

const titleOf = ({ site }: PlanInput): string =>
  `Plan: barrier for ${listed(site.hazards.map((hazard) => hazard.name))}`

function descriptionOf(canvas: PlanCanvas): string {
  const { input, frame } = canvas
  const { site } = input
  const long = (length: number) => lengthWords(length, site.units)
  const hazards = site.hazards.map((hazard) => {
    const far = hazard.far === null ? 'on beyond the clear zone' : long(hazard.far)
    return `${hazard.name}, station ${stationWords(site, hazard.from)} to ${stationWords(site, hazard.to)}, ${long(hazard.near)} to ${far} from the edge`
  })
  const needs = directions(canvas).map(
    ([direction, need]) =>
      `For the ${direction} the need ends ${long(need.lengthOfNeed)} from ${need.governs.hazard ?? 'the hazard'}, ${long(need.lateralAtEnd)} from the edge.`,
  )
  return [
    `Plan of the road from station ${stationWords(site, frame.range.from)} at the left to ${stationWords(site, frame.range.to)} at the right, hazards on the ${site.side}.`,
    `Hazards: ${hazards.join('; ')}.`,
    `The face of the barrier stands ${long(site.barrier.offset)} from the edge of travelled way.`,
    ...needs,
  ].join(' ')
}
