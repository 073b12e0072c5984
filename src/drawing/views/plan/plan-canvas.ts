import { roadLine } from '../../../core/alignment/road-line.ts'
import type { PaperName } from '../../../core/units/paper-names.ts'
import type { Metres } from '../../../core/units/quantity.ts'
import type { Point } from '../../drawing.ts'
import { runWords } from '../../words/run-words.ts'
import { type BarrierLine, barrierLine } from './barrier-line.ts'
import { roadBack } from './carriageways.ts'
import { frameOf, type PlanFrame } from './plan-frame.ts'
import { type PageWidths, type PlanInput, pageWidths, type Stretch } from './site-view.ts'

/** All that the parts of one plan share. */
export interface PlanCanvas {
  readonly input: PlanInput
  readonly barrier: BarrierLine
  readonly frame: PlanFrame
  /** Inches in the world for each inch on paper, and what that is called. */
  readonly scale: number
  readonly scaleWords: string | null
  readonly perPoint: number
  readonly widths: PageWidths
  /** Lateral distance and length along the road that take `points` on paper, m. */
  readonly lateralOf: (points: number) => Metres
  readonly alongOf: (points: number) => Metres
}

/** Room at the right for the names of the lines that run along the road, points. */
const nameColumn = 128

/** The canvases to try, from the largest scale to the smallest; on a screen the one that fills its width. */
export function planCanvases(input: PlanInput): readonly PlanCanvas[] {
  const barrier = barrierLine(input)
  const range = input.range ?? fittingRange(input, barrier)
  const widths = pageWidths(input.page)
  const room = widths.width - 2 * widths.margin - 6 - (widths.isNarrow ? 6 : nameColumn)
  if (input.page === 'web' || input.page === 'phone') {
    const scale = screenScale(input, range, room)
    return [canvas(input, barrier, range, acrossFor(input, scale), scale, null, widths)]
  }
  const isMetric = input.site.units === 'metric'
  const needed = screenScale(input, range, room)
  const plain = (isMetric ? metricRatios : feetPerInch.map((feet) => feet * 12)).filter((ratio) => ratio >= needed)
  const ratios = plain.length > 0 ? plain : [Math.ceil(needed / 1200) * 1200]
  return ratios.map((ratio) => {
    const words = isMetric ? `1:${ratio}` : `1 in = ${ratio / 12} ft (1:${ratio})`
    const scaleWords = runWords(input.print).paperScale(words, input.page as PaperName)
    return canvas(input, barrier, range, 1, ratio, scaleWords, widths)
  })
}

const feetPerInch = [10, 20, 30, 40, 50, 60, 80, 100, 120, 150, 200, 300, 400, 500, 600, 800, 1000]
const metricRatios = [100, 200, 250, 400, 500, 750, 1000, 1250, 1500, 2000, 2500, 4000, 5000, 10_000]

function canvas(
  input: PlanInput,
  barrier: BarrierLine,
  range: Stretch,
  across: number,
  scale: number,
  scaleWords: string | null,
  widths: PageWidths,
): PlanCanvas {
  const perPoint = scale / 72
  const alongOf = (points: number): Metres => points * perPoint * 0.0254
  return {
    input,
    barrier,
    frame: frameOf(input.site, range, across),
    scale,
    scaleWords,
    perPoint,
    widths,
    alongOf,
    lateralOf: (points) => alongOf(points) / across,
  }
}

/** All that is shown, with a little road at both ends. */
function fittingRange(input: PlanInput, barrier: BarrierLine): Stretch {
  const { site, need } = input
  const stations = site.hazards.flatMap(({ from, to }) => [from, to])
  for (const { station, unit } of [barrier.approach, barrier.departure])
    stations.push(station, ...(unit === null ? [] : [unit.tip, unit.inner]))
  for (const { path } of [need?.approach, need?.departure].filter((one) => one != null))
    stations.push(...path.map((place) => place.station))
  const [low, high] = [Math.min(...stations), Math.max(...stations)]
  const step = site.units === 'us' ? 20 * 0.3048 : 5
  const lead = Math.max(0.04 * (high - low), 10)
  const from = Math.floor((low - lead) / step) * step
  const to = Math.ceil((high + lead) / step) * step
  return withinAlignment(input, { from, to })
}

function withinAlignment({ site }: PlanInput, { from, to }: Stretch): Stretch {
  const { radius, reach } = roadLine(site.road.alignment)
  if (radius !== null) {
    // no more than can be told apart on a plan
    const half = Math.min((to - from) / 2, 0.8 * Math.PI * radius)
    return { from: (from + to) / 2 - half, to: (from + to) / 2 + half }
  }
  return reach === null ? { from, to } : { from: Math.max(from, reach.from), to: Math.min(to, reach.to) }
}

/** The scale at which the plan is `room` points wide. */
function screenScale(input: PlanInput, range: Stretch, room: number): number {
  const frame = frameOf(input.site, range, 1)
  const back = roadBack(input.site)
  const front = Math.max(input.clearZone ?? 0, ...input.site.hazards.map((hazard) => hazard.far ?? hazard.near))
  const widthOf = (points: readonly Point[]) => {
    const xs = points.map((p) => p.x)
    return Math.max(...xs) - Math.min(...xs)
  }
  const lines = (more: Metres) =>
    [back - more, 0, front].flatMap((lateral) => frame.line(lateral, range.from, range.to))
  const bare = (widthOf(lines(0)) / room) * 72
  // on a bend, the rows behind the road reach further out than it does
  return (widthOf(lines((rowsBehind / 72) * bare * 0.0254)) / room) * 72
}

/** Most that the rows of dimensions and stations behind the road take, points. */
const rowsBehind = 60

/** How many times their size laterals are drawn: enough for a lane of 9 points, where the road is straight. */
function acrossFor({ site }: PlanInput, scale: number): number {
  if (!roadLine(site.road.alignment).isStraight) return 1
  const lane = (site.road.laneWidth / 0.0254 / scale) * 72
  return Math.min(Math.max(Math.ceil(9 / lane), 1), 10)
}
