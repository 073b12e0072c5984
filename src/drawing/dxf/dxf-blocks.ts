import { moved } from '../draw.ts'
import type { Dimension, Group, Item, Point, Text } from '../drawing.ts'

export type Shape = Exclude<Item, Text | Dimension | Group>

/** A group taken apart: shapes that can be shared as a block, and what is written for this group alone. */
export interface SplitGroup {
  readonly base: Point
  /** Shifted so that `base` is the origin. */
  readonly shapes: readonly Shape[]
  readonly rest: readonly Item[]
}

export function splitGroup({ items }: Group): SplitGroup {
  const shapes = items.filter(isShape)
  const corners = shapes.flatMap(cornersOf)
  const middle = (values: readonly number[]): number =>
    values.length === 0 ? 0 : (Math.min(...values) + Math.max(...values)) / 2
  const base = { x: middle(corners.map(({ x }) => x)), y: middle(corners.map(({ y }) => y)) }
  return {
    base,
    shapes: shapes.map((shape) => moved(shape, -base.x, -base.y) as Shape),
    rest: items.filter((item) => !isShape(item)),
  }
}

/** Alike for shapes that are the same to a thousandth of an inch, so that all posts of one kind are one block. */
export const shapeKey = (shapes: readonly Shape[]): string =>
  JSON.stringify(shapes, (_, value: unknown) => (typeof value === 'number' ? Math.round(value * 1000) + 0 : value))

/** `post-9`, as `post-9~a1b2` of a later version, is drawn by a block named POST. */
export const blockWord = (id: string): string =>
  id
    .replace(/~.*$/, '')
    .replace(/[^A-Za-z]+/g, '-')
    .replace(/^-|-$/g, '')
    .toUpperCase() || 'PLACE'

const isShape = (item: Item): item is Shape =>
  item.kind !== 'text' && item.kind !== 'dimension' && item.kind !== 'group'

function cornersOf(shape: Shape): readonly Point[] {
  switch (shape.kind) {
    case 'line':
      return [shape.from, shape.to]
    case 'polyline':
    case 'area':
      return shape.points
    case 'circle':
    case 'arc': {
      const { centre, radius } = shape
      return [
        { x: centre.x - radius, y: centre.y - radius },
        { x: centre.x + radius, y: centre.y + radius },
      ]
    }
    default:
      return shape satisfies never
  }
}
