import { roadLine } from '../alignment/road-line.ts'
import { ok, type Result } from '../result.ts'
import type { Hazard, Road, Site } from '../site/site.ts'
import type { Metres } from '../units/quantity.ts'
import type { Crossing, Exposure } from './crossing.ts'
import { crossOnAlignment } from './on-alignment.ts'
import { crossOnCurve } from './on-curve.ts'
import { crossOnStraight } from './on-straight.ts'
import type { NeedRefusal } from './refusal.ts'

/** How one direction of traffic sees the site. */
export interface TrafficView {
  /** 1: this traffic goes up-station, -1: down-station. */
  readonly direction: 1 | -1
  /**
   * How far the edge of its travelled way lies from the edge beside the hazards, m: 0 for the adjacent traffic, the
   * lanes (and the median) between for the opposing traffic. Laterals of the site grow by this much in its formulas.
   */
  readonly shift: Metres
}

/**
 * The traffic beside the hazards. It keeps to the right, so on a two-way road the traffic on the left goes
 * down-station; a left-hand hazard of a one-way or divided road is met by the traffic that goes up-station.
 */
export const adjacentView = (site: Site): TrafficView => ({
  direction: site.side === 'left' && site.road.traffic === 'two-way' ? -1 : 1,
  shift: 0,
})

/**
 * The traffic of the other direction, if it can reach the hazards over its left-hand edge; null for one-way roads, for
 * hazards in a median, and where the median's width is not known.
 */
export function opposingView(site: Site): TrafficView | null {
  const { road } = site
  const halfWidth = (road.lanes * road.laneWidth) / 2
  if (road.traffic === 'two-way') return { direction: adjacentView(site).direction === 1 ? -1 : 1, shift: halfWidth }
  if (road.traffic === 'one-way' || site.side === 'left' || road.medianWidth === null) return null
  return { direction: -1, shift: halfWidth + road.medianWidth }
}

/** The station at which this traffic first meets the hazard. */
export const frontOf = (view: TrafficView, hazard: Hazard): Metres => (view.direction === 1 ? hazard.from : hazard.to)

/**
 * Where the barrier must end for one hazard that begins at `front`. A straight road and a circle have a closed form,
 * which is exact however long the run; elements are searched.
 */
export function crossOnRoad(
  site: Site,
  view: TrafficView,
  front: Metres,
  exposure: Exposure,
): Result<Crossing, NeedRefusal> {
  const { alignment } = site.road
  switch (alignment.kind) {
    case 'straight':
      return ok(crossOnStraight(exposure))
    case 'curve': {
      const side = alignment.turn === site.side ? -1 : 1
      return crossOnCurve(exposure, {
        radius: alignment.radius - side * view.shift,
        stationRadius: alignment.radius,
        side,
      })
    }
    case 'elements': {
      const side = sideOf(site)
      const edgeOffset = nearEdgeOffset(site) - side * view.shift
      return crossOnAlignment(exposure, {
        alignment: alignment.horizontal,
        direction: view.direction,
        edgeOffset,
        side,
        front,
      })
    }
    default:
      return alignment satisfies never
  }
}

/** Length of the parallel barrier line between two stations, m. */
export function barrierLength(site: Site, from: Metres, to: Metres): Metres {
  const offset = nearEdgeOffset(site) + sideOf(site) * site.barrier.offset
  return Math.abs(roadLine(site.road.alignment).lengthBeside(from, to, offset))
}

/** On which side of a curve the hazards lie between two stations, and the sharpest radius of the edge there. */
export interface CurveSides {
  /** Radius of the edge beside the hazards, m; null where the road does not turn that way. */
  readonly outside: Metres | null
  readonly inside: Metres | null
}

export function curveSides(site: Site, from: Metres, to: Metres): CurveSides {
  const line = roadLine(site.road.alignment)
  const side = sideOf(site)
  const edge = nearEdgeOffset(site)
  const away = line.sharpestRadius(from, to, side === 1 ? -1 : 1)
  const towards = line.sharpestRadius(from, to, side)
  return {
    outside: away === null ? null : away + side * edge,
    inside: towards === null ? null : towards - side * edge,
  }
}

const sideOf = (site: Site): 1 | -1 => (site.side === 'right' ? 1 : -1)

/** Offset from the alignment of the edge of travelled way beside the hazards, m, positive right. */
export function nearEdgeOffset(site: Site): Metres {
  const { alignment } = site.road
  if (alignment.kind !== 'elements' || alignment.line === 'edge') return 0
  return sideOf(site) * halfRoad(site.road)
}

/** From the centreline to the outer edge of travelled way; the centreline of a divided road is that of its median. */
const halfRoad = (road: Road): Metres =>
  (road.lanes * road.laneWidth) / 2 + (road.traffic === 'divided' ? (road.medianWidth ?? 0) / 2 : 0)
