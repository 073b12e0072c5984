import type { Metres } from '../../core/units/quantity.ts'
import { point } from '../draw.ts'
import type { Drawing, Item } from '../drawing.ts'
import { siteWords } from '../words/site-words.ts'
import { inOrder, placeCallouts } from './plan/callouts.ts'
import { footBlock, headBlock } from './plan/foot.ts'
import { boxAround } from './plan/item-box.ts'
import { siteLayers } from './plan/site-layers.ts'
import { siteSheet } from './plan/site-sheet.ts'
import type { SiteView } from './plan/site-view.ts'
import { roadWords, stationWords } from './plan/site-words.ts'
import { type SectionCanvas, sectionCanvas } from './section/section-canvas.ts'
import { lateralRows, sectionCallouts, sectionItems } from './section/section-items.ts'
import { barrierAt, hazardsAt } from './section/section-laterals.ts'

/**
 * The cross section of a site at `station` (continuous, m), looking up-station.
 * @param exaggeration  how many times their size heights are drawn; the section says so
 */
export function sectionDrawing(view: SiteView, station: Metres, exaggeration = 1): Drawing {
  const canvas = sectionCanvas(view, station, exaggeration)
  const { perPoint, widths, scale } = canvas
  const shown: Item[] = [...sectionItems(canvas)]
  const rows = lateralRows(canvas, boxAround(shown, perPoint).minY)
  shown.push(...rows.items)
  const callouts = inOrder(sectionCallouts(canvas))
  const box = boxAround(shown, perPoint)
  const placed = placeCallouts(callouts, box, 1, perPoint, widths.isNarrow)
  shown.push(...placed.items)

  const room = widths.width - 2 * widths.margin
  const left = boxAround(shown, perPoint).minX
  const lines = [`${roadWords(view)}. ${siteWords(view.print).lookingUpStation}`, scaleLine(canvas)]
  const headPoints = headBlock(titleOf(canvas), lines, point(0, 0), room, perPoint).points
  const top = box.maxY + (placed.depth + headPoints + 6) * perPoint
  const head = headBlock(titleOf(canvas), lines, point(left, top), room, perPoint)
  const start = point(left, box.minY - 8 * perPoint)
  const keyed = widths.isNarrow ? callouts : []
  const foot = footBlock(view, 1, keyed, [notStated(canvas)], start, room, perPoint)
  const items = [...head.items, ...shown, ...foot.items]
  return {
    title: titleOf(canvas),
    description: descriptionOf(canvas),
    layers: siteLayers,
    scale,
    ...siteSheet(view.page, items, left, top, start.y - foot.points * perPoint, perPoint),
    items,
  }
}

const titleOf = ({ view, station }: SectionCanvas): string =>
  siteWords(view.print).section(stationWords(view.site, station))

function scaleLine({ view, scaleWords, exaggeration }: SectionCanvas): string {
  const { toScale, heightsLarger } = siteWords(view.print)
  const widthWords = scaleWords ?? toScale
  return exaggeration === 1 ? widthWords : `${widthWords} ${heightsLarger(exaggeration)}`
}

function notStated({ view, station }: SectionCanvas): string {
  const words = siteWords(view.print)
  return [
    words.slopesNotStated(view.site.road.alignment.kind !== 'straight'),
    ...(hazardsAt(view, station).some(([, { far }]) => far !== null) ? [words.heightsNotStated] : []),
    ...(barrierAt(view, station) === null ? [words.noBarrier] : []),
  ].join(' ')
}

function descriptionOf({ view, station, laterals }: SectionCanvas): string {
  const { site, print } = view
  const words = siteWords(print)
  return [
    words.sectionShows(stationWords(site, station), site.side),
    words.hazardsHere(hazardsAt(view, station).map(([, { name }]) => print.theirs(name))),
    words.fromEdge(laterals.map((one) => one.words)),
  ].join(' ')
}
