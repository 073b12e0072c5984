import { line, text } from '../../draw.ts'
import type { Item } from '../../drawing.ts'
import { fitRows } from '../../fit-rows.ts'
import { runWords } from '../../words/run-words.ts'
import { endItems } from './ends.ts'
import type { Range } from './frame.ts'
import { type Frame, stripFrame } from './frame.ts'
import { postItems } from './posts.ts'
import { railItems } from './rail.ts'
import { distanceRow, needRows, obstructionItems, obstructionRow, partsRow } from './rows.ts'
import type { StripInput } from './strip-input.ts'
import { trafficItems, trafficTop } from './traffic.ts'
import { type PlaceVerdict, verdictRows } from './verdict-rows.ts'

/** Width of the margin that names the rows, points. */
export const gutterPoints = 62

/** One stretch of the strip with everything that belongs to it; x is inches along the rail, y = 0 the line of the run. */
export interface Band {
  readonly items: readonly Item[]
  readonly range: Range
  /** How far it reaches above and below the line of the run, points. */
  readonly above: number
  readonly below: number
}

/** Numbers of the match lines at which a band begins and ends; null at the ends of the run. */
export interface MatchLines {
  readonly before: number | null
  readonly after: number | null
}

export function stripBand(
  input: StripInput,
  verdicts: readonly PlaceVerdict[],
  scale: number,
  range: Range,
  matches: MatchLines,
): Band {
  const frame = stripFrame(input, scale, range)
  const posts = postItems(frame)
  const rows = [
    ...obstructionRow(frame),
    ...partsRow(frame),
    ...needRows(frame),
    ...distanceRow(frame),
    ...verdictRows(frame, verdicts),
  ]
  const items: Item[] = [
    ...trafficItems(frame),
    line('line of the run', frame.level(range.from, 0), frame.level(range.to, 0)),
    ...obstructionItems(frame),
    ...railItems(frame),
    ...endItems(frame),
    ...posts.items,
  ]
  let below = posts.depth + 3
  for (const row of rows) {
    items.push(rowName(frame, row.name, below), ...row.draw(below))
    below += row.height + 1
  }
  const above = trafficTop(frame)
  items.push(...matchLines(frame, matches, above, below))
  return { items, range, above, below }
}

/** The name of a row, in the margin. */
export function rowName(frame: Frame, name: string, top: number): Item {
  const { size, rows } = fitRows(name, 6.5, gutterPoints - 4, 1)
  return text('text', frame.level(frame.range.from - 4 * frame.perPoint, -top - 8), rows[0]!, size, { anchor: 'end' })
}

/** The lines at which the run goes on in another row, with their numbers. */
export function matchLines(frame: Frame, matches: MatchLines, above: number, below: number): Item[] {
  const { matchLine } = runWords(frame.input.print)
  const one = (along: number, number: number, anchor: 'start' | 'end'): Item[] => [
    line('match lines', frame.level(along, above - 8), frame.level(along, -below)),
    text('text', frame.level(along, above - 6), matchLine(number), 6.5, { anchor, bold: true }),
  ]
  return [
    ...(matches.before === null ? [] : one(frame.range.from, matches.before, 'start')),
    ...(matches.after === null ? [] : one(frame.range.to, matches.after, 'end')),
  ]
}
