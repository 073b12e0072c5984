import type { PaperName } from '../../../core/units/paper-names.ts'
import { moved, point } from '../../draw.ts'
import type { Box, Drawing, Item, Layer } from '../../drawing.ts'
import { type PlainScale, papers, plainScales } from '../../paper.ts'
import { runWords } from '../../words/run-words.ts'
import { type Band, gutterPoints, type MatchLines } from './band.ts'
import { breakRun } from './breaks.ts'
import { leadPoints, type Range, railRange } from './frame.ts'
import { scaleBar, scaleBarWidth } from './scale-bar.ts'
import type { StripInput } from './strip-input.ts'
import { blockRow, headHeight, titleBlock, titleHeight } from './title-block.ts'

/** One way to see a run from end to end: what is drawn of a stretch of it, and the words and signs around. */
export interface RunView {
  readonly title: string
  readonly description: string
  /** What may be measured on it and what not, in one line. */
  readonly measureWords: string
  readonly layers: readonly Layer[]
  /** The scale without paper. */
  readonly screenScale: PlainScale
  readonly band: (scale: number, range: Range, matches: MatchLines) => Band
  /** At most `width` points wide; its top left corner is the origin. */
  readonly legend: (width: number, perPoint: number) => { readonly items: readonly Item[]; readonly height: number }
}

/** Whether pages say which of the drawing they are, or stand in a document that numbers all of its own. */
export type PageNumbers = 'own' | 'of the document'

const marginPoints = 30
/** Closest that posts at the run's usual spacing may come on paper, so that numbers and signs stay apart. */
const closestPosts = 14

/** The whole run as one long picture without paper: x is inches along the rail from post 1. */
export function runDrawing(input: StripInput, view: RunView): Drawing {
  const { ratio } = view.screenScale
  const perPoint = ratio / 72
  const whole = wholeRange(input, ratio)
  const band = view.band(ratio, whole, { before: null, after: null })
  const left = whole.from - gutterPoints * perPoint
  const width = Math.max((whole.to - left) / perPoint, 560)
  const wordsWidth = Math.min(width, 720)
  const legend = view.legend(wordsWidth, perPoint)
  const words = runWords(input.print)
  const top = band.above + titleHeight + 6
  const bottom = band.below + 12 + legend.height + 26
  const at = (items: readonly Item[], points: number): Item[] =>
    items.map((item) => moved(item, left, points * perPoint))
  const title = titleBlock(input, wordsWidth, perPoint, {
    scale: words.screenScale(ratio),
    measure: view.measureWords,
    page: null,
  })
  return {
    ...named(view, view.title),
    scale: ratio,
    paper: null,
    extent: {
      minX: left - 6 * perPoint,
      maxX: left + (width + 6) * perPoint,
      minY: -bottom * perPoint,
      maxY: top * perPoint,
    },
    items: [
      ...at(title, top - 4),
      ...band.items,
      ...at(legend.items, -band.below - 8),
      ...at(scaleBar(ratio, input.units, false, input.print), -bottom + 14),
    ],
  }
}

/**
 * The run on landscape pages, in rows with match lines, at the largest plain scale at which it fits one page; a longer
 * run goes on over several, at the smallest scale that can be read.
 */
export function runPages(input: StripInput, view: RunView, page: PaperName, numbers: PageNumbers): Drawing[] {
  const readable = plainScales[input.units].filter((scale) => usualSpacing(input) / (scale.ratio / 72) >= closestPosts)
  const candidates = readable.length > 0 ? readable : plainScales[input.units].slice(0, 1)
  for (const scale of candidates) {
    const most = scale === candidates.at(-1) ? Number.POSITIVE_INFINITY : 1
    const sheets = fillPages(input, view, page, scale.ratio, most)
    if (sheets !== null)
      return sheets.map((bands, i) =>
        pageDrawing(input, view, page, scale, bands, { number: i + 1, of: sheets.length, shown: numbers === 'own' }),
      )
  }
  throw new RangeError('there is no scale to choose from')
}

/** The middle one of all post spacings, inches. */
function usualSpacing({ layout }: StripInput): number {
  const spacings = layout.posts.slice(1).map((post, i) => post.alongInches - layout.posts[i]!.alongInches)
  return spacings.sort((a, b) => a - b)[Math.floor(spacings.length / 2)] ?? 75
}

function wholeRange(input: StripInput, scale: number): Range {
  const rail = railRange(input)
  const lead = (leadPoints * scale) / 72
  return { from: rail.from - lead, to: rail.to + lead }
}

/** The bands of each page; null when they need more than `most` pages. */
function fillPages(input: StripInput, view: RunView, page: PaperName, scale: number, most: number): Band[][] | null {
  const perPoint = scale / 72
  const paper = papers[page]
  const width = paper.widthPoints - 2 * marginPoints - gutterPoints
  const ranges = breakRun(input.layout, wholeRange(input, scale), width * perPoint, 9 * perPoint)
  const room = paper.heightPoints - 2 * marginPoints - headHeight(input) - footHeight(view, page, perPoint)
  const pages: Band[][] = []
  let left = 0
  for (const [i, range] of ranges.entries()) {
    const matches = { before: i === 0 ? null : i, after: i === ranges.length - 1 ? null : i + 1 }
    const band = view.band(scale, range, matches)
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

const footHeight = (view: RunView, page: PaperName, perPoint: number): number =>
  Math.max(view.legend(legendWidth(page), perPoint).height, 30)

function pageDrawing(
  input: StripInput,
  view: RunView,
  page: PaperName,
  scale: PlainScale,
  bands: readonly Band[],
  count: { readonly number: number; readonly of: number; readonly shown: boolean },
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
  const words = runWords(input.print)
  const pageWords = words.page(count.number, count.of)
  const title = titleBlock(input, width, perPoint, {
    scale: words.paperScale(scale.words, page),
    measure: view.measureWords,
    page: count.shown ? pageWords : null,
  })
  const items: Item[] = put([...title, ...blockRow(input, width, perPoint)], marginPoints, top)
  let y = top - headHeight(input)
  for (const band of bands) {
    y -= band.above + bandGap
    items.push(...put(band.items, marginPoints + gutterPoints - band.range.from / perPoint, y))
    y -= band.below
  }
  const foot = marginPoints + footHeight(view, page, perPoint)
  items.push(...put(view.legend(legendWidth(page), perPoint).items, marginPoints, foot))
  const barLeft = paper.widthPoints - marginPoints - scaleBarWidth
  items.push(...put(scaleBar(scale.ratio, input.units, true, input.print), barLeft, marginPoints + 20))
  return {
    ...named(view, count.of === 1 ? view.title : words.onPage(view.title, pageWords)),
    scale: scale.ratio,
    paper,
    extent,
    items,
  }
}

const named = ({ description, layers }: RunView, title: string): Pick<Drawing, 'title' | 'description' | 'layers'> => ({
  title,
  description,
  layers,
})
