import { line, point, text } from '../../draw.ts'
import type { Item } from '../../drawing.ts'
import { fitRows } from '../../fit-rows.ts'
import { type StripInput, unitNames } from './strip-input.ts'

/** Height of names and scale, points. */
export const titleHeight = 44
const cellHeight = 22
const revisionHeight = 12

/** Height of the head of a page, points: names, scale and, where the run has one, its title block. */
export const headHeight = ({ titles: { block } }: Pick<StripInput, 'titles'>): number =>
  titleHeight +
  (block === null || block.cells.length === 0 ? 0 : cellHeight + 4) +
  (block?.revision == null ? 0 : revisionHeight)

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

/** The title block in a row of cells, and the latest revision below. The top left corner of the page's head is the origin. */
export function blockRow(input: Pick<StripInput, 'titles'>, width: number, perPoint: number): Item[] {
  const { block } = input.titles
  if (block === null) return []
  const { cells, revision } = block
  const top = titleHeight + 2
  const at = (x: number, y: number) => point(x * perPoint, -y * perPoint)
  const each = width / Math.max(1, cells.length)
  const put = (x: number, y: number, said: string, full: number, room: number): Item => {
    const { size, rows } = fitRows(said, full, room, 1, false)
    return text('text', at(x, y), rows[0]!, size)
  }
  const frame = cells.length === 0 ? [] : [top, top + cellHeight].map((y) => line('dimensions', at(0, y), at(width, y)))
  const sides = cells.length === 0 ? [] : Array.from({ length: cells.length + 1 }, (_, i) => i * each)
  return [
    ...frame,
    ...sides.map((x) => line('dimensions', at(x, top), at(x, top + cellHeight))),
    ...cells.flatMap(({ name, value }, i) => [
      put(i * each + 4, top + 8, name, 5.5, each - 8),
      put(i * each + 4, top + 18, value, 8, each - 8),
    ]),
    ...(revision === null ? [] : [put(0, headHeight(input) - 4, revision, 7, width)]),
  ]
}
