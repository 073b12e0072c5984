import type { Area, Box, Circle, Dimension, Fill, Group, Item, Line, Point, Polyline, Text } from './drawing.ts'

export const point = (x: number, y: number): Point => ({ x, y })

export const line = (layer: string, from: Point, to: Point): Line => ({ kind: 'line', layer, from, to })

export const polyline = (layer: string, points: readonly Point[]): Polyline => ({ kind: 'polyline', layer, points })

export const area = (layer: string, points: readonly Point[], fill: Fill, edged = true): Area => ({
  kind: 'area',
  layer,
  points,
  fill,
  edged,
})

export const rectangle = (layer: string, box: Box, fill: Fill, edged = true): Area =>
  area(
    layer,
    [point(box.minX, box.minY), point(box.maxX, box.minY), point(box.maxX, box.maxY), point(box.minX, box.maxY)],
    fill,
    edged,
  )

export const circle = (layer: string, centre: Point, radius: number, fill: Fill = 'none'): Circle => ({
  kind: 'circle',
  layer,
  centre,
  radius,
  fill,
})

/** How a text stands; what is left out is a plain, level text that begins at its point. */
export interface TextStyle {
  readonly anchor?: Text['anchor']
  readonly level?: Text['level']
  readonly bold?: boolean
  readonly turnDegrees?: number
}

export const text = (layer: string, at: Point, words: string, points: number, style: TextStyle = {}): Text => ({
  kind: 'text',
  layer,
  at,
  text: words,
  height: { points },
  anchor: style.anchor ?? 'start',
  level: style.level ?? 'base',
  bold: style.bold ?? false,
  turnDegrees: style.turnDegrees ?? 0,
})

export const dimension = (
  layer: string,
  from: Point,
  to: Point,
  offset: number,
  words: string,
  points: number,
): Dimension => ({ kind: 'dimension', layer, from, to, offset, text: words, height: { points } })

export const group = (id: string, title: string, items: readonly Item[]): Group => ({ kind: 'group', id, title, items })

/** `item` shifted by `dx`, `dy` inches. */
export function moved(item: Item, dx: number, dy: number): Item {
  const shift = (p: Point): Point => point(p.x + dx, p.y + dy)
  switch (item.kind) {
    case 'line':
    case 'dimension':
      return { ...item, from: shift(item.from), to: shift(item.to) }
    case 'polyline':
    case 'area':
      return { ...item, points: item.points.map(shift) }
    case 'circle':
    case 'arc':
      return { ...item, centre: shift(item.centre) }
    case 'text':
      return { ...item, at: shift(item.at) }
    case 'group':
      return { ...item, items: item.items.map((inner) => moved(inner, dx, dy)) }
    default:
      return item satisfies never
  }
}
