import type { FigureKind } from '../../../core/hardware/hardware-sheet.ts'
import { drawnSizes } from '../../../core/scene/drawn-sizes.ts'
import { group, line, point, polyline, rectangle } from '../../draw.ts'
import type { Box, Item, Point } from '../../drawing.ts'
import { type Range, railRange } from '../strip/frame.ts'
import type { StripEnd, StripInput } from '../strip/strip-input.ts'
import { railTopAt } from './rail-elevation.ts'

/** Where the parts of an end lie, inches; `out` grows away from the run, from post 1 of the end. */
export interface EndPlaces {
  readonly postOne: number
  /** Away from the run: -1 at the first end, 1 at the second. */
  readonly outward: 1 | -1
  readonly railTop: number
  /** The anchor cable's lower end before post 1, where it comes out behind it, and its bracket on the rail. */
  readonly cable: { readonly low: Point; readonly foot: Point; readonly high: Point }
}

export function endPlaces(input: StripInput, which: 'first' | 'second'): EndPlaces {
  const { posts } = input.layout
  const postOne = (which === 'first' ? posts[0] : posts.at(-1))?.alongInches ?? 0
  const outward = which === 'first' ? -1 : 1
  const railTop = railTopAt(input, postOne) ?? 31
  return {
    postOne,
    outward,
    railTop,
    cable: {
      low: point(postOne + outward * 4, drawnSizes.cableHeight),
      foot: point(postOne - outward * 4, drawnSizes.cableHeight),
      high: point(postOne - outward * drawnSizes.bracketAt, railTop - drawnSizes.beam / 2),
    },
  }
}

/** Whether the end's sheet has a rule with this figure, and so the part that it shows. */
const hasPart = (end: StripEnd, figure: FigureKind): boolean =>
  end.sheet?.parts.some((part) => part.rules.some((rule) => rule.figure === figure)) ?? false

/** What closes the run at its ends within the range: signs, but for the cable's two ends not to scale. */
export function endElevation(input: StripInput, range: Range): Item[] {
  return (['first', 'second'] as const)
    .filter((which) => {
      const { postOne } = endPlaces(input, which)
      return postOne >= range.from && postOne <= range.to
    })
    .map((which) => group(which, input[which].name, endItems(input, which)))
}

function endItems(input: StripInput, which: 'first' | 'second'): Item[] {
  const end = input[which]
  const places = endPlaces(input, which)
  const { postOne, outward, railTop, cable } = places
  const rail = railRange(input)
  const railEnd = which === 'first' ? rail.from : rail.to
  const box = (from: number, to: number, minY: number, maxY: number): Box => ({
    minX: Math.min(railEnd + outward * from, railEnd + outward * to),
    maxX: Math.max(railEnd + outward * from, railEnd + outward * to),
    minY,
    maxY,
  })
  const items: Item[] = []
  if (hasPart(end, 'cable-play'))
    items.push(
      polyline('anchor cable', [cable.low, cable.foot, cable.high]),
      rectangle(
        'ends',
        { minX: cable.high.x - 6, maxX: cable.high.x + 6, minY: cable.high.y - 2, maxY: cable.high.y + 2 },
        'tint',
      ),
    )
  if (hasPart(end, 'bearing-plate'))
    items.push(
      rectangle(
        'ends',
        {
          minX: cable.low.x - 0.6,
          maxX: cable.low.x + 0.6,
          minY: drawnSizes.cableHeight - 4,
          maxY: drawnSizes.cableHeight + 4,
        },
        'solid',
      ),
    )
  switch (end.kind) {
    case 'terminal':
      items.push(
        rectangle('ends', box(-10, 8, railTop - drawnSizes.beam - 2, railTop + 2), 'tint'),
        rectangle('ends', box(8, 12, railTop - drawnSizes.beam - 5, railTop + 5), 'solid'),
      )
      break
    case 'bridge end':
      items.push(rectangle('ends', box(0, 26, 0, railTop + 1), 'hatch'))
      break
    case 'standing splice':
      items.push(line('standing run', point(railEnd, railTop), point(railEnd + outward * 26, railTop)))
      break
    case 'unknown end':
      items.push(rectangle('ends', box(-2, 14, 0, railTop), 'hatch'))
      break
    case 'buried end':
      items.push(
        polyline('finish grade', [point(postOne - outward * 30, 0), point(postOne + outward * 30, railTop + 18)]),
      )
      break
    case 'trailing anchor':
      break
    default:
      return end.kind satisfies never
  }
  return items
}
