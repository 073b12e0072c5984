import type { Metres } from '../../../core/units/quantity.ts'
import { point } from '../../draw.ts'
import type { Point } from '../../drawing.ts'
import { textWidth } from '../../text-width.ts'
import { runWords } from '../../words/run-words.ts'
import { carriageways } from '../plan/carriageways.ts'
import { type PageWidths, pageWidths, type SiteView } from '../plan/site-view.ts'
import { type GroundPart, groundAt, groundParts } from './ground.ts'
import { type SectionLateral, sectionLaterals } from './section-laterals.ts'

/** All that the parts of one cross section share. */
export interface SectionCanvas {
  readonly view: SiteView
  readonly station: Metres
  readonly laterals: readonly SectionLateral[]
  readonly ground: readonly GroundPart[]
  readonly scale: number
  readonly scaleWords: string | null
  readonly perPoint: number
  readonly widths: PageWidths
  /** Heights are drawn this many times their size. */
  readonly exaggeration: number
  /** Where "away from the road" points: 1 right, -1 left, as seen looking up-station. */
  readonly outward: 1 | -1
  readonly toDrawing: (lateral: Metres, height: Metres) => Point
  /** Height of the surface at a lateral, m above the edge. */
  readonly groundAt: (lateral: Metres) => Metres
}

export function sectionCanvas(view: SiteView, station: Metres, exaggeration: number): SectionCanvas {
  const { site, page } = view
  const laterals = sectionLaterals(view, station)
  const outer = Math.max(site.road.shoulderWidth, ...laterals.map(({ lateral }) => lateral)) + 1.5
  const ground = groundParts(view, outer)
  const widths = pageWidths(page)
  const room = widths.width - 2 * widths.margin - 12 - (widths.isNarrow ? 0 : 90)
  const road = -carriageways(site)[0]!.from
  const words = Math.max(...laterals.map((one) => textWidth(one.words, 6.5))) + 6
  const whole = ((road + outer) / 0.0254 / room) * 72
  // the words of the dimensions stand on the side of the road
  const short = Math.max(0, words - (road / 0.0254 / whole) * 72)
  const needed = ((road + outer) / 0.0254 / (room - short)) * 72
  const isMetric = site.units === 'metric'
  const isScreen = page === 'web' || page === 'phone'
  const scale = isScreen ? needed : ((isMetric ? metricRatios : inchRatios).find((ratio) => ratio >= needed) ?? needed)
  const outward = site.side === 'right' ? 1 : -1
  return {
    view,
    station,
    laterals,
    ground,
    scale,
    scaleWords: isScreen ? null : runWords(view.print).paperScale(scaleName(scale, isMetric), page),
    perPoint: scale / 72,
    widths,
    exaggeration,
    outward,
    toDrawing: (lateral, height) => point((outward * lateral) / 0.0254, (height * exaggeration) / 0.0254),
    groundAt: (lateral) => groundAt(ground, lateral),
  }
}

const metricRatios = [20, 25, 50, 75, 100, 125, 150, 200, 250, 500]
const inchRatios = [24, 36, 48, 60, 72, 96, 120, 180, 240, 360, 480]

const scaleName = (ratio: number, isMetric: boolean): string =>
  isMetric ? `1:${ratio}` : `1 in = ${ratio / 12} ft (1:${ratio})`
