import { line, moved, point, rectangle, text } from '../../draw.ts'
import type { Drawing, Item, Text } from '../../drawing.ts'
import { fitRows } from '../../fit-rows.ts'
import { textWidth } from '../../text-width.ts'
import { verdictSign } from '../../verdict-signs.ts'
import type { FigureFacts } from './figure-facts.ts'
import { figureLayers } from './figure-layers.ts'

/** Size of the picture in each half, points. */
const paneWidth = 98
const paneHeight = 84
const gap = 10
const headHeight = 15
const captionLines = 3
const captionSize = 7
const lineHeight = 8.2

/** Where one half is drawn: inches, with its lower left corner at the origin. */
export interface Pane {
  readonly width: number
  readonly height: number
  /** Inches for one point. */
  readonly perPoint: number
}

/** What the two halves show, `width` inches across each. */
export interface Twins {
  readonly width: number
  readonly right: (pane: Pane) => readonly Item[]
  readonly wrong: (pane: Pane) => readonly Item[]
  /** False when the sheet's words do not tell which is right: then neither half is called so. */
  readonly isTold: boolean
}

/** The right one and its wrong twin side by side, each with its word, its sign and its caption. */
export function pairDrawing(facts: FigureFacts, twins: Twins): Drawing {
  const pane = paneOf(twins)
  const { perPoint } = pane
  const captionHeight = captionLines * lineHeight + 4
  const width = 2 * paneWidth + gap
  const height = headHeight + paneHeight + captionHeight
  const put = (items: readonly Item[], x: number, y: number): Item[] =>
    items.map((item) => moved(item, x * perPoint, y * perPoint))
  const half = (word: 'right' | 'wrong', drawn: readonly Item[], caption: string): Item[] => [
    ...(twins.isTold ? headItems(word, facts.words[word], pane) : []),
    ...put(allWithinPane(drawn, pane), 0, captionHeight),
    rectangle(
      'frame',
      { minX: 0, minY: captionHeight * perPoint, maxX: pane.width, maxY: (captionHeight + paneHeight) * perPoint },
      'none',
    ),
    ...captionItems(caption, captionHeight, perPoint),
  ]
  const right = half('right', twins.right(pane), facts.right)
  const wrong = half('wrong', twins.wrong(pane), facts.wrong)
  return {
    title: facts.must,
    description: twins.isTold
      ? facts.words.description(facts.right, facts.wrong)
      : facts.words.eitherWay(facts.right, facts.wrong),
    scale: perPoint * 72,
    paper: null,
    extent: { minX: -2 * perPoint, minY: 0, maxX: (width + 2) * perPoint, maxY: height * perPoint },
    layers: figureLayers,
    items: [...right, ...put(wrong, paneWidth + gap, 0)],
  }
}

/** One of the two by itself, of which nothing says that it is the right one or the wrong. */
export function halfDrawing(facts: FigureFacts, twins: Twins, half: 'right' | 'wrong'): Drawing {
  const pane = paneOf(twins)
  return {
    title: facts[half],
    description: facts[half],
    scale: pane.perPoint * 72,
    paper: null,
    extent: { minX: 0, minY: 0, maxX: pane.width, maxY: pane.height },
    layers: figureLayers,
    items: allWithinPane(twins[half](pane), pane),
  }
}

function paneOf({ width }: Twins): Pane {
  const perPoint = width / paneWidth
  return { width, height: paneHeight * perPoint, perPoint }
}

const allWithinPane = (drawn: readonly Item[], pane: Pane): Item[] =>
  drawn.map((item) => (item.kind === 'text' ? withinPane(item, pane) : item))

function captionItems(caption: string, top: number, perPoint: number): Item[] {
  const { size, rows } = fitRows(caption, captionSize, paneWidth - 2, captionLines)
  const step = (lineHeight * size) / captionSize
  return rows.map((row, i) => text('text', point(perPoint, (top - 3 - (i + 0.72) * step) * perPoint), row, size))
}

/** The text within its half: moved there where it stands about a middle, and in smaller letters where it is too long. */
function withinPane(one: Text, { perPoint }: Pane): Text {
  if (!('points' in one.height) || one.turnDegrees !== 0) return one
  const x = one.at.x / perPoint
  const room = { start: paneWidth - x, end: x, middle: paneWidth - 2 }[one.anchor]
  const { size, rows } = fitRows(one.text, one.height.points, room, 1, one.bold)
  const words = rows[0]!
  const half = textWidth(words, size, one.bold) / 2 + 1
  const middle = one.anchor === 'middle' ? Math.min(Math.max(x, half), paneWidth - half) : x
  return { ...one, at: point(middle * perPoint, one.at.y), text: words, height: { points: size } }
}

function headItems(word: 'right' | 'wrong', said: string, { perPoint }: Pane): Item[] {
  const y = (captionLines * lineHeight + 4 + paneHeight + headHeight / 2 + 0.5) * perPoint
  return [
    ...verdictSign(word === 'right' ? 'meets' : 'fails', point(6.5 * perPoint, y), 11 * perPoint),
    text('text', point(15 * perPoint, y), said, 9, { level: 'middle', bold: true }),
  ]
}

/** A word with a line from it to what it names. */
export const note = (
  pane: Pane,
  words: string,
  at: [number, number],
  to: [number, number],
  anchor: 'start' | 'middle' | 'end' = 'start',
): Item[] => {
  const [x, y] = at
  const below = to[1] < y
  const from = point(
    anchor === 'middle' ? x : x + (anchor === 'start' ? 2 : -2) * pane.perPoint,
    y + (below ? -2 : 6) * pane.perPoint,
  )
  return [line('dimensions', from, point(to[0], to[1])), text('text', point(x, y), words, 7, { anchor })]
}
