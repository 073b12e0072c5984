import { sheetText } from '../../../core/hardware/sheet-text.ts'
import type { Hazard } from '../../../core/site/site.ts'
import { exactLength, toMetres } from '../../../core/units/exact-length.ts'
import { inches, type Metres } from '../../../core/units/quantity.ts'
import { area, group, line, polyline, text } from '../../draw.ts'
import type { Item } from '../../drawing.ts'
import { fitText } from '../../text-width.ts'
import { siteWords } from '../../words/site-words.ts'
import type { Callout } from '../plan/callouts.ts'
import { barrierDepth } from './ground.ts'
import type { SectionCanvas } from './section-canvas.ts'
import { barrierAt, hazardsAt } from './section-laterals.ts'

/** The surface, the limits, the hazards and the barrier. */
export const sectionItems = (canvas: SectionCanvas): readonly Item[] => [
  ...hazardsAt(canvas.view, canvas.station).map(([number, hazard]) => hazardItem(canvas, number, hazard)),
  ...groundItems(canvas),
  ...limitItems(canvas),
  ...barrierItems(canvas),
]

function groundItems({ view, ground, toDrawing }: SectionCanvas): Item[] {
  const layers = {
    'travelled way': 'travelled way',
    shoulder: 'travelled way',
    foreslope: 'ground',
    slope: 'ground',
    'not stated': 'ground not stated',
  } as const
  const lines = ground.map(({ from, to, what }) =>
    line(layers[what], toDrawing(from.lateral, from.height), toDrawing(to.lateral, to.height)),
  )
  return [group('road', siteWords(view.print).surface, lines)]
}

/** Height to which limits and hazards are drawn above the ground, m; a site does not say how high a hazard is. */
const drawnHeight = 1.5

function limitItems({ view, toDrawing, groundAt }: SectionCanvas): Item[] {
  const { shyLine, clearZone } = siteWords(view.print)
  const limits = [
    { id: 'shy-line', layer: 'shy line', words: shyLine, lateral: view.shyLine, height: drawnHeight * 0.8 },
    {
      id: 'clear-zone',
      layer: 'clear zone',
      words: clearZone,
      lateral: view.clearZone,
      height: drawnHeight,
    },
  ]
  return limits.flatMap(({ id, layer, words, lateral, height }) => {
    if (lateral === null) return []
    const foot = groundAt(lateral)
    return [group(id, words, [line(layer, toDrawing(lateral, foot), toDrawing(lateral, foot + height))])]
  })
}

/** A thing on the ground, or, where it goes on, what lies under the ground from its near side on. */
function hazardItem({ view, toDrawing, groundAt, ground }: SectionCanvas, number: number, hazard: Hazard): Item {
  const { near, far, name } = hazard
  const outer = far ?? ground.at(-1)!.to.lateral
  const level = groundAt(near) + (far === null ? -drawnHeight / 2 : drawnHeight)
  const corners = [
    toDrawing(near, groundAt(near)),
    toDrawing(near, level),
    toDrawing(outer, far === null ? groundAt(outer) - drawnHeight / 2 : level),
    toDrawing(outer, groundAt(outer)),
  ]
  return group(`hazard-${number}`, view.print.theirs(name), [
    area('hazards', corners, 'hatch', far !== null),
    ...(far === null ? [polyline('hazards', corners.slice(0, 2))] : []),
  ])
}

/** Depth of a W-beam and size of block and post as drawn; the sheets do not state them. Common practice. */
const beam = { depth: inches(12.25), thick: inches(3.25), block: inches(8), post: inches(6), into: inches(12) }

function barrierItems(canvas: SectionCanvas): Item[] {
  const { toDrawing, groundAt, view } = canvas
  const place = barrierAt(view, canvas.station)
  if (place === null) return []
  const { lateral } = place
  const foot = groundAt(lateral)
  const top = foot + railHeight(canvas).metres
  const box = (from: Metres, to: Metres, low: Metres, high: Metres) => [
    toDrawing(lateral + from, low),
    toDrawing(lateral + to, low),
    toDrawing(lateral + to, high),
    toDrawing(lateral + from, high),
  ]
  const back = beam.thick + beam.block
  const face = [0, 0.25, 0.5, 0.75, 1].map((share, i) =>
    toDrawing(lateral + (i % 2 === 0 ? beam.thick * 0.7 : 0), top - share * beam.depth),
  )
  return [
    group('barrier', siteWords(view.print).barrier(railHeight(canvas).words), [
      area('end units', box(back, barrierDepth, foot - beam.into, top), 'tint'),
      area('end units', box(beam.thick, back, top - beam.depth - inches(1), top), 'blank'),
      polyline('barrier', face),
    ]),
  ]
}

