import { area, group, line, text } from '../../draw.ts'
import type { Item } from '../../drawing.ts'
import { textWidth } from '../../text-width.ts'
import { stripWords } from '../../words/strip-words.ts'
import type { Frame } from './frame.ts'

const edgeLevel = 31
const laneLevel = 39
const opposingLevel = 49

/** Height that traffic takes above the line of the run, points. */
export const trafficTop = (frame: Frame): number => (frame.input.traffic === 'two-way' ? 60 : 50)

/** Edge of the traffic side and arrows in the direction of each lane. */
export function trafficItems(frame: Frame): Item[] {
  const { range, input } = frame
  const items: Item[] = [
    line('edge of traffic side', frame.level(range.from, edgeLevel), frame.level(range.to, edgeLevel)),
  ]
  const words = stripWords(input.print)
  if (input.traffic === null) {
    items.push(text('text', frame.level(range.from, laneLevel - 2.5), words.trafficNotStated, 7))
    return [group('traffic', words.directionNotStated, items)]
  }
  const adjacent = words.adjacent[input.traffic]
  items.push(...lane(frame, laneLevel, 1, adjacent))
  if (input.traffic === 'two-way') items.push(...lane(frame, opposingLevel, -1, words.opposing))
  return [group('traffic', words.leftToRight(adjacent), items)]
}

/** Arrows along one lane, with its name beside the first. */
function lane(frame: Frame, level: number, direction: 1 | -1, words: string): Item[] {
  const { range, perPoint } = frame
  const items: Item[] = []
  const apart = 260 * perPoint
  for (let start = range.from; start + 60 * perPoint < range.to; start += apart) {
    const from = start + (direction === 1 ? 4 : 44) * perPoint
    const tip = from + direction * 40 * perPoint
    const back = tip - direction * 8 * perPoint
    items.push(
      line('traffic', frame.level(from, level), frame.level(back, level)),
      area(
        'traffic',
        [frame.level(back, level + 2.6), frame.level(tip, level), frame.level(back, level - 2.6)],
        'solid',
      ),
    )
    const room = (range.to - start) / perPoint - 50
    if (textWidth(words, 7) < room)
      items.push(text('text', frame.level(start + 50 * perPoint, level), words, 7, { level: 'middle' }))
  }
  return items
}
