import { moved, point } from '../draw.ts'
import type { Box, Drawing, Item } from '../drawing.ts'
import { type PaperName, type PlainScale, papers, plainScales } from '../paper.ts'
import { type Band, gutterPoints, stripBand } from './strip/band.ts'
import { breakRun } from './strip/breaks.ts'
import { leadPoints, type Range, railRange } from './strip/frame.ts'
import { stripLegend } from './strip/legend.ts'
import { scaleBar, scaleBarWidth } from './strip/scale-bar.ts'
import type { StripInput } from './strip/strip-input.ts'
import { stripLayers } from './strip/strip-layers.ts'
import { titleBlock, titleHeight } from './strip/title-block.ts'
import { placeVerdicts } from './strip/verdict-rows.ts'

const marginPoints = 30
/** Closest that posts at the run's usual spacing may come on paper, so that numbers and signs stay apart. */
const closestPosts = 14

/** The whole run as one long strip without paper: x is inches along the rail from post 1, y = 0 the line of the run. */
export function stripDrawing(input: StripInput): Drawing {
  const scale = plainScales[input.units][1]!
  const perPoint = scale.ratio / 72
  const whole = wholeRange(input, scale)
  const band = stripBand(input, verdictsOf(input), scale.ratio, whole, { before: null, after: null })
  const left = whole.from - gutterPoints * perPoint
  const width = Math.max((whole.to - left) / perPoint, 560)
  const legend = stripLegend(input, Math.min(width, 720), perPoint)
  const top = band.above + titleHeight + 6
  const bottom = band.below + 12 + legend.height + 26
  const at = (items: readonly Item[], points: number): Item[] =>
    items.map((item) => moved(item, left, points * perPoint))
  return {
    ...named(input, null),
    scale: scale.ratio,
    paper: null,
    extent: {
      minX: left - 6 * perPoint,
      maxX: left + (width + 6) * perPoint,
      minY: -bottom * perPoint,
      maxY: top * perPoint,
    },
    items: [
      ...at(
        titleBlock(input, Math.min(width, 720), perPoint, `Scale 1:${scale.ratio} before it is enlarged`, null),
        top - 4,
      ),
      ...band.items,
      ...at(legend.items, -band.below - 8),
      ...at(scaleBar(scale.ratio, input.units, false), -bottom + 14),
    ],
  }
}

/**
 * The run on landscape pages, in rows with match lines, at the largest plain scale at which it fits one page; a longer
 * run goes on over several, at the smallest scale that can be read.
 */
export function stripPages(input: StripInput, page: PaperName): Drawing[] {
  const readable = plainScales[input.units].filter((scale) => usualSpacing(input) / (scale.ratio / 72) >= closestPosts)
  const candidates = readable.length > 0 ? readable : plainScales[input.units].slice(0, 1)
  for (const scale of candidates) {
    const sheets = fillPages(input, page, scale, scale === candidates.at(-1) ? Number.POSITIVE_INFINITY : 1)
    if (sheets !== null) return sheets.map((bands, i) => pageDrawing(input, page, scale, bands, i + 1, sheets.length))
  }
  throw new RangeError('there is no scale to choose from')
}

/** The middle one of all post spacings, inches. */
function usualSpacing({ layout }: StripInput): number {
  const spacings = layout.posts.slice(1).map((post, i) => post.alongInches - layout.posts[i]!.alongInches)
  return spacings.sort((a, b) => a - b)[Math.floor(spacings.length / 2)] ?? 75
}

const verdictsOf = (input: StripInput): ReturnType<typeof placeVerdicts> => placeVerdicts(input.verdicts ?? [])

function wholeRange(input: StripInput, scale: PlainScale): Range {
  const rail = railRange(input)
  const lead = (leadPoints * scale.ratio) / 72
  return { from: rail.from - lead, to: rail.to + lead }
}

