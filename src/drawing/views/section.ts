import type { Metres } from '../../core/units/quantity.ts'
import { point } from '../draw.ts'
import type { Drawing, Item } from '../drawing.ts'
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
  const lines = [`${roadWords(view.site)}. Seen looking up-station.`, scaleLine(canvas)]
  const headPoints = headBlock(titleOf(canvas), lines, point(0, 0), room, perPoint).points
  const top = box.maxY + (placed.depth + headPoints + 6) * perPoint
  const head = headBlock(titleOf(canvas), lines, point(left, top), room, perPoint)
  const start = point(left, box.minY - 8 * perPoint)
  const keyed = widths.isNarrow ? callouts : []
  const foot = footBlock(view.site.units, 1, keyed, [notStated(canvas)], start, room, perPoint)
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
  `Cross section at station ${stationWords(view.site, station)}`

function scaleLine({ scaleWords, exaggeration }: SectionCanvas): string {
  const widthWords = scaleWords ?? 'To scale: see the bar.'
  return exaggeration === 1 ? widthWords : `${widthWords} HEIGHTS ARE DRAWN ${exaggeration} TIMES THEIR SIZE.`
}

function notStated({ view, station }: SectionCanvas): string {
  const superelevation = view.site.road.alignment.kind === 'straight' ? '' : ', without superelevation'
  const heights = hazardsAt(view, station).some(([, { far }]) => far !== null)
    ? ' Heights of hazards are not stated; they are drawn alike.'
    : ''
  const barrier = barrierAt(view, station) === null ? ' There is no barrier at this station.' : ''
  return `Slopes of travelled way and shoulder are not stated; they are drawn as is common practice${superelevation}.${heights}${barrier}`
}

function descriptionOf(canvas: SectionCanvas): string {
  const { view, station, laterals } = canvas
  const hazards = hazardsAt(view, station).map(([, { name }]) => name)
  return [
    `Cross section looking up-station at station ${stationWords(view.site, station)}, roadside on the ${view.site.side}.`,
    hazards.length > 0 ? `Hazards here: ${hazards.join(', ')}.` : 'No hazard here.',
    `From the edge of travelled way: ${laterals.map(({ words }) => words).join('; ')}.`,
  ].join(' ')
}
