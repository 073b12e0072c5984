import type { Need } from '../../../core/need/need.ts'
import type { NoteSaying } from '../../../core/need/need-saying.ts'
import type { Note } from '../../../core/need/note.ts'
import type { UnitSystem } from '../../../core/site/site.ts'
import type { Print } from '../../../words/print.ts'
import { point, rectangle, text } from '../../draw.ts'
import type { Item, Point } from '../../drawing.ts'
import { wrapText } from '../../text-width.ts'
import { siteWords } from '../../words/site-words.ts'
import { type Callout, calloutKey } from './callouts.ts'
import type { SiteView } from './site-view.ts'

const size = 6.5

/** Items below one another from a top left corner, and the points that they take. */
export interface Block {
  readonly items: readonly Item[]
  readonly points: number
}

/** Lines of text from `at` downwards, wrapped to `width` points. */
function textBlock(lines: readonly string[], at: Point, width: number, perPoint: number): Block {
  const wrapped = lines.flatMap((one) => wrapText(one, width, size, 8))
  const items = wrapped.map((one, i) => text('text', point(at.x, at.y - (6 + i * 8.5) * perPoint), one, size))
  return { items, points: wrapped.length * 8.5 }
}

/** What the engineer has to know: what holds for both directions once, the rest with the name of its direction. */
export function needNotes(need: Need | null, units: UnitSystem, print: Print): readonly string[] {
  if (need === null) return []
  const say = (notes: readonly Note[], direction: NoteSaying['direction']): readonly string[] =>
    notes.map((note) => print.say({ kind: 'note on need', note, units, direction }))
  const { approach, departure } = need
  if (departure === null) return say(approach.notes, null)
  const [both, ofApproach] = divided(approach.notes, departure.notes)
  const [, ofDeparture] = divided(departure.notes, approach.notes)
  return [...say(both, null), ...say(ofApproach, 'approach'), ...say(ofDeparture, 'departure')]
}

/** Notes that stand among `others` too, and those that do not. */
function divided(notes: readonly Note[], others: readonly Note[]): readonly [both: Note[], own: Note[]] {
  const known = new Set(others.map(sameNote))
  return [notes.filter((note) => known.has(sameNote(note))), notes.filter((note) => !known.has(sameNote(note)))]
}

/** Alike for notes that say the same: lengths to the micrometre, below which is arithmetic noise. */
const sameNote = (note: Note): string =>
  JSON.stringify(note, (_, value: unknown) => (typeof value === 'number' ? value.toFixed(6) : value))

/** Scale bar, the key of numbered callouts where there is one, and sentences, from `at` downwards. */
export function footBlock(
  view: Pick<SiteView, 'site' | 'print'>,
  across: number,
  callouts: readonly Callout[],
  sentences: readonly string[],
  at: Point,
  width: number,
  perPoint: number,
): Block {
  const below = (points: number): Point => point(at.x, at.y - points * perPoint)
  const key = calloutKey(callouts, below(barPoints), width, perPoint)
  const keyed = barPoints + key.depth
  const words = textBlock(sentences, below(keyed + 2), width, perPoint)
  return {
    items: [...siteBar(view, across, at, width * 0.3, perPoint), ...key.items, ...words.items],
    points: keyed + words.points + 4,
  }
}

/** Name, facts and scale at the head of a picture. */
export function headBlock(title: string, lines: readonly string[], at: Point, width: number, perPoint: number): Block {
  const titles = wrapText(title, width / 1.06, 11, 3)
  const top = titles.map((one, i) =>
    text('text', point(at.x, at.y - (10 + i * 13) * perPoint), one, 11, { bold: true }),
  )
  const below = titles.length * 13 + 2
  const rest = textBlock(lines, point(at.x, at.y - below * perPoint), width, perPoint)
  return { items: [...top, ...rest.items], points: below + rest.points + 4 }
}

/** Points that the scale bar takes downwards. */
const barPoints = 20

/**
 * A bar of a round length along the road, at most `room` points long, in four parts; where laterals are drawn larger
 * than that, an upright one for them stands beside it.
 */
function siteBar(
  { site, print }: Pick<SiteView, 'site' | 'print'>,
  across: number,
  at: Point,
  room: number,
  perPoint: number,
): readonly Item[] {
  const metre = site.units === 'us' ? 0.3048 : 1
  const unit = site.units === 'us' ? 'ft' : 'm'
  const perUnit = metre / 0.0254
  const value = roundLength((room * perPoint) / perUnit)
  const length = value * perUnit
  const items: Item[] = []
  const top = at.y - 2 * perPoint
  for (let part = 0; part < 4; part++)
    items.push(
      rectangle(
        'dimensions',
        {
          minX: at.x + (part * length) / 4,
          maxX: at.x + ((part + 1) * length) / 4,
          minY: top - 4 * perPoint,
          maxY: top,
        },
        part % 2 === 0 ? 'solid' : 'blank',
      ),
    )
  const words = (along: number, one: string, anchor: 'start' | 'middle') =>
    text('text', point(at.x + along, top - 12 * perPoint), one, size, { anchor })
  items.push(words(0, '0', 'start'), words(length, print.short.written(`${value} ${unit}`, value, unit), 'middle'))
  if (across === 1) return items
  const high = roundLength((14 * perPoint) / (perUnit * across))
  const left = at.x + length + 34 * perPoint
  items.push(
    rectangle(
      'dimensions',
      { minX: left, maxX: left + 4 * perPoint, minY: top - high * perUnit * across, maxY: top },
      'solid',
    ),
    text(
      'text',
      point(left + 7 * perPoint, top - (high * perUnit * across) / 2),
      siteWords(print).barAcross(print.short.written(`${high} ${unit}`, high, unit)),
      size,
      {
        level: 'middle',
      },
    ),
  )
  return items
}

/** The largest of 1, 2, 5, 10 … that is not more than `most`. */
function roundLength(most: number): number {
  const power = 10 ** Math.floor(Math.log10(most))
  return [5, 2, 1].map((times) => times * power).find((one) => one <= most * (1 + 1e-9)) ?? power
}
