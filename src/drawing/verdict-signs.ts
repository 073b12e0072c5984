import type { VerdictWord } from '../core/verdicts/verdict.ts'
import { area, circle, line, point, polyline } from './draw.ts'
import type { Item, Layer, Point } from './drawing.ts'

/** From the worst to the best. */
export const verdictOrder: readonly VerdictWord[] = ['fails', 'too close', 'unread', 'meets', 'does not apply']

/** The layers that signs are drawn on; the inks stay apart from paper by more than 7:1 in grey. */
export const verdictLayers: readonly Layer[] = [
  { name: 'verdict meets', penPoints: 0.9, dash: 'solid', ink: '#14532d' },
  { name: 'verdict fails', penPoints: 0.9, dash: 'solid', ink: '#8f1414' },
  { name: 'verdict fails, mark', penPoints: 1.3, dash: 'solid', ink: '#ffffff' },
  { name: 'verdict too close', penPoints: 0.9, dash: 'solid', ink: '#6b4200' },
  { name: 'verdict unread', penPoints: 0.8, dash: 'dotted', ink: '#222222' },
  { name: 'verdict unread, mark', penPoints: 1, dash: 'solid', ink: '#222222' },
  { name: 'verdict does not apply', penPoints: 1.6, dash: 'solid', ink: '#555555' },
]

/**
 * The sign of `verdict`, told by its shape: check mark in a circle, cross in a filled octagon, question mark in a
 * triangle, dash in a dashed square, a short bar.
 *
 * @param size width and height, inches
 */
export function verdictSign(verdict: VerdictWord, centre: Point, size: number): readonly Item[] {
  const r = size / 2
  const at = (x: number, y: number): Point => point(centre.x + x * r, centre.y + y * r)
  const corners = (count: number, start: number, radius: number): Point[] =>
    Array.from({ length: count }, (_, i) => {
      const angle = ((start + (360 / count) * i) * Math.PI) / 180
      return at(radius * Math.cos(angle), radius * Math.sin(angle))
    })
  switch (verdict) {
    case 'meets':
      return [
        circle('verdict meets', centre, r, 'blank'),
        polyline('verdict meets', [at(-0.5, 0.02), at(-0.14, -0.42), at(0.52, 0.42)]),
      ]
    case 'fails':
      return [
        area('verdict fails', corners(8, 22.5, 1.06), 'solid'),
        line('verdict fails, mark', at(-0.45, -0.45), at(0.45, 0.45)),
        line('verdict fails, mark', at(-0.45, 0.45), at(0.45, -0.45)),
      ]
    case 'too close':
      return [
        area('verdict too close', [at(-1.1, -0.92), at(1.1, -0.92), at(0, 1.08)], 'blank'),
        ...questionMark('verdict too close', at),
      ]
    case 'unread':
      return [
        area('verdict unread', [at(-0.92, -0.92), at(0.92, -0.92), at(0.92, 0.92), at(-0.92, 0.92)], 'blank'),
        line('verdict unread, mark', at(-0.45, 0), at(0.45, 0)),
      ]
    case 'does not apply':
      return [line('verdict does not apply', at(-0.6, 0), at(0.6, 0))]
    default:
      return verdict satisfies never
  }
}

/** Drawn, so that it does not depend on a font. */
const questionMark = (layer: string, at: (x: number, y: number) => Point): readonly Item[] => [
  polyline(layer, [at(-0.22, 0.14), at(-0.1, 0.34), at(0.12, 0.34), at(0.24, 0.12), at(0.02, -0.16), at(0, -0.38)]),
  line(layer, at(0, -0.58), at(0, -0.72)),
]
