import { azimuthAlong, curvatureAlong, pointAlong } from '../geometry/clothoid.ts'
import type { Metres } from '../units/quantity.ts'
import type { HorizontalAlignment } from './horizontal-alignment.ts'

/** The part of an alignment between two stations; what lies beyond its ends is left out. */
export function cutAlignment({ elements }: HorizontalAlignment, from: Metres, to: Metres): HorizontalAlignment {
  const cut = elements.flatMap((element) => {
    const low = Math.max(from - element.station, 0)
    const high = Math.min(to - element.station, element.length)
    if (high <= low) return []
    const part = {
      start: pointAlong(element, low),
      azimuth: azimuthAlong(element, low),
      length: high - low,
      curvatureStart: curvatureAlong(element, low),
      curvatureEnd: curvatureAlong(element, high),
      station: element.station + low,
    }
    return [part]
  })
  const first = cut[0]
  if (first === undefined) throw new RangeError(`no part of the alignment lies between ${from} and ${to}`)
  return { startStation: first.station, elements: cut }
}
