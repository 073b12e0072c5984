import { area, circle, line, point, polyline, rectangle, text } from '../../draw.ts'
import type { Item } from '../../drawing.ts'
import type { FigureFacts } from './figure-facts.ts'
import type { Pane } from './pair.ts'

/** Height of a W-beam and its depth, inches (12 1/4 x 3 1/4, M 180 class of rail). */
export const beamHeight = 12.25
const beamDepth = 3.25

/** Depths of the double corrugation below the top edge, inches; the shape is generic. */
const ribs = [0.7, 2.4, 3.5, 5.2, 7.05, 8.75, 9.85, 11.55] as const
const isCrest = [false, true, true, false, false, true, true, false] as const

/** Section of a rail whose back lies at `x` and whose top is at `top`; its face looks to the left, to the traffic. */
export const beamSection = (x: number, top: number): Item =>
  polyline('rail', [
    point(x, top),
    ...ribs.map((down, i) => point(x - (isCrest[i] ? beamDepth : 0), top - down)),
    point(x, top - beamHeight),
  ])

/** Face of a rail from `from` to `to`, its top at `top`. */
export const beamFace = (from: number, to: number, top: number): Item[] => [
  rectangle('rail', { minX: from, maxX: to, minY: top - beamHeight, maxY: top }, 'blank'),
  ...ribs.slice(1, -1).map((down) => line('ribs', point(from, top - down), point(to, top - down))),
]

/** Finish grade at `y` over the width of the pane. */
export const ground = (pane: Pane, y: number, from = 0, to = pane.width): Item[] => [
  rectangle('ground', { minX: from, maxX: to, minY: Math.max(0, y - 5 * pane.perPoint), maxY: y }, 'hatch', false),
  line('ground', point(from, y), point(to, y)),
]

/** A post seen square to the rail or along it: a plain body from `bottom` to `top`. */
export const postBody = (centre: number, width: number, bottom: number, top: number): Item =>
  rectangle('post', { minX: centre - width / 2, maxX: centre + width / 2, minY: bottom, maxY: top }, 'tint')

export const boltHead = (x: number, y: number, pane: Pane): Item =>
  circle('hole', point(x, y), 2.1 * pane.perPoint, 'solid')

export const openHole = (x: number, y: number, pane: Pane): Item =>
  circle('hole', point(x, y), 2.1 * pane.perPoint, 'blank')

/** A level arrow from `from` to `to` at height `y`. */
function arrow(layer: string, from: number, to: number, y: number, pane: Pane): Item[] {
  const size = 3 * pane.perPoint
  const back = to - Math.sign(to - from) * 2.2 * size
  return [
    line(layer, point(from, y), point(back, y)),
    area(layer, [point(back, y + size * 0.8), point(to, y), point(back, y - size * 0.8)], 'solid'),
  ]
}

/** An arrow at the upper left that says where the head is. */
export const towardHead = (pane: Pane, { words }: FigureFacts): Item[] => {
  const y = pane.height - 6 * pane.perPoint
  return [
    ...arrow('traffic', 20 * pane.perPoint, 4 * pane.perPoint, y, pane),
    text('text', point(23 * pane.perPoint, y), words.toHead, 7, { level: 'middle' }),
  ]
}

/** An arrow at the top that says how adjacent traffic runs. */
export const trafficArrow = (pane: Pane, { words }: FigureFacts): Item[] => {
  const y = pane.height - 7 * pane.perPoint
  return [
    ...arrow('traffic', 4 * pane.perPoint, 28 * pane.perPoint, y, pane),
    text('text', point(32 * pane.perPoint, y), words.traffic, 7, { level: 'middle' }),
  ]
}
