import type { Box, Drawing, Group, Item, Point, Text } from '../../../src/drawing/drawing.ts'
import { textWidth } from '../../../src/drawing/text-width.ts'

/** Every item of the drawing that is no group, those inside groups too. */
export function drawnItems(items: readonly Item[]): Exclude<Item, Group>[] {
  return items.flatMap((item) => (item.kind === 'group' ? drawnItems(item.items) : [item]))
}

export function drawnGroups(items: readonly Item[], id: RegExp): Group[] {
  return items.flatMap((item) =>
    item.kind === 'group' ? [...(id.test(item.id) ? [item] : []), ...drawnGroups(item.items, id)] : [],
  )
}

export const drawnWords = (drawing: Drawing): string[] =>
  drawnItems(drawing.items).flatMap((item) => (item.kind === 'text' || item.kind === 'dimension' ? [item.text] : []))

/** Where the item's points lie; a text counts with its estimated width and the height of its capitals. */
export function boxOf(item: Exclude<Item, Group>, scale: number): Box {
  const around = (points: readonly Point[]): Box => ({
    minX: Math.min(...points.map((p) => p.x)),
    maxX: Math.max(...points.map((p) => p.x)),
    minY: Math.min(...points.map((p) => p.y)),
    maxY: Math.max(...points.map((p) => p.y)),
  })
  switch (item.kind) {
    case 'line':
    case 'dimension':
      return around([item.from, item.to])
    case 'polyline':
    case 'area':
      return around(item.points)
    case 'circle':
    case 'arc': {
      const { centre, radius } = item
      return around([
        { x: centre.x - radius, y: centre.y - radius },
        { x: centre.x + radius, y: centre.y + radius },
      ])
    }
    case 'text':
      return textBox(item, scale)
    default:
      return item satisfies never
  }
}

function textBox(item: Text, scale: number): Box {
  const perPoint = scale / 72
  const size = 'points' in item.height ? item.height.points : item.height.inches / perPoint
  const width = textWidth(item.text, size, item.bold) * perPoint
  const height = size * 0.72 * perPoint
  const left = item.at.x - { start: 0, middle: 0.5, end: 1 }[item.anchor] * width
  const bottom = item.at.y - { base: 0, middle: 0.5, top: 1 }[item.level] * height
  return { minX: left, maxX: left + width, minY: bottom, maxY: bottom + height }
}
