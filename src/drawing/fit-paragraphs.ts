import type { Box, Drawing, Item, Point, Text } from './drawing.ts'
import { textWidth, wrapText } from './text-width.ts'

/** Lines of one drawing that belong together, and the words that take their place. */
export interface Paragraph {
  readonly lines: readonly Text[]
  readonly words: string
  /** What the words must not leave. */
  readonly frame: Box
}

/** Points kept free between two texts beside one another. */
const apart = 2
/** Text is made smaller down to this share of its size. */
const smallest = 0.6
/** Share of its width by which a paragraph may grow into free room. */
const widest = 1.25

/**
 * The lines that take the place of each paragraph, by its first line: of the same size where there is room for them,
 * else broken into free rows below or smaller, so that no text comes to touch another.
 */
export function fitParagraphs(
  paragraphs: readonly Paragraph[],
  { scale, items }: Pick<Drawing, 'scale' | 'items'>,
): ReadonlyMap<Text, readonly Text[]> {
  const perPoint = scale / 72
  const taken = paragraphs.map(({ lines }) => lines.map((one) => boxOf(one, perPoint)))
  const covers = blanksOf(items)
  const fitted = new Map<Text, readonly Text[]>()
  for (const [i, paragraph] of paragraphs.entries()) {
    const others = taken.flatMap((boxes, j) => (j === i ? [] : boxes))
    const { at } = paragraph.lines[0]!
    const lines = linesOf(paragraph, [...others, ...covers.filter((box) => !isIn(box, at))], perPoint)
    taken[i] = lines.map((one) => boxOf(one, perPoint))
    fitted.set(paragraph.lines[0]!, lines)
  }
  return fitted
}

/** Blanks that would cover a text which reaches into them, as round the signs of a strip. */
const blanksOf = (items: readonly Item[]): readonly Box[] =>
  items.flatMap((item) => {
    if (item.kind === 'group') return blanksOf(item.items)
    return item.kind === 'area' && item.fill === 'blank' && !item.edged ? [boxRound(item.points)] : []
  })

export const boxRound = (points: readonly Point[]): Box => {
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)]
  return { minX: Math.min(...xs), maxX: Math.max(...xs), minY: Math.min(...ys), maxY: Math.max(...ys) }
}

export const isIn = (box: Box, { x, y }: Point): boolean =>
  x >= box.minX && x <= box.maxX && y >= box.minY && y <= box.maxY

export const sizeOf = ({ height }: Pick<Text, 'height'>, perPoint: number): number =>
  'points' in height ? height.points : height.inches / perPoint

function linesOf(paragraph: Paragraph, others: readonly Box[], perPoint: number): readonly Text[] {
  const { lines, words } = paragraph
  const [first] = lines as readonly [Text]
  if (lines.map(({ text }) => text).join(' ') === words) return lines
  if (first.turnDegrees !== 0) return [turned(first, words, perPoint)]
  const size = sizeOf(first, perPoint)
  const widths = lines.map((one) => textWidth(one.text, size, one.bold))
  const box = around(lines.map((one) => boxOf(one, perPoint)))
  const step = lines.length > 1 ? (first.at.y - lines[1]!.at.y) / perPoint : size * 1.2
  const room = roomBeside(first, box, others, paragraph.frame) / perPoint
  const width = lines.length === 1 ? room : Math.min(room, Math.max(...widths) * widest)
  // A number is not parted from its unit.
  const free = /\p{L}{3}/u.test(words)
    ? freeRows(spread(first, box, width * perPoint), step * perPoint, others, paragraph.frame)
    : 0
  for (const [share, more] of ways(free)) {
    const rows = Math.floor(lines.length / share + 1e-6) + more
    const broken = wrapText(words, width / (first.bold ? 1.06 : 1), size * share, rows)
    if (broken.every((one) => !one.endsWith('…')) || (share === smallest && more === free))
      return broken.map((text, row) => ({
        ...first,
        at: { x: first.at.x, y: first.at.y - row * step * share * perPoint },
        text,
        height: { points: size * share },
      }))
  }
  throw new RangeError('the last way is always taken')
}

/** Sizes and rows to try, best first: nearly the full size, then free rows below, then smaller. */
const ways = (free: number): readonly (readonly [share: number, more: number])[] => [
  [1, 0],
  [0.9, 0],
  ...(free > 0 ? ([[1, free]] as const) : []),
  ...[0.85, 0.8, 0.75, 0.7, 0.65, smallest].flatMap((share) => [[share, 0] as const, [share, free] as const]),
]

/** A turned text has no room worked out for it: it is made smaller as it grows. */
function turned(text: Text, words: string, perPoint: number): Text {
  const [size, bold] = [sizeOf(text, perPoint), text.bold]
  const share = Math.min(1, (widest * textWidth(text.text, size, bold)) / textWidth(words, size, bold))
  return { ...text, text: words, height: { points: size * Math.max(smallest, share) } }
}

/** Width that the text may take about its anchor, inches. */
function roomBeside(text: Text, box: Box, others: readonly Box[], frame: Box): number {
  const gap = (apart * (box.maxY - box.minY)) / 8
  const beside = others.filter((other) => other.minY < box.maxY && other.maxY > box.minY)
  const right = Math.min(frame.maxX, ...beside.map(({ minX }) => minX - gap).filter((x) => x >= box.maxX - gap))
  const left = Math.max(frame.minX, ...beside.map(({ maxX }) => maxX + gap).filter((x) => x <= box.minX + gap))
  const { x } = text.at
  const room = { start: right - x, end: x - left, middle: 2 * Math.min(right - x, x - left) }[text.anchor]
  return Math.max(room, box.maxX - box.minX)
}

/** The box as wide as its text may become. */
function spread({ anchor, at }: Text, box: Box, width: number): Box {
  const minX = at.x - { start: 0, middle: 0.5, end: 1 }[anchor] * width
  return { ...box, minX, maxX: minX + width }
}

/** Rows below the box in which no text stands, at most two. */
function freeRows(box: Box, step: number, others: readonly Box[], frame: Box): number {
  const isFree = (row: number): boolean => {
    const [minY, maxY] = [box.minY - row * step, box.maxY - row * step]
    return (
      minY >= frame.minY &&
      others.every((one) => one.maxY <= minY || one.minY >= maxY || one.maxX <= box.minX || one.minX >= box.maxX)
    )
  }
  return isFree(1) ? (isFree(2) ? 2 : 1) : 0
}

/** From the base line to the height of capitals, as if it were not turned. */
function boxOf(text: Text, perPoint: number): Box {
  const size = sizeOf(text, perPoint)
  const width = textWidth(text.text, size, text.bold) * perPoint
  const height = size * 0.72 * perPoint
  const minX = text.at.x - { start: 0, middle: 0.5, end: 1 }[text.anchor] * width
  const minY = text.at.y - { base: 0, middle: 0.5, top: 1 }[text.level] * height
  return { minX, maxX: minX + width, minY, maxY: minY + height }
}

const around = (boxes: readonly Box[]): Box => ({
  minX: Math.min(...boxes.map(({ minX }) => minX)),
  maxX: Math.max(...boxes.map(({ maxX }) => maxX)),
  minY: Math.min(...boxes.map(({ minY }) => minY)),
  maxY: Math.max(...boxes.map(({ maxY }) => maxY)),
})
