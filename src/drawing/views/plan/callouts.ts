import { circle, group, line, point, text } from '../../draw.ts'
import type { Box, Item, Point } from '../../drawing.ts'
import { textWidth, wrapText } from '../../text-width.ts'

/** Words for one thing of a picture, which stand beside it or, by a number, in the key. */
export interface Callout {
  /** Place of the thing that it names; several may name one. */
  readonly id: string
  readonly at: Point
  readonly words: string
}

/** Callouts that were placed, and how far they reach from the edge of the box, points. */
export interface PlacedCallouts {
  readonly items: readonly Item[]
  readonly depth: number
}

const size = 6.5
/** Height of a line of words, and of a row of numbers. */
const linePoints = 8.5
const markPoints = 11
const markRadius = 5
const widest = 128

/**
 * The callouts in rows on the side of `box` to which `outward` points (1 above, -1 below), each at the end of an upright
 * leader from its thing: words at the right of it, numbers (in the order from left to right) on it. They are placed so
 * that no leader runs through words or numbers, unless two leaders stand closer than half a number.
 */
export function placeCallouts(
  callouts: readonly Callout[],
  box: Box,
  outward: 1 | -1,
  perPoint: number,
  isNarrow: boolean,
): PlacedCallouts {
  const rowPoints = isNarrow ? markPoints : linePoints
  const bodies = callouts.map(({ words }, i) => (isNarrow ? markBody(i + 1) : wordsBody(words)))
  const starts = startRows(callouts.map(({ at }, i) => ({ ...bodies[i]!, at: at.x / perPoint })))
  const edge = outward === 1 ? box.maxY : box.minY
  const heightOf = (row: number): number => edge + outward * (rowPoints * (row + 0.5) + 5) * perPoint
  const leaders = callouts.map(({ at }, i) =>
    line('leaders', at, point(at.x, heightOf(starts[i]! + bodies[i]!.rows - 1))),
  )
  const items = callouts.map(({ id, at, words }, i) => {
    const { rows, draw } = bodies[i]!
    // the first line of words is the upper one on both sides
    const first = outward === 1 ? starts[i]! + rows - 1 : starts[i]!
    return group(id, words, draw(point(at.x, heightOf(first)), perPoint))
  })
  const depth = Math.max(0, ...starts.map((start, i) => start + bodies[i]!.rows)) * rowPoints + 6
  return { items: [...leaders, ...items], depth }
}

/** Callouts in the order in which their leaders stand, from left to right. */
export const inOrder = (callouts: readonly Callout[]): readonly Callout[] =>
  callouts.toSorted((a, b) => a.at.x - b.at.x)

interface Body {
  /** How far it reaches to the left and right of its leader, points. */
  readonly left: number
  readonly right: number
  readonly rows: number
  readonly draw: (at: Point, perPoint: number) => Item[]
}

function wordsBody(words: string): Body {
  const lines = wrapText(words, widest, size, 4)
  return {
    left: 0,
    right: Math.max(...lines.map((one) => textWidth(one, size))) + 6,
    rows: lines.length,
    draw: (at, p) =>
      lines.map((one, i) =>
        text('text', point(at.x + 2.5 * p, at.y - i * linePoints * p), one, size, { level: 'middle' }),
      ),
  }
}

const markBody = (number: number): Body => ({
  left: markRadius + 0.5,
  right: markRadius + 0.5,
  rows: 1,
  draw: (at, p) => mark(at, number, p),
})

const mark = (at: Point, number: number, perPoint: number): Item[] => [
  circle('text', at, markRadius * perPoint, 'blank'),
  text('text', at, String(number), size, { anchor: 'middle', level: 'middle', bold: true }),
]

/**
 * The row, from 0, in which each body begins, from the right to the left: past every body whose leader ends inside its
 * width, and beside none that it would overlap.
 */
function startRows(bodies: readonly (Body & { at: number })[]): number[] {
  const starts = bodies.map(() => 0)
  const placed: number[] = []
  for (const index of bodies.map((_, i) => i).sort((a, b) => bodies[b]!.at - bodies[a]!.at)) {
    const { at, right, rows } = bodies[index]!
    const inside = placed.filter((other) => bodies[other]!.at < at + right)
    const beside = placed.filter((other) => bodies[other]!.at - bodies[other]!.left < at + right)
    let start = Math.max(0, ...inside.map((other) => starts[other]! + bodies[other]!.rows))
    const isTaken = (other: number): boolean =>
      starts[other]! < start + rows && start < starts[other]! + bodies[other]!.rows
    while (beside.some(isTaken)) start++
    starts[index] = start
    placed.push(index)
  }
  return starts
}

/** The key of numbered callouts in lines of at most `width` points; its top left corner is `at`. */
export function calloutKey(callouts: readonly Callout[], at: Point, width: number, perPoint: number): PlacedCallouts {
  let depth = 0
  const items = callouts.map(({ id, words }, i) => {
    const lines = wrapText(words, width - 16, size, 6)
    const top = at.y - (depth + 6) * perPoint
    depth += lines.length * linePoints + 3.5
    return group(id, words, [
      ...mark(point(at.x + markRadius * perPoint, top), i + 1, perPoint),
      ...lines.map((one, row) =>
        text('text', point(at.x + 14 * perPoint, top - row * linePoints * perPoint), one, size, { level: 'middle' }),
      ),
    ])
  })
  return { items, depth }
}

/** Names of lines in a column at the right, each at the height of its line's end or as near as the others let it. */
export function nameLines(names: readonly Callout[], x: number, perPoint: number): Item[] {
  const sorted = names.toSorted((a, b) => b.at.y - a.at.y)
  const heights = spreadHeights(
    sorted.map(({ at }) => at.y),
    linePoints * perPoint,
  )
  return sorted.map(({ id, at, words }, i) => {
    const lineEnd = point(x + 8 * perPoint, heights[i]!)
    return group(id, words, [
      line('leaders', point(at.x + perPoint, at.y), lineEnd),
      text('text', point(lineEnd.x + 1.5 * perPoint, lineEnd.y), words, size, { level: 'middle' }),
    ])
  })
}

/** `wanted` heights, falling, moved apart by at least `gap`: neighbours that are too close share their place evenly. */
function spreadHeights(wanted: readonly number[], gap: number): number[] {
  const blocks: { middle: number; count: number }[] = []
  for (const height of wanted) {
    let block = { middle: height, count: 1 }
    for (let above = blocks.at(-1); above !== undefined; above = blocks.at(-1)) {
      if (above.middle - block.middle >= ((above.count + block.count) / 2) * gap) break
      const count = above.count + block.count
      block = { middle: (above.middle * above.count + block.middle * block.count) / count, count }
      blocks.pop()
    }
    blocks.push(block)
  }
  return blocks.flatMap(({ middle, count }) =>
    Array.from({ length: count }, (_, i) => middle + ((count - 1) / 2 - i) * gap),
  )
}