/** Height of the top of rail, from the sheet of the system or of an end. */
function railHeight({ view }: SectionCanvas): { metres: Metres; words: string } {
  const { railHeight: sheetHeight } = view
  const { topOfRail, heightNotStated } = siteWords(view.print)
  const { nominal, unit } = sheetHeight ?? { nominal: 'notStated', unit: 'in' }
  if (nominal === 'notStated') return { metres: inches(31), words: heightNotStated(view.print.length(31, 'in')) }
  return { metres: toMetres(exactLength(nominal, unit)), words: topOfRail(view.print.length(nominal, unit)) }
}

/** What is named above the section. */
export function sectionCallouts(canvas: SectionCanvas): readonly Callout[] {
  const { ground, toDrawing, groundAt, view, station, laterals } = canvas
  const { print } = view
  const said = siteWords(print)
  const surfaces = ground
    .filter(({ what }, i) => ground.findIndex((other) => other.what === what) === i)
    .map(({ from, to, words }) => {
      // beyond whatever stands on it
      const inside = laterals.map((one) => one.lateral).filter((one) => one > from.lateral && one < to.lateral - 1e-6)
      const middle = (Math.max(from.lateral, ...inside) + to.lateral) / 2
      return { id: 'road', at: toDrawing(middle, groundAt(middle)), words }
    })
  const hazards = hazardsAt(view, station).map(([number, { name, near, far }]) => {
    const middle = far === null ? near + 0.3 : (near + far) / 2
    return {
      id: `hazard-${number}`,
      at: toDrawing(middle, far === null ? groundAt(middle) : groundAt(near) + drawnHeight),
      words: said.hazard(print.theirs(name), far === null, []),
    }
  })
  const limits = [
    ...(view.shyLine === null
      ? []
      : [{ id: 'shy-line', lateral: view.shyLine, height: drawnHeight * 0.8, words: said.shyLine }]),
    ...(view.clearZone === null
      ? []
      : [{ id: 'clear-zone', lateral: view.clearZone, height: drawnHeight, words: said.clearZone }]),
  ].map(({ id, lateral, height, words }) => ({ id, words, at: toDrawing(lateral, groundAt(lateral) + height) }))
  const place = barrierAt(view, station)
  if (place === null) return [...surfaces, ...hazards, ...limits]
  const at = toDrawing(place.lateral + beam.thick, groundAt(place.lateral) + railHeight(canvas).metres)
  const height = railHeight(canvas).words
  const words =
    place.unit === null
      ? said.barrier(height)
      : said.unitHeight(print.say(sheetText(place.unit, place.unit.name)), height)
  return [...surfaces, ...hazards, ...limits, { id: 'barrier', at, words }]
}

const rowPoints = 10

/** One row for each lateral distance, all from the edge of travelled way, with their words on the side of the road. */
export function lateralRows(canvas: SectionCanvas, lowest: number): { items: readonly Item[]; points: number } {
  const { laterals, toDrawing, perPoint, outward, widths } = canvas
  const zero = toDrawing(0, 0)
  const items = laterals.map(({ id, lateral, words }, i): Item => {
    const y = lowest - (8 + i * rowPoints) * perPoint
    const end = toDrawing(lateral, canvas.groundAt(lateral))
    const tick = (x: number): Item =>
      line(
        'dimensions',
        { x: x - 1.8 * perPoint, y: y - 1.8 * perPoint },
        { x: x + 1.8 * perPoint, y: y + 1.8 * perPoint },
      )
    return group(id, words, [
      line('leaders', end, { x: end.x, y: y - 2 * perPoint }),
      line('dimensions', { x: zero.x, y }, { x: end.x, y }),
      tick(zero.x),
      tick(end.x),
      text('text', { x: zero.x - outward * 4 * perPoint, y }, fitText(words, widths.width * 0.6, 6.5), 6.5, {
        anchor: outward === 1 ? 'end' : 'start',
        level: 'middle',
      }),
    ])
  })
  const points = 8 + laterals.length * rowPoints
  return { items: [line('leaders', zero, { x: zero.x, y: lowest - (points - 4) * perPoint }), ...items], points }
}
