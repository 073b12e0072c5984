import type { Unit } from '../../../core/layout/layout.ts'
import { exactLength, lengthIn } from '../../../core/units/exact-length.ts'
import { group, line, rectangle, text } from '../../draw.ts'
import type { Item } from '../../drawing.ts'
import { fitText, textWidth } from '../../text-width.ts'
import { runWords } from '../../words/run-words.ts'
import { stripWords } from '../../words/strip-words.ts'
import { barRow } from './bars.ts'
import { type Frame, lengthLabel, type Range, type Row } from './frame.ts'
import { spreadRows } from './spread.ts'
import { unitName } from './strip-input.ts'

/** Where posts cannot stand: hatched behind the rail, so it is drawn before the posts. */
export function obstructionItems(frame: Frame): Item[] {
  const { print } = frame.input
  return obstructionsOf(frame).map(({ name, from, to }) => {
    const [left, right] = [Math.max(from, frame.range.from), Math.min(to, frame.range.to)]
    const low = Math.min(frame.at(left, hatchTo).y, frame.at(right, hatchTo).y)
    const high = Math.max(frame.at(left, -4).y, frame.at(right, -4).y)
    return group('obstruction', print.theirs(name), [
      rectangle('obstructions', { minX: left, maxX: right, minY: low, maxY: high }, 'hatch'),
    ])
  })
}

/** Where the hatch ends, points from the rail: above the numbers of posts, which stand beside it at any scale. */
const hatchTo = -16

export function obstructionRow(frame: Frame): Row[] {
  const shown = obstructionsOf(frame)
  if (shown.length === 0) return []
  const { range, perPoint, input } = frame
  const labels = shown.map(({ name, from, to }) => {
    const words = fitText(input.print.theirs(name), 160, 6.5)
    const half = (textWidth(words, 6.5) / 2 + 3) * perPoint
    const middle = (Math.max(from, range.from) + Math.min(to, range.to)) / 2
    const centre = Math.min(Math.max(middle, range.from + half), range.to - half)
    return { words, centre, from: centre - half, to: centre + half }
  })
  const lines = spreadRows(labels)
  return [
    {
      name: runWords(input.print).rows.obstructions,
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
  const { rows, parts } = runWords(frame.input.print)
  const bars = (['first', 'run', 'second'] as const).flatMap((unit) => {
    const span = boundsOf(frame, unit)
    const short = parts[unit === 'run' ? 'run' : frame.input[unit].kind]
    return span === null ? [] : [{ id: unit, layer: 'parts', span, words: unitName(frame.input, unit), short }]
  })
  return [barRow(frame, rows.parts, bars)]
}

function boundsOf({ input }: Frame, unit: Unit): Range | null {
  const panels = input.layout.panels.filter((panel) => panel.unit === unit)
  const [start, end] = [panels[0], panels.at(-1)]
  return start && end ? { from: start.fromInches, to: end.toInches } : null
}

/**
 * What has to be shielded, and the rail that counts for it. Where an end is not known nothing counts for certain, and of
 * that end itself nothing is said: a rail that is not held at both ends redirects nobody.
 */
export function needRows(frame: Frame): Row[] {
  const { layout, need, print, areEndsKnown } = frame.input
  const words = stripWords(print)
  const rows: Row[] = []
  if (need) {
    const span = { from: need.fromInches - layout.postOneAtInches, to: need.toInches - layout.postOneAtInches }
    const shielded = words.toBeShielded(lengthLabel(frame.input, span.to - span.from))
    if (span.to > frame.range.from && span.from < frame.range.to)
      rows.push(barRow(frame, words.rows.need, [{ id: 'need', layer: 'need', span, words: shielded, short: null }]))
  }
  const { countsFromInches, countsToInches } = layout
  const own = areEndsKnown ? null : boundsOf(frame, 'run')
  const span = { from: countsFromInches ?? own?.from ?? -Infinity, to: countsToInches ?? own?.to ?? Infinity }
  const goesOn = countsFromInches === null || countsToInches === null
  const known = goesOn ? words.countsOn : words.counts(lengthLabel(frame.input, span.to - span.from))
  const said = areEndsKnown ? known : words.countsUnknown
  return [
    ...rows,
    barRow(frame, words.rows.counts, [{ id: 'counts', layer: 'rail that counts', span, words: said, short: null }]),
  ]
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
      name: runWords(frame.input.print).fromPostOne(unit),
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
