import { line, point, polyline, rectangle, text } from '../../draw.ts'
import type { Item, Point } from '../../drawing.ts'
import { textWidth } from '../../text-width.ts'
import { verdictOrder, verdictSign } from '../../verdict-signs.ts'
import { stripWords } from '../../words/strip-words.ts'
import { endSignAlone } from './ends.ts'
import { blockSign, omittedSign, type PostSign, postSign, postSignOf, standingMark } from './posts.ts'
import type { StripInput } from './strip-input.ts'

const rowPoints = 15

interface Entry {
  readonly words: string
  /** Whether it begins a row of its own. */
  readonly startsRow?: boolean
  /** Width of the sign, points. */
  readonly width: number
  readonly sign: (centre: Point, perPoint: number) => Item[]
}

/**
 * The signs that this strip uses, each with its words, in rows of at most `width` points.
 * Its top left corner is the origin; y grows upward as everywhere.
 */
export function stripLegend(input: StripInput, width: number, perPoint: number): { items: Item[]; height: number } {
  const items: Item[] = []
  let x = 0
  let row = 0
  const verdicts = input.verdicts === null ? [] : verdictEntries(input)
  for (const { words, startsRow, width: signWidth, sign } of [...pieceEntries(input), ...verdicts]) {
    const needed = signWidth + 4 + textWidth(words, 7)
    if (x > 0 && (x + needed > width || startsRow)) {
      x = 0
      row += 1
    }
    const y = -(row + 0.5) * rowPoints * perPoint
    items.push(...sign(point((x + signWidth / 2) * perPoint, y), perPoint))
    items.push(text('text', point((x + signWidth + 4) * perPoint, y), words, 7, { level: 'middle' }))
    x += needed + 12
  }
  return { items, height: (row + 1) * rowPoints }
}

function pieceEntries(input: StripInput): Entry[] {
  const { layout } = input
  const words = stripWords(input.print)
  const signs = new Set(layout.posts.map((post) => postSignOf(input, post)))
  const entries: Entry[] = (Object.keys(words.posts) as PostSign[])
    .filter((sign) => signs.has(sign))
    .map((sign) => ({ words: words.posts[sign], width: 8, sign: (centre, p) => postSign(sign, centre, p) }))
  if (layout.posts.some((post) => post.state === 'standing'))
    entries.push({
      words: words.standingPost,
      width: 11,
      sign: (centre, p) => [...postSign('standard', centre, p), ...standingMark(centre, p)],
    })
  if (layout.omitted.length > 0) entries.push({ words: words.noPost, width: 9, sign: omittedSign })
  if (layout.posts.some((post) => post.block))
    entries.push({ words: words.block, width: 5, sign: (centre, p) => [blockSign(centre, p)] })
  const numbered = layout.posts.find((post) => post.ownNumber !== null)
  if (numbered !== undefined && numbered.ownNumber !== null)
    entries.push({
      words: words.numbered(numbered.number, numbered.ownNumber),
      width: 14,
      sign: (centre, p) => [
        text('text', point(centre.x, centre.y + 1.5 * p), String(numbered.number), 7, { anchor: 'middle', bold: true }),
        text('text', point(centre.x, centre.y - 5.5 * p), `(${numbered.ownNumber})`, 6.5, { anchor: 'middle' }),
      ],
    })
  if (layout.splices.length > 0) entries.push({ words: words.splice, width: 26, sign: lapSign })
  for (const kind of new Set([input.first.kind, input.second.kind]))
    entries.push({
      words: words.ends[kind],
      width: kind === 'terminal' ? 14 : kind === 'bridge end' ? 44 : 36,
      sign: (centre, p) => endSignAlone(kind, centre, p),
    })
  if (input.obstructions.length > 0) entries.push({ words: words.noPostHere, width: 16, sign: hatchSign })
  return entries
}

const verdictEntries = ({ print }: StripInput): readonly Entry[] => [
  ...verdictOrder.map((word, i) => ({
    words: print.say({ kind: 'verdict', word }),
    startsRow: i === 0,
    width: 9,
    sign: (centre: Point, p: number) => [...verdictSign(word, centre, 8.5 * p)],
  })),
  { words: stripWords(print).countOfWorst, width: 0, sign: () => [] },
]

function lapSign(centre: Point, p: number): Item[] {
  const at = (x: number, y: number): Point => point(centre.x + x * p, centre.y + y * p)
  return [
    polyline('rail', [at(-13, 1.2), at(4, 1.2)]),
    polyline('rail', [at(-4, -1.2), at(4, -1.2), at(6.5, 1.2), at(13, 1.2)]),
    line('rail', at(0, 3.4), at(0, -2.4)),
  ]
}

const hatchSign = (centre: Point, p: number): Item[] => [
  rectangle(
    'obstructions',
    { minX: centre.x - 8 * p, maxX: centre.x + 8 * p, minY: centre.y - 5 * p, maxY: centre.y + 5 * p },
    'hatch',
  ),
]
