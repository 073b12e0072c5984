import { moved } from '../../drawing/draw.ts'
import type { Drawing } from '../../drawing/drawing.ts'
import { plainScales } from '../../drawing/paper.ts'
import { gutterPoints, stripBand } from '../../drawing/views/strip/band.ts'
import { breakRun } from '../../drawing/views/strip/breaks.ts'
import { leadPoints, railRange } from '../../drawing/views/strip/frame.ts'
import { scaleBar } from '../../drawing/views/strip/scale-bar.ts'
import type { StripInput } from '../../drawing/views/strip/strip-input.ts'
import { stripLayers } from '../../drawing/views/strip/strip-layers.ts'
import { placeVerdicts } from '../../drawing/views/strip/verdict-rows.ts'
import type { Print } from '../../words/print.ts'
import { documentWords } from '../words/document-words.ts'

export interface CrewStrip {
  readonly drawing: Drawing
  /** `1 in = 20 ft (1:240)` */
  readonly scale: string
}

/**
 * The strip without title and legend, at the largest plain scale at which it fits into rows `width` points wide, the fewer
 * the better; null for a run that needs pages of its own.
 * @param mostRows  for which there is room
 */
export function crewStrip(input: StripInput, width: number, mostRows: number, print: Print): CrewStrip | null {
  for (let most = 1; most <= mostRows; most++)
    for (const { ratio, words } of plainScales[input.units]) {
      const drawing = rows(input, ratio, width, most, print)
      if (drawing !== null) return { drawing, scale: words }
    }
  return null
}

function rows(input: StripInput, ratio: number, width: number, most: number, print: Print): Drawing | null {
  const words = documentWords(print).crewSheet
  const perPoint = ratio / 72
  if (usualSpacing(input) / perPoint < closestPosts) return null
  const rail = railRange(input)
  const lead = leadPoints * perPoint
  const whole = { from: rail.from - lead, to: rail.to + lead }
  const ranges = breakRun(input.layout, whole, (width - gutterPoints) * perPoint, 9 * perPoint)
  if (ranges.length > most) return null
  const verdicts = placeVerdicts(input.verdicts ?? [])
  let down = 0
  const items = ranges.flatMap((range, i) => {
    const matches = { before: i === 0 ? null : i, after: i === ranges.length - 1 ? null : i + 1 }
    const band = stripBand(input, verdicts, ratio, range, matches)
    const level = down + band.above
    down = level + band.below + 4
    return band.items.map((item) => moved(item, gutterPoints * perPoint - range.from, -level * perPoint))
  })
  const height = down + barHeight
  return {
    title: words.stripTitle(input.titles.run),
    description: words.stripShows(input.layout.posts.length, input.layout.panels.length),
    scale: ratio,
    paper: null,
    extent: { minX: 0, maxX: width * perPoint, minY: -height * perPoint, maxY: 0 },
    layers: stripLayers,
    items: [
      ...items,
      ...scaleBar(ratio, input.units, true, print).map((item) =>
        moved(item, gutterPoints * perPoint, -(down + 6) * perPoint),
      ),
    ],
  }
}

const barHeight = 25

/** Closest that posts at the usual spacing may come on paper, points, so that their numbers stay apart. */
const closestPosts = 14

function usualSpacing({ layout }: StripInput): number {
  const spacings = layout.posts.slice(1).map((post, i) => post.alongInches - layout.posts[i]!.alongInches)
  return spacings.sort((a, b) => a - b)[Math.floor(spacings.length / 2)] ?? Number.POSITIVE_INFINITY
}
