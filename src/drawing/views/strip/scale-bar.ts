import { exactLength, lengthIn } from '../../../core/units/exact-length.ts'
import type { Print } from '../../../words/print.ts'
import { point, rectangle, text } from '../../draw.ts'
import type { Item } from '../../drawing.ts'
import { fitRows } from '../../fit-rows.ts'
import { runWords } from '../../words/run-words.ts'

/** Width that the bar takes with its words, points. */
export const scaleBarWidth = 172

/**
 * A bar of 2 in (or 50 mm) on paper with its length in the world, so that both the scale and the print can be checked.
 * Its left end is the origin; it reaches 6 points up and 18 points down.
 */
export function scaleBar(scale: number, units: 'feet and inches' | 'metric', isOnPaper: boolean, print: Print): Item[] {
  const perPoint = scale / 72
  const isMetric = units === 'metric'
  const length = (isMetric ? 50 / 25.4 : 2) * scale
  const perUnit = lengthIn(exactLength(1, isMetric ? 'm' : 'ft'), 'in')
  const items: Item[] = []
  for (let part = 0; part < 4; part++)
    items.push(
      rectangle(
        'dimensions',
        { minX: (part * length) / 4, maxX: ((part + 1) * length) / 4, minY: 0, maxY: 4 * perPoint },
        part % 2 === 0 ? 'solid' : 'blank',
      ),
    )
  for (const part of [0, 2, 4]) {
    const value = Math.round(((part * length) / 4 / perUnit) * 1000) / 1000
    const words = part === 4 ? `${value} ${isMetric ? 'm' : 'ft'}` : String(value)
    items.push(text('text', point((part * length) / 4, -8 * perPoint), words, 6.5, { anchor: 'middle' }))
  }
  if (isOnPaper) {
    const check = fitRows(runWords(print).barCheck(isMetric ? '50 mm' : '2 in'), 6.5, scaleBarWidth, 1)
    items.push(text('text', point(0, -16 * perPoint), check.rows[0]!, check.size))
  }
  return items
}
