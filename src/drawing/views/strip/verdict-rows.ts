import type { Place } from '../../../core/requirements/requirement.ts'
import type { Verdict, VerdictWord } from '../../../core/verdicts/verdict.ts'
import { group, point, rectangle, text } from '../../draw.ts'
import type { Box, Item } from '../../drawing.ts'
import { textWidth, wrapText } from '../../text-width.ts'
import { verdictOrder, verdictSign } from '../../verdict-signs.ts'
import { stripWords } from '../../words/strip-words.ts'
import { type Frame, isWithin, type Row } from './frame.ts'
import { type Span, spreadRows } from './spread.ts'

const signPoints = 8.5

const pieceRows = ['post', 'space', 'splice', 'panel'] as const satisfies readonly Place['kind'][]

/** All verdicts of one place, told by the worst of them. */
export interface PlaceVerdict {
  readonly id: string
  readonly place: Place
  readonly worst: VerdictWord
  /** How many verdicts are as bad as the worst, and how many apply at all. */
  readonly count: number
  readonly applying: number
}

/** The verdicts place by place, in the order in which the places come. */
export function placeVerdicts(verdicts: readonly Verdict[]): PlaceVerdict[] {
  const byPlace = new Map<string, Verdict[]>()
  for (const verdict of verdicts) {
    const { id } = verdict.place
    const list = byPlace.get(id)
    if (list) list.push(verdict)
    else byPlace.set(id, [verdict])
  }
  return [...byPlace].map(([id, list]) => {
    const worst = verdictOrder.find((word) => list.some((one) => one.verdict === word))!
    return {
      id,
      place: list[0]!.place,
      worst,
      count: list.filter((one) => one.verdict === worst).length,
      applying: list.filter((one) => one.verdict !== 'does not apply').length,
    }
  })
}

/** One row of signs for each kind of place that has verdicts. */
export function verdictRows(frame: Frame, verdicts: readonly PlaceVerdict[]): Row[] {
  const wholes = verdicts.filter((one) => one.place.kind === 'unit' || one.place.kind === 'run')
  const names = stripWords(frame.input.print).rows
  const rows = pieceRows.flatMap((kind) => {
    const all = verdicts.filter((one) => one.place.kind === kind)
    return all.length === 0 ? [] : [signRow(frame, names[kind], all)]
  })
  return [...wholesRow(frame, wholes), ...rows]
}

/** End units and the run: they have no one place, so they give way to each other and say their names. */
function wholesRow(frame: Frame, all: readonly PlaceVerdict[]): Row[] {
  const { perPoint, range } = frame
  const within = (longest: number, broken: number) =>
    shownPlaces(frame, all).map(({ verdict, along }) => {
      const words = placeWords(frame, verdict)
      const lines = textWidth(words, 6.5) <= longest ? [words] : wrapText(words, broken, 6.5, 3)
      const width = Math.max(...lines.map((line) => textWidth(line, 6.5)))
      return { verdict, lines, x: along, width: (signPoints + 8 + width) * perPoint }
    })
  const wide = within(190, 170)
  // Beside each other they may want more than there is, and would stand over the name of the row.
  const isTooWide = wide.reduce((sum, { width }) => sum + width, 0) > range.to - range.from
  const shown = isTooWide ? within(90, 110) : wide
  for (const [i, one] of shown.entries()) if (i > 0) one.x = Math.max(one.x, shown[i - 1]!.x + shown[i - 1]!.width)
  if (shown.length === 0) return []
  const most = Math.max(...shown.map(({ lines }) => lines.length))
  const height = most === 1 ? 11.5 : 2 + 7.5 * most
  let end = range.to
  for (const one of shown.toReversed()) {
    one.x = Math.min(one.x, end - one.width + (signPoints / 2) * perPoint)
    end = one.x
  }
  return [
    {
      name: stripWords(frame.input.print).rows.wholes,
      height,
      draw: (top) =>
        shown.map(({ verdict, lines, x, width }) => {
          const y = -(top + height / 2 - 0.25) * perPoint
          const box = {
            minX: x - 5 * perPoint,
            maxX: x - 5 * perPoint + width,
            minY: y - (height / 2 - 0.75) * perPoint,
            maxY: y + (height / 2 - 0.75) * perPoint,
          }
          return signGroup(frame, verdict, box, [
            ...verdictSign(verdict.worst, point(x, y), signPoints * perPoint),
            ...lines.map((line, i) => {
              const up = ((lines.length - 1) / 2 - i) * 7.5 * perPoint
              return text('text', point(x + (signPoints / 2 + 2) * perPoint, y + up), line, 6.5, { level: 'middle' })
            }),
          ])
        }),
    },
  ]
}

