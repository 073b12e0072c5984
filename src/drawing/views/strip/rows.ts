import type { Unit } from '../../../core/layout/layout.ts'
import { exactLength, lengthIn } from '../../../core/units/exact-length.ts'
import { group, line, rectangle, text } from '../../draw.ts'
import type { Box, Item } from '../../drawing.ts'
import { fitText, textWidth } from '../../text-width.ts'
import { type Frame, lengthLabel, type Range } from './frame.ts'
import { spreadRows } from './spread.ts'
import { unitName } from './strip-input.ts'

/** One line of things under the rail: its name for the margin, its height, and what it draws below `top` (points). */
export interface Row {
  readonly name: string
  readonly height: number
  readonly draw: (top: number) => Item[]
}

/** Where posts cannot stand: hatched behind the rail, so it is drawn before the posts. */
export function obstructionItems(frame: Frame): Item[] {
  return obstructionsOf(frame).map(({ name, from, to }) => {
    const [left, right] = [Math.max(from, frame.range.from), Math.min(to, frame.range.to)]
    const low = Math.min(frame.at(left, -20).y, frame.at(right, -20).y)
    const high = Math.max(frame.at(left, -4).y, frame.at(right, -4).y)
    return group('obstruction', name, [
      rectangle('obstructions', { minX: left, maxX: right, minY: low, maxY: high }, 'hatch'),
    ])
  })
}

export function obstructionRow(frame: Frame): Row[] {
  const shown = obstructionsOf(frame)
  if (shown.length === 0) return []
  const { range, perPoint } = frame
  const labels = shown.map(({ name, from, to }) => {
    const words = fitText(name, 160, 6.5)
    const half = (textWidth(words, 6.5) / 2 + 3) * perPoint
    const middle = (Math.max(from, range.from) + Math.min(to, range.to)) / 2
    const centre = Math.min(Math.max(middle, range.from + half), range.to - half)
    return { words, centre, from: centre - half, to: centre + half }
  })
  const lines = spreadRows(labels)
  return [
    {
      name: 'no post here',
      height: 9 * (Math.max(...lines) + 1),
      draw: (top) =>
        labels.map(({ words, centre }, i) =>
          text('text', frame.level(centre, -top - 9 * lines[i]! - 7), words, 6.5, { anchor: 'middle' }),
        ),
    },
  ]
}

function obstructionsOf(frame: Frame): { name: string; from: number; to: number }[] {
  const { layout, obstructions } = frame.input
  return obstructions
    .map(({ name, fromInches, toInches }) => ({
      name,
      from: fromInches - layout.postOneAtInches,
      to: toInches - layout.postOneAtInches,
    }))
    .filter(({ from, to }) => to > frame.range.from && from < frame.range.to)
}

/** Which stretch is first end, run and second end: the bound between them is the bound of the quantities. */
export function partsRow(frame: Frame): Row[] {
  const { layout } = frame.input
  const bounds = (unit: Unit): Range | null => {
    const panels = layout.panels.filter((panel) => panel.unit === unit)
    const [start, end] = [panels[0], panels.at(-1)]
    return start && end ? { from: start.fromInches, to: end.toInches } : null
  }
  const parts = (['first', 'run', 'second'] as const).map((unit) => ({
    id: unit,
    name: unitName(frame.input, unit),
    bounds: bounds(unit),
  }))
  return [
    {
      name: 'parts',
      height: 10,
      draw: (top) =>
        parts.flatMap((part) => (part.bounds ? bar(frame, part.bounds, top, part.name, part.id, 'parts') : [])),
    },
  ]
}

/** What has to be shielded, and the rail that counts for it. */
export function needRows(frame: Frame): Row[] {
  const { layout, need } = frame.input
  const rows: Row[] = []
  if (need) {
    const from = need.fromInches - layout.postOneAtInches
    const to = need.toInches - layout.postOneAtInches
    const words = `to be shielded, ${lengthLabel(frame.input, to - from)}`
    if (to > frame.range.from && from < frame.range.to)
      rows.push({ name: 'need', height: 10, draw: (top) => bar(frame, { from, to }, top, words, 'need', 'need') })
  }
  const { countsFromInches, countsToInches } = layout
  const counts = { from: countsFromInches ?? -Infinity, to: countsToInches ?? Infinity }
  const goesOn = countsFromInches === null || countsToInches === null
  const words = goesOn
    ? 'counts for length of need; goes on in the standing run'
    : `counts for length of need, ${lengthLabel(frame.input, counts.to - counts.from)}`
  rows.push({
    name: 'rail that counts',
    height: 10,
    draw: (top) => bar(frame, counts, top, words, 'counts', 'rail that counts'),
  })
  return rows
}

/** A bar over `span` with words in it; filled ends show where it truly begins and ends. */
function bar(frame: Frame, span: Range, top: number, words: string, id: string, layer: string): Item[] {
  const { range, perPoint } = frame
  const from = Math.max(span.from, range.from)
  const to = Math.min(span.to, range.to)
  if (from >= to) return []
  const box: Box = { minX: from, maxX: to, minY: -(top + 9.5) * perPoint, maxY: -(top + 0.5) * perPoint }
  const items: Item[] = [rectangle(layer, box, layer === 'need' ? 'tint' : 'blank')]
  for (const end of [span.from, span.to]) {
    if (end < range.from || end > range.to) continue
    const mark = Math.min(1.2 * perPoint, (to - from) / 2)
    const left = end === span.from ? end : end - mark
    items.push(rectangle(layer, { ...box, minX: left, maxX: left + mark }, 'solid'))
  }
  const fitted = fitText(words, (to - from) / perPoint - 6, 6.5)
  if (fitted.length > 3)
    items.push(text('text', frame.level((from + to) / 2, -top - 5), fitted, 6.5, { anchor: 'middle', level: 'middle' }))
  return [group(id, words, items)]
}

/** Distances along the rail from post 1, at a plain step. */
export function distanceRow(frame: Frame): Row[] {
  const isMetric = frame.input.units === 'metric'
  const unit = isMetric ? 'm' : 'ft'
  const inchesPerUnit = lengthIn(exactLength(1, unit), 'in')
  const step = (isMetric ? [1, 2, 5, 10, 20, 50] : [5, 10, 25, 50, 100]).find(
    (units) => (units * inchesPerUnit) / frame.perPoint >= 55,
  )
  const every = (step ?? 100) * inchesPerUnit
  return [
    {
      name: `${unit} from post 1`,
      height: 13,
      draw: (top) => {
        const start = Math.max(frame.range.from, frame.rail.from)
        const end = Math.min(frame.range.to, frame.rail.to)
        const clear = 8 * frame.perPoint
        const items: Item[] = [line('dimensions', frame.level(start, -top - 3), frame.level(end, -top - 3))]
        for (let index = Math.ceil(start / every); index * every <= end; index++) {
          const along = index * every
          // Off the match lines, where the number would be cut.
          if (along < frame.range.from + clear || along > frame.range.to - clear) continue
          items.push(
            line('dimensions', frame.level(along, -top - 1), frame.level(along, -top - 5)),
            text('text', frame.level(along, -top - 12), String(index * (step ?? 100)), 6.5, { anchor: 'middle' }),
          )
        }
        return items
      },
    },
  ]
}
