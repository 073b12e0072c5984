import { group, rectangle, text } from '../../draw.ts'
import type { Box, Item } from '../../drawing.ts'
import { textWidth, wrapText } from '../../text-width.ts'
import type { Frame, Range, Row } from './frame.ts'

/** A stretch of rail with words in it. */
export interface Bar {
  readonly id: string
  readonly layer: string
  readonly span: Range
  readonly words: string
  /** What stands there where the words have no room; null for nothing. */
  readonly short: string | null
}

const barHeight = 10
/** From one line of words to the next below it. */
const lineHeight = 7.5

/** Bars beside one another, as high as the words of all of them need. */
export function barRow(frame: Frame, name: string, bars: readonly Bar[]): Row {
  const { range, perPoint } = frame
  const shown = bars
    .map((bar) => ({ bar, from: Math.max(bar.span.from, range.from), to: Math.min(bar.span.to, range.to) }))
    .filter(({ from, to }) => from < to)
    .map((one) => ({ ...one, lines: linesOf(one.bar, (one.to - one.from) / perPoint - 6) }))
  const height = barHeight + lineHeight * Math.max(0, ...shown.map(({ lines }) => lines.length - 1))
  return {
    name,
    height,
    draw: (top) =>
      shown.map(({ bar, from, to, lines }) => {
        const box: Box = {
          minX: from,
          maxX: to,
          minY: -(top + height - 0.5) * perPoint,
          maxY: -(top + 0.5) * perPoint,
        }
        const first = top + height / 2 - ((lines.length - 1) * lineHeight) / 2
        return group(bar.id, bar.words, [
          rectangle(bar.layer, box, bar.layer === 'need' ? 'tint' : 'blank'),
          ...endMarks(frame, bar, box),
          ...lines.map((line, i) =>
            text('text', frame.level((from + to) / 2, -first - i * lineHeight), line, 6.5, {
              anchor: 'middle',
              level: 'middle',
            }),
          ),
        ])
      }),
  }
}

/** The words whole in one line or in two, else the short ones; none is cut. */
function linesOf({ words, short }: Bar, room: number): readonly string[] {
  if (textWidth(words, 6.5) <= room) return [words]
  const two = wrapText(words, room, 6.5, 2)
  if (two.every((line) => !line.endsWith('…'))) return two
  return short !== null && textWidth(short, 6.5) <= room ? [short] : []
}

/** Filled where the bar truly begins and ends, not where it goes on in another row. */
function endMarks({ range, perPoint }: Frame, { layer, span }: Bar, box: Box): Item[] {
  return [span.from, span.to]
    .filter((end) => end >= range.from && end <= range.to)
    .map((end) => {
      const mark = Math.min(1.2 * perPoint, (box.maxX - box.minX) / 2)
      const left = end === span.from ? end : end - mark
      return rectangle(layer, { ...box, minX: left, maxX: left + mark }, 'solid')
    })
}
