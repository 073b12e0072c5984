import { adjacentView } from '../../../core/need/traffic-view.ts'
import type { Site } from '../../../core/site/site.ts'
import type { Metres } from '../../../core/units/quantity.ts'

/** One travelled way; laterals from the edge beside the hazards, negative on the road's own side of it. */
export interface Carriageway {
  readonly from: Metres
  readonly to: Metres
  /** From `to` to `from`, that is away from the hazards. */
  readonly lanes: readonly Lane[]
}

export interface Lane {
  readonly middle: Metres
  /** 1 up-station, -1 down-station, 0 for the middle one of an odd number, whose direction the site does not say. */
  readonly travel: 1 | -1 | 0
  readonly isAdjacent: boolean
}

/** The travelled ways of a site, the one beside the hazards first; the other of a divided road if the median is known. */
export function carriageways(site: Site): readonly Carriageway[] {
  const { road } = site
  const adjacent = adjacentView(site).direction
  const opposing = adjacent === 1 ? -1 : 1
  const width = (lanes: number): Metres => lanes * road.laneWidth
  if (road.traffic !== 'divided') {
    const half = road.traffic === 'one-way' ? road.lanes : road.lanes / 2
    return [way(-width(road.lanes), road.lanes, (i) => travelOf(i, half, adjacent))]
  }
  const lanes = Math.ceil(road.lanes / 2)
  const beside = way(-width(lanes), lanes, () => adjacent)
  if (road.medianWidth === null) return [beside]
  // the hazards of a left-hand site stand in the median
  const from = site.side === 'left' ? road.medianWidth : -width(lanes) - road.medianWidth - width(lanes)
  return [beside, way(from, lanes, () => opposing)]

  function way(start: Metres, count: number, travel: (lane: number) => 1 | -1 | 0): Carriageway {
    const to = start + width(count)
    const all = Array.from({ length: count }, (_, i) => ({
      middle: to - width(i + 0.5),
      travel: travel(i),
      isAdjacent: travel(i) === adjacent,
    }))
    return { from: start, to, lanes: all }
  }
}

const travelOf = (lane: number, half: number, adjacent: 1 | -1): 1 | -1 | 0 =>
  lane + 1 <= half ? adjacent : lane >= half ? (adjacent === 1 ? -1 : 1) : 0

/** Shoulders that a site states: beside the hazards, and on a two-way road on its other side too. */
export function shoulders(site: Site): readonly Stretch[] {
  const { road } = site
  if (road.shoulderWidth === 0) return []
  const near = { from: 0, to: road.shoulderWidth }
  const back = -road.lanes * road.laneWidth
  return road.traffic === 'two-way' ? [near, { from: back, to: back - road.shoulderWidth }] : [near]
}

/** From the edge of travelled way outwards, laterals in m. */
interface Stretch {
  readonly from: Metres
  readonly to: Metres
}

/** How far what belongs to the road reaches on the side without hazards, m, negative. */
export const roadBack = (site: Site): Metres =>
  Math.min(...carriageways(site).map((way) => way.from), ...shoulders(site).map((shoulder) => shoulder.to))
