import type { DirectionNeed } from '../../../core/need/direction-need.ts'
import { area, circle, group, line, point } from '../../draw.ts'
import type { Item } from '../../drawing.ts'
import { siteWords } from '../../words/site-words.ts'
import type { Callout } from './callouts.ts'
import { type AlongDimension, lateralDimension } from './dimension-items.ts'
import type { PlanCanvas } from './plan-canvas.ts'
import type { PlanInput } from './site-view.ts'
import { saidLength, shortLength } from './site-words.ts'

export type Direction = 'approach' | 'departure'

/** The needs that there are, with the name of their direction. */
export function directions({ input }: Pick<PlanCanvas, 'input'>): readonly (readonly [Direction, DirectionNeed])[] {
  const { need } = input
  if (need === null) return []
  return need.departure === null
    ? [['approach', need.approach]]
    : [
        ['approach', need.approach],
        ['departure', need.departure],
      ]
}

/** For each direction the runout path, and the end of need with its lateral distance. */
export const needItems = (canvas: PlanCanvas): readonly Item[] =>
  directions(canvas).flatMap(([direction, need]) =>
    need.path.length === 0 ? [] : [...runoutPath(canvas, direction, need), needEnd(canvas, direction, need)],
  )

/** Straight from where the vehicle leaves the travelled way to the outer limit of the hazard. */
function runoutPath({ input, frame, perPoint }: PlanCanvas, direction: Direction, need: DirectionNeed): Item[] {
  const [leaves, , reaches] = need.path
  if (leaves === undefined || reaches === undefined) return []
  const a = frame.toDrawing(leaves.station, leaves.lateral)
  const b = frame.toDrawing(reaches.station, reaches.lateral)
  const length = Math.hypot(b.x - a.x, b.y - a.y)
  const [x, y] = [((b.x - a.x) / length) * perPoint, ((b.y - a.y) / length) * perPoint]
  const back = point(b.x - 8 * x, b.y - 8 * y)
  return [
    group(`${direction}-path`, pathWords(input, direction, need), [
      line('runout path', a, back),
      area(
        'runout path',
        [point(back.x - 2.4 * y, back.y + 2.4 * x), b, point(back.x + 2.4 * y, back.y - 2.4 * x)],
        'solid',
      ),
      circle('runout path', a, 2 * perPoint, 'blank'),
    ]),
  ]
}

const pathWords = ({ print }: PlanInput, direction: Direction, { governs }: DirectionNeed): string =>
  siteWords(print).path(governs.rule === 'tangent path', direction)

/** A diamond on the barrier, and Y. */
function needEnd(canvas: PlanCanvas, direction: Direction, need: DirectionNeed): Item {
  const { frame, perPoint } = canvas
  const at = frame.toDrawing(need.station, need.lateralAtEnd)
  const corner = (x: number, y: number) => point(at.x + x * perPoint, at.y + y * perPoint)
  return group(`${direction}-end`, endWords(canvas, need), [
    ...lateralDimension(canvas, need.station, need.lateralAtEnd),
    area('need', [corner(-2.6, 0), corner(0, 2.6), corner(2.6, 0), corner(0, -2.6)], 'solid'),
  ])
}

const endWords = ({ input }: PlanCanvas, need: DirectionNeed): string =>
  siteWords(input.print).end(saidLength(need.lengthOfNeed, input), saidLength(need.lateralAtEnd, input))

export const needCallouts = (canvas: PlanCanvas): readonly Callout[] =>
  directions(canvas).flatMap(([direction, need]) => {
    const { frame, input } = canvas
    const end = {
      id: `${direction}-end`,
      at: frame.toDrawing(need.station, need.lateralAtEnd),
      words: endWords(canvas, need),
    }
    const leaves = need.path[0]
    if (leaves === undefined) return []
    const { pathWithin, pathOfLength } = siteWords(input.print)
    const withLength = need.governs.rule === 'tangent path' ? pathWithin : pathOfLength
    return [
      end,
      {
        id: `${direction}-path`,
        at: frame.toDrawing(leaves.station, leaves.lateral),
        words: withLength(pathWords(input, direction, need), saidLength(need.runoutLength, input)),
      },
    ]
  })

/** In tiers: X and the length of each hazard; the runout length where it is measured along the edge. */
export function needDimensions({ input }: PlanCanvas): readonly (readonly AlongDimension[])[] {
  const { site } = input
  const { lengthOfNeed, runout } = siteWords(input.print)
  const long = (length: number): string => shortLength(length, input)
  const hazards = site.hazards.flatMap(({ from, to, near }, i): AlongDimension[] => {
    const [start, end] = [from, to].map((station) => ({ station, lateral: near }))
    return to - from < 1e-6 ? [] : [{ id: `hazard-${i + 1}`, from: start!, to: end!, words: [long(to - from)] }]
  })
  const lengths: AlongDimension[] = []
  const runouts: AlongDimension[] = []
  for (const [direction, need] of directions({ input })) {
    const [leaves, , reaches] = need.path
    if (leaves === undefined || reaches === undefined) continue
    const end = { station: need.station, lateral: need.lateralAtEnd }
    lengths.push({ id: `${direction}-end`, from: end, to: reaches, words: lengthOfNeed(long(need.lengthOfNeed)) })
    const { rule } = need.governs
    if (rule !== 'tangent path' && (rule !== 'runout path' || site.runoutOnCurves === 'edge'))
      runouts.push({
        id: `${direction}-path`,
        from: leaves,
        to: reaches,
        words: runout(long(need.runoutLength)),
      })
  }
  return [[...lengths, ...hazards], runouts]
}
