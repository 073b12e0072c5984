import * as z from 'zod/mini'
import { listOf, ranged, rangedWhole } from '../range/ranged.ts'

const part = ranged('photoPart')
const point = z.readonly(z.tuple([part, part]))

const stroke = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.enum(['arrow', 'circle']), points: z.readonly(z.tuple([point, point])) }),
  z.strictObject({ kind: z.literal('line'), points: z.readonly(listOf(point, 'strokePoints').check(z.minLength(2))) }),
])

/** What was drawn on a photo of so many pixels, upright as it was seen. */
export const drawnFields = {
  width: rangedWhole('photoEdge'),
  height: rangedWhole('photoEdge'),
  strokes: z.readonly(listOf(stroke, 'photoStrokes')),
}
