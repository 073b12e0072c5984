import { point, text } from '../../draw.ts'
import type { Item } from '../../drawing.ts'
import { fitRows } from '../../fit-rows.ts'
import { type StripInput, unitNames } from './strip-input.ts'

/** Height of the title block, points. */
export const titleHeight = 44

interface TitleWords {
  readonly scale: string
  /** What may be measured on the drawing and what not. */
  readonly measure: string
  readonly page: string | null
}

/**
 * Names, stations and scale at the head of a drawing of a run. Its top left corner is the origin.
 * Each name is a text of its own, so that one written from right to left does not turn its neighbours round.
 */
export function titleBlock(input: StripInput, width: number, perPoint: number, words: TitleWords): Item[] {
  const { titles } = input
  const put = (x: number, y: number, said: string, full: number, room: number, bold = false): Item => {
    const { size, rows } = fitRows(said, full, room, 1, bold)
    return text('text', point(x * perPoint, -y * perPoint), rows[0]!, size, { bold })
  }
  const items: Item[] = [
    put(0, 11, titles.run, 12, width * 0.55, true),
    put(width * 0.57, 11, titles.route, 8, width * 0.21),
    put(width * 0.79, 11, titles.stations, 8, width * (words.page === null ? 0.21 : 0.12)),
    put(0, 23, unitNames(input).join('  |  '), 7, width),
    put(0, 32, words.scale, 7, width),
    put(0, 41, words.measure, 7, width),
  ]
  if (words.page !== null)
    items.push(text('text', point(width * perPoint, -11 * perPoint), words.page, 7, { anchor: 'end' }))
  return items
}
