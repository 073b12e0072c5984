import { area, circle, group, line, point, polyline, rectangle } from '../../draw.ts'
import type { Item, Point } from '../../drawing.ts'
import { type Frame, isWithin } from './frame.ts'
import type { StripEnd } from './strip-input.ts'

/** What closes the run at its two ends, as far as they lie in the frame. */
export function endItems(frame: Frame): Item[] {
  const { input, rail, range } = frame
  const items: Item[] = []
  if (isWithin(range, rail.from)) items.push(endGroup(frame, 'first', input.first, rail.from))
  if (rail.to > range.from && rail.to <= range.to) items.push(endGroup(frame, 'second', input.second, rail.to))
  return items
}

function endGroup(frame: Frame, which: 'first' | 'second', end: StripEnd, along: number): Item {
  const outward = which === 'first' ? -1 : 1
  const p = frame.perPoint
  const at = (out: number, aside: number): Point => frame.at(along + out * outward * p, aside)
  return group(which, end.name, endSign(end.kind, at, p))
}

/**
 * The sign of what closes a run.
 * @param at point `out` points outward from the end of rail, `aside` points on the traffic side of its face
 */
function endSign(kind: StripEnd['kind'], at: (out: number, aside: number) => Point, perPoint: number): Item[] {
  const box = (from: number, to: number, low: number, high: number): Parameters<typeof rectangle>[1] => {
    const [a, b] = [at(from, low), at(to, high)]
    return { minX: Math.min(a.x, b.x), maxX: Math.max(a.x, b.x), minY: Math.min(a.y, b.y), maxY: Math.max(a.y, b.y) }
  }
  switch (kind) {
    case 'terminal':
      return [
        area('ends', [at(-6, 2), at(3, 4.5), at(3, -3), at(-6, -2)], 'tint'),
        area('ends', [at(3, 6.5), at(6.5, 6.5), at(6.5, -4), at(3, -4)], 'solid'),
      ]
    case 'trailing anchor':
      return [
        polyline('ends', [at(9, -10), at(-13, -2.5)]),
        area('ends', [at(13, -15), at(5, -15), at(9, -7)], 'solid'),
        circle('ends', at(-13, -2.5), 1.3 * perPoint, 'solid'),
      ]
    case 'buried end':
      return [
        area('ends', [at(-6, -14), at(-3, 2), at(4, 9), at(16, 10), at(27, 4), at(30, -12), at(14, -19)], 'hatch'),
      ]
    case 'bridge end':
      return [
        { ...rectangle('ends', box(0, 34, -11, 1), 'tint') },
        line('ends', at(6, -11), at(6, 1)),
        area('ends', [at(-9, 1.4), at(0, 1.8), at(0, -3), at(-9, -2)], 'solid'),
      ]
    case 'standing splice':
      return [
        line('standing run', at(2, 0), at(34, 0)),
        polyline('ends', [at(16, -6), at(18, -1), at(14, 1), at(16, 6)]),
      ]
    case 'unknown end':
      return [
        polyline('ends', [at(-2, -8), at(14, -8), at(14, 8), at(-2, 8), at(-2, -8)]),
        line('ends', at(-2, -8), at(14, 8)),
        line('ends', at(-2, 8), at(14, -8)),
      ]
    default:
      return kind satisfies never
  }
}

/** How far the middle of a sign lies outward from the end of rail, and below its face. */
const centres: Readonly<Record<StripEnd['kind'], { readonly shift: number; readonly drop: number }>> = {
  terminal: { shift: 0, drop: -1 },
  'trailing anchor': { shift: -1, drop: 8 },
  'buried end': { shift: 11, drop: 4 },
  'bridge end': { shift: 12, drop: 5 },
  'standing splice': { shift: 18, drop: 0 },
  'unknown end': { shift: 6, drop: 0 },
}

/** Where the sign of an end is shown alone, as in the legend: its rail to the right, centred on `centre`. */
export function endSignAlone(kind: StripEnd['kind'], centre: Point, perPoint: number): Item[] {
  const { shift, drop } = centres[kind]
  return endSign(
    kind,
    (out, aside) => point(centre.x + (shift - out) * perPoint, centre.y + (aside + drop) * perPoint),
    perPoint,
  )
}
