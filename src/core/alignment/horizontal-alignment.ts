import { azimuthAlong, type Clothoid, curvatureAlong, endOf, pointAlong } from '../geometry/clothoid.ts'
import { type Point, turned } from '../geometry/point.ts'
import type { Metres, Radians } from '../units/quantity.ts'

/**
 * A road's reference line in plan: tangents, circular curves and spirals, one after the other.
 *
 * A station here is the continuous one, m: the start station plus the length along the line. Station equations
 * change what is written on the stakes, never this number (see station-equations.ts).
 */
export interface HorizontalAlignment {
  readonly startStation: Metres
  readonly elements: readonly AlignmentElement[]
}

export interface AlignmentElement extends Clothoid {
  /** Station of its start. */
  readonly station: Metres
}

/**
 * One element before it is laid: its length and the curvature at both ends, 1/m, positive to the right; and where it
 * starts, if that is not where the one before it ends, and as that one is directed there.
 */
export interface ElementShape extends Pick<Clothoid, 'length' | 'curvatureStart' | 'curvatureEnd'> {
  readonly own?: { readonly point: Point; readonly azimuth: Radians }
}

/**
 * The alignment that starts at `start` and lays `shapes` one behind the other, each tangent to the one before it unless
 * it has a start of its own. Stations go on by the elements' lengths over such a break.
 */
export function layAlignment(
  start: { readonly point: Point; readonly azimuth: Radians; readonly station: Metres },
  shapes: readonly ElementShape[],
): HorizontalAlignment {
  let { point, azimuth, station } = start
  const elements = shapes.map(({ own, ...shape }) => {
    if (own !== undefined) {
      point = own.point
      azimuth = goingOn(azimuth, own.azimuth)
    }
    const element = { ...shape, start: point, azimuth, station }
    point = endOf(element)
    azimuth = azimuthAlong(element, element.length)
    station += element.length
    return element
  })
  return { startStation: start.station, elements }
}

/** `azimuth` with as many whole turns as bring it next to `before`: differences along a line are its true turning. */
export const goingOn = (before: Radians, azimuth: Radians): Radians => before + turned(azimuth - before)

/** Station of the end of the alignment. */
export function endStation(alignment: HorizontalAlignment): Metres {
  const last = alignment.elements.at(-1)
  return last === undefined ? alignment.startStation : last.station + last.length
}

/** Whether the alignment reaches `station`, to a micrometre. */
export const reachesStation = (alignment: HorizontalAlignment, station: Metres): boolean =>
  station >= alignment.startStation - 1e-6 && station <= endStation(alignment) + 1e-6

/** The element on which `station` lies; at a joint the one that begins there, outside the alignment the nearest one. */
export function elementAt(alignment: HorizontalAlignment, station: Metres): AlignmentElement {
  const { elements } = alignment
  let low = 0
  let high = elements.length - 1
  while (low < high) {
    const middle = (low + high + 1) >> 1
    if (elements[middle]!.station <= station) low = middle
    else high = middle - 1
  }
  const element = elements[low]
  if (element === undefined) throw new RangeError('an alignment has at least one element')
  return element
}

/** The point of the line at `station`. */
export function pointAt(alignment: HorizontalAlignment, station: Metres): Point {
  const element = elementAt(alignment, station)
  return pointAlong(element, station - element.station)
}

/** Direction of the line at `station`, clockwise from north; differences along the line are the true turning. */
export function azimuthAt(alignment: HorizontalAlignment, station: Metres): Radians {
  const element = elementAt(alignment, station)
  return azimuthAlong(element, station - element.station)
}

/**
 * The curvature between two stations that is largest in the direction of `sign` (1 right, -1 left), times `sign`;
 * not below 0.
 */
export function sharpestCurvature(alignment: HorizontalAlignment, from: Metres, to: Metres, sign: 1 | -1): number {
  let sharpest = 0
  for (const element of alignment.elements) {
    const low = Math.max(from - element.station, 0)
    const high = Math.min(to - element.station, element.length)
    if (low > high) continue
    sharpest = Math.max(sharpest, sign * curvatureAlong(element, low), sign * curvatureAlong(element, high))
  }
  return sharpest
}