/** The places in the range, from left to right, kept off its ends; one beyond the rail, as the head of a terminal, is shown at its end. */
function shownPlaces(frame: Frame, all: readonly PlaceVerdict[]): { verdict: PlaceVerdict; along: number }[] {
  const { range, rail } = frame
  const clear = (signPoints / 2 + 2) * frame.perPoint
  return all
    .map((verdict) => ({ verdict, along: Math.min(Math.max(verdict.place.alongInches, rail.from), rail.to) }))
    .filter(({ along }) => isWithin(range, along))
    .map(({ verdict, along }) => ({ verdict, along: Math.min(Math.max(along, range.from + clear), range.to - clear) }))
    .sort((a, b) => a.along - b.along)
}

function signRow(frame: Frame, name: string, all: readonly PlaceVerdict[]): Row {
  const { perPoint, range } = frame
  const shown = shownPlaces(frame, all)
  const besides = shown.map(({ verdict, along }) => spanBeside(frame, verdict, along))
  const isBeside = spreadRows(besides).every((row) => row === 0) && besides.every((span) => span.to <= range.to)
  const spans = isBeside ? besides : shown.map(({ verdict, along }) => spanAbove(verdict, along, perPoint))
  const lines = spreadRows(spans)
  const height = isBeside || shown.every(({ verdict }) => countWords(verdict) === '') ? 11.5 : 16.5
  return {
    name,
    height: height * (Math.max(0, ...lines) + 1),
    draw: (top) =>
      shown.map(({ verdict, along }, i) => {
        const y = -(top + height * lines[i]! + 5.5) * perPoint
        return isBeside ? signBeside(frame, verdict, along, y) : signAbove(frame, verdict, along, y)
      }),
  }
}

/** The room that a sign needs with its word and count at its right. */
function spanBeside(frame: Frame, verdict: PlaceVerdict, along: number): Span {
  const { perPoint } = frame
  const right = signPoints / 2 + 4 + textWidth(besideWords(frame, verdict), 6.5)
  return { from: along - (signPoints / 2 + 2) * perPoint, to: along + right * perPoint }
}

/** The room that it needs with its count below. */
function spanAbove(verdict: PlaceVerdict, along: number, perPoint: number): Span {
  const half = Math.max(signPoints, textWidth(countWords(verdict), 6.5)) / 2 + 1
  return { from: along - half * perPoint, to: along + half * perPoint }
}

function signBeside(frame: Frame, verdict: PlaceVerdict, x: number, y: number): Item {
  const { perPoint } = frame
  const { from, to } = spanBeside(frame, verdict, x)
  const words = besideWords(frame, verdict).trim()
  return signGroup(frame, verdict, { minX: from, maxX: to, minY: y - 5 * perPoint, maxY: y + 5 * perPoint }, [
    ...verdictSign(verdict.worst, point(x, y), signPoints * perPoint),
    text('text', point(x + (signPoints / 2 + 2) * perPoint, y), words, 6.5, { level: 'middle' }),
  ])
}

function signAbove(frame: Frame, verdict: PlaceVerdict, x: number, y: number): Item {
  const { perPoint } = frame
  const { from, to } = spanAbove(verdict, x, perPoint)
  const words = countWords(verdict)
  const items = [...verdictSign(verdict.worst, point(x, y), signPoints * perPoint)]
  if (words !== '') items.push(text('text', point(x, y - 10.5 * perPoint), words, 6.5, { anchor: 'middle' }))
  return signGroup(frame, verdict, { minX: from, maxX: to, minY: y - 12 * perPoint, maxY: y + 5 * perPoint }, items)
}

/** The white box makes the whole of it answer to a click. */
const signGroup = (frame: Frame, verdict: PlaceVerdict, box: Box, items: readonly Item[]): Item =>
  group(verdict.id, placeWords(frame, verdict), [rectangle('text', box, 'blank', false), ...items])

const placeWords = ({ input }: Frame, { place, worst, count, applying }: PlaceVerdict): string =>
  input.print.say({ kind: 'verdicts at place', place, worst, count, applying })

const besideWords = ({ input }: Frame, verdict: PlaceVerdict): string =>
  `${input.print.say({ kind: 'verdict', word: verdict.worst })} ${countWords(verdict)}`

/** Nothing where the sign says all. */
const countWords = ({ worst, count, applying }: PlaceVerdict): string =>
  worst === 'does not apply' || applying === 1 ? '' : `${count}/${applying}`
