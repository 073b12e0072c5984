import type { Box, Item, Point } from '../../drawing.ts'
import { textWidth } from '../../text-width.ts'

/** The smallest box around `items`; of a text, around its base line with the height of its letters to both sides. */
export function boxAround(items: readonly Item[], perPoint: number): Box {
  const box = { minX: Infinity, minY: Infinity, maxX: -Infinity, maxY: -Infinity }
  const take = ({ x, y }: Point, aside = 0, above = aside): void => {
    box.minX = Math.min(box.minX, x - aside)
    box.maxX = Math.max(box.maxX, x + aside)
    box.minY = Math.min(box.minY, y - above)
    box.maxY = Math.max(box.maxY, y + above)
  }
  const walk = (item: Item): void => {
    switch (item.kind) {
      case 'line':
      case 'dimension':
        take(item.from)
        take(item.to)
        return
      case 'polyline':
      case 'area':
        for (const corner of item.points) take(corner)
        return
      case 'circle':
      case 'arc':
        take(item.centre, item.radius)
        return
      case 'text': {
        const size = 'points' in item.height ? item.height.points * perPoint : item.height.inches
        const width = textWidth(item.text, size, item.bold)
        const turn = (item.turnDegrees * Math.PI) / 180
        const share = { start: 0, middle: 0.5, end: 1 }[item.anchor]
        for (const along of [-share * width, (1 - share) * width])
          take({ x: item.at.x + along * Math.cos(turn), y: item.at.y + along * Math.sin(turn) }, 0, size * 0.8)
        return
      }
      case 'group':
        for (const inner of item.items) walk(inner)
        return
      default:
        item satisfies never
    }
  }
  for (const item of items) walk(item)
  return box
}
