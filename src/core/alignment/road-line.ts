import type { Metres } from '../units/quantity.ts'
import { endStation, type HorizontalAlignment, layAlignment, sharpestCurvature } from './horizontal-alignment.ts'
import { offsetLength } from './offset-line.ts'

/** How a road is described: straight, one circular curve, or element by element. */
export type RoadShape =
  | { readonly kind: 'straight' }
  | { readonly kind: 'curve'; readonly radius: Metres; readonly turn: 'left' | 'right' }
  | { readonly kind: 'elements'; readonly horizontal: HorizontalAlignment }

/** The line along which a road's stations run, however it was described. Offsets are positive right, looking up-station. */
export interface RoadLine {
  readonly isStraight: boolean
  /** Of a road that is one circle; null for any other, m. */
  readonly radius: Metres | null
  /** The stations between which it is known; null where it goes on. */
  readonly reach: { readonly from: Metres; readonly to: Metres } | null
  /** Length of the line `offset` m beside it between two stations, negative down-station. */
  lengthBeside(from: Metres, to: Metres, offset: Metres): Metres
  /** The smallest radius between two stations where it turns to the side of `sign` (1 right, -1 left); null where it does not. */
  sharpestRadius(from: Metres, to: Metres, sign: 1 | -1): Metres | null
  /** An alignment of it that reaches beyond both stations by their distance; a circle not once around. */
  alignmentAround(from: Metres, to: Metres): HorizontalAlignment
}

export function roadLine(shape: RoadShape): RoadLine {
  switch (shape.kind) {
    case 'straight':
      return straightLine
    case 'curve':
      return circle(shape.radius, shape.turn === 'right' ? 1 : -1)
    case 'elements':
      return aligned(shape.horizontal)
    default:
      return shape satisfies never
  }
}

const straightLine: RoadLine = {
  isStraight: true,
  radius: null,
  reach: null,
  lengthBeside: (from, to) => to - from,
  sharpestRadius: () => null,
  alignmentAround: (from, to) => evenly(0, (from + to) / 2, 3 * (to - from)),
}

function circle(radius: Metres, turn: 1 | -1): RoadLine {
  return {
    isStraight: false,
    radius,
    reach: null,
    lengthBeside: (from, to, offset) => ((to - from) * (radius - turn * offset)) / radius,
    sharpestRadius: (_from, _to, sign) => (sign === turn ? radius : null),
    alignmentAround: (from, to) =>
      evenly(turn / radius, (from + to) / 2, Math.min(3 * (to - from), 2 * Math.PI * radius * 0.99)),
  }
}

function aligned(horizontal: HorizontalAlignment): RoadLine {
  const reach = { from: horizontal.startStation, to: endStation(horizontal) }
  return {
    isStraight: false,
    radius: null,
    reach,
    lengthBeside: (from, to, offset) => offsetLength(horizontal, from, to, offset),
    sharpestRadius(from, to, sign) {
      const low = Math.max(Math.min(from, to), reach.from)
      const high = Math.min(Math.max(from, to), reach.to)
      const curvature = sharpestCurvature(horizontal, low, high, sign)
      return curvature > 0 ? 1 / curvature : null
    },
    alignmentAround: () => horizontal,
  }
}

/** An alignment of one curvature, 1/m, positive right; it lies anywhere, and leads north at its start. */
const evenly = (curvature: number, middle: Metres, length: Metres): HorizontalAlignment =>
  layAlignment({ point: { easting: 0, northing: 0 }, azimuth: 0, station: middle - length / 2 }, [
    { length, curvatureStart: curvature, curvatureEnd: curvature },
  ])
