import { azimuthAlong, endOf } from '../geometry/clothoid.ts'
import { distance, turned } from '../geometry/point.ts'
import type { Metres, Radians } from '../units/quantity.ts'
import type { HorizontalAlignment } from './horizontal-alignment.ts'

/** Where an element does not begin as the one before it ends: numbers were rounded, or something is missing. */
export interface AlignmentBreak {
  readonly station: Metres
  /** From the end of the one to the start of the other. */
  readonly distance: Metres
  /** Change of direction, positive to the right. */
  readonly kink: Radians
}

/**
 * Up to here a break comes from rounding, and stakes may stand on either side of it: 10 mm, and 1 mrad, which is 10 mm
 * at 10 m beside the line. Our judgement, not published: files write coordinates to a millimetre as a rule.
 */
const rounding = { distance: 0.01, kink: 0.001 }

/** The breaks of an alignment that are more than rounding, in the order of their stations. */
export const alignmentBreaks = ({ elements }: HorizontalAlignment): readonly AlignmentBreak[] =>
  elements.slice(1).flatMap((element, i) => {
    const before = elements[i]!
    const apart = distance(endOf(before), element.start)
    const kink = turned(element.azimuth - azimuthAlong(before, before.length))
    return apart > rounding.distance || Math.abs(kink) > rounding.kink
      ? [{ station: element.station, distance: apart, kink }]
      : []
  })
