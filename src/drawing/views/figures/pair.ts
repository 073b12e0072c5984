import { line, moved, point, rectangle, text } from '../../draw.ts'
import type { Drawing, Item } from '../../drawing.ts'
import { wrapText } from '../../text-width.ts'
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
  const perPoint = twins.width / paneWidth
  const pane: Pane = { width: twins.width, height: paneHeight * perPoint, perPoint }
  const captionHeight = captionLines * lineHeight + 4
  const width = 2 * paneWidth + gap
  const height = headHeight + paneHeight + captionHeight
  const put = (items: readonly Item[], x: number, y: number): Item[] =>
    items.map((item) => moved(item, x * perPoint, y * perPoint))
  const half = (word: 'right' | 'wrong', drawn: readonly Item[], caption: string): Item[] => [
    ...(twins.isTold ? headItems(word, pane) : []),
    ...put(drawn, 0, captionHeight),
    rectangle(
      'frame',
      { minX: 0, minY: captionHeight * perPoint, maxX: pane.width, maxY: (captionHeight + paneHeight) * perPoint },
      'none',
    ),
    ...wrapText(caption, paneWidth - 2, captionSize, captionLines).map((words, i) =>
      text('text', point(perPoint, (captionHeight - 3 - (i + 0.72) * lineHeight) * perPoint), words, captionSize),
    ),
  ]
  const right = half('right', twins.right(pane), facts.right)
  const wrong = half('wrong', twins.wrong(pane), facts.wrong)
  return {
    title: facts.must,
    description: twins.isTold
      ? `Two schematic pictures, not to scale. Right: ${facts.right}. Wrong: ${facts.wrong}.`
      : `Two schematic pictures, not to scale, of the two ways it can be: ${facts.right}; ${facts.wrong}.`,
    scale: perPoint * 72,
    paper: null,
    extent: { minX: -2 * perPoint, minY: 0, maxX: (width + 2) * perPoint, maxY: height * perPoint },
    layers: figureLayers,
    items: [...right, ...put(wrong, paneWidth + gap, 0)],
  }
}

function headItems(word: 'right' | 'wrong', { perPoint }: Pane): Item[] {
  const y = (captionLines * lineHeight + 4 + paneHeight + headHeight / 2 + 0.5) * perPoint
  return [
    ...verdictSign(word === 'right' ? 'meets' : 'fails', point(6.5 * perPoint, y), 11 * perPoint),
    text('text', point(15 * perPoint, y), word, 9, { level: 'middle', bold: true }),
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
