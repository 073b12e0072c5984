import { point, text } from '../../draw.ts'
import type { Item } from '../../drawing.ts'
import { fitText } from '../../text-width.ts'
import type { StripInput } from './strip-input.ts'

/** Height of the title block, points. */
export const titleHeight = 44

/**
 * Names, stations and scale at the head of a strip. Its top left corner is the origin.
 * Each name is a text of its own, so that one written from right to left does not turn its neighbours round.
 */
export function titleBlock(
  input: StripInput,
  width: number,
  perPoint: number,
  scaleWords: string,
  pageWords: string | null,
): Item[] {
  const { titles, system, first, second } = input
  const put = (x: number, y: number, words: string, size: number, room: number, bold = false): Item =>
    text('text', point(x * perPoint, -y * perPoint), fitText(words, room, size, bold), size, { bold })
  const items: Item[] = [
    put(0, 11, titles.run, 12, width * 0.55, true),
    put(width * 0.57, 11, titles.route, 8, width * 0.21),
    put(width * 0.79, 11, titles.stations, 8, width * (pageWords === null ? 0.21 : 0.12)),
    put(0, 23, `${first.name}  |  ${system.name}  |  ${second.name}`, 7, width),
    put(0, 32, scaleWords, 7, width),
    put(0, 41, measureWords(input), 7, width),
  ]
  if (pageWords !== null)
    items.push(text('text', point(width * perPoint, -11 * perPoint), pageWords, 7, { anchor: 'end' }))
  return items
}

/** What may be measured on the strip and what not. */
function measureWords(input: StripInput): string {
  const times = input.lateralExaggeration
  const hasFlare = [input.first, input.second].some((end) => end.sheet !== null && end.sheet.flare !== 'none')
  const offsets = !hasFlare
    ? ''
    : times === 1
      ? ' offsets of the flare are to the same scale;'
      : ` OFFSETS ARE DRAWN ${times} TIMES THEIR SIZE;`
  return `Distances along the rail are to scale;${offsets} rail, blocks, posts and ends are signs, not to scale. Traffic side up.`
}