/** The bands of each page; null when they need more than `most` pages. */
function fillPages(input: StripInput, page: PaperName, scale: PlainScale, most: number): Band[][] | null {
  const perPoint = scale.ratio / 72
  const paper = papers[page]
  const width = paper.widthPoints - 2 * marginPoints - gutterPoints
  const ranges = breakRun(input.layout, wholeRange(input, scale), width * perPoint, 9 * perPoint)
  const verdicts = verdictsOf(input)
  const legend = footHeight(input, page, perPoint)
  const room = paper.heightPoints - 2 * marginPoints - titleHeight - legend
  const pages: Band[][] = []
  let left = 0
  for (const [i, range] of ranges.entries()) {
    const matches = { before: i === 0 ? null : i, after: i === ranges.length - 1 ? null : i + 1 }
    const band = stripBand(input, verdicts, scale.ratio, range, matches)
    const height = band.above + band.below + bandGap
    if (pages.length === 0 || height > left) {
      if (pages.length === most) return null
      pages.push([])
      left = room
    }
    pages.at(-1)!.push(band)
    left -= height
  }
  return pages
}

const bandGap = 6

/** The legend stands at the left of the foot, the scale bar at its right. */
const legendWidth = (page: PaperName): number => papers[page].widthPoints - 2 * marginPoints - scaleBarWidth - 24

const footHeight = (input: StripInput, page: PaperName, perPoint: number): number =>
  Math.max(stripLegend(input, legendWidth(page), perPoint).height, 30)

function pageDrawing(
  input: StripInput,
  page: PaperName,
  scale: PlainScale,
  bands: readonly Band[],
  number: number,
  pages: number,
): Drawing {
  const paper = papers[page]
  const perPoint = scale.ratio / 72
  // The page's lower left corner is the origin.
  const extent: Box = { minX: 0, minY: 0, maxX: paper.widthPoints * perPoint, maxY: paper.heightPoints * perPoint }
  const put = (items: readonly Item[], x: number, y: number): Item[] => {
    const to = point(x * perPoint, y * perPoint)
    return items.map((item) => moved(item, to.x, to.y))
  }
  const width = paper.widthPoints - 2 * marginPoints
  const top = paper.heightPoints - marginPoints
  const scaleWords = `Scale ${scale.words} when printed at 100 % on ${paper.name} paper`
  const items: Item[] = put(
    titleBlock(input, width, perPoint, scaleWords, `page ${number} of ${pages}`),
    marginPoints,
    top,
  )
  let y = top - titleHeight
  for (const band of bands) {
    y -= band.above + bandGap
    items.push(...put(band.items, marginPoints + gutterPoints - band.range.from / perPoint, y))
    y -= band.below
  }
  const foot = marginPoints + footHeight(input, page, perPoint)
  items.push(...put(stripLegend(input, legendWidth(page), perPoint).items, marginPoints, foot))
  const barLeft = paper.widthPoints - marginPoints - scaleBarWidth
  items.push(...put(scaleBar(scale.ratio, input.units, true), barLeft, marginPoints + 20))
  return {
    ...named(input, pages === 1 ? null : `page ${number} of ${pages}`),
    scale: scale.ratio,
    paper,
    extent,
    items,
  }
}

/** Name and description of the strip, and its layers. */
function named(input: StripInput, pageWords: string | null): Pick<Drawing, 'title' | 'description' | 'layers'> {
  const { layout, titles, first, second, system } = input
  const count = (number: number, word: string): string => `${number} ${word}${number === 1 ? '' : 's'}`
  const failing = verdictsOf(input).filter((one) => one.worst === 'fails')
  const verdictWords =
    input.verdicts === null
      ? 'Nothing is judged yet.'
      : failing.length === 0
        ? 'No place fails.'
        : `Fails at: ${failing.map((one) => one.place.name).join('; ')}.`
  return {
    title: [`Strip of ${titles.run}`, titles.route, titles.stations, pageWords].filter((part) => part).join(', '),
    description: `Plan of the run from its upstream end at the left to its downstream end at the right: ${first.name}, then ${system.name}, then ${second.name}; ${count(layout.posts.length, 'post')}, ${count(layout.panels.length, 'panel')}, ${count(layout.splices.length, 'splice')}. ${verdictWords}`,
    layers: stripLayers,
  }
}
