import { ok, type Result } from '../result.ts'
import type { Hazard, Site } from '../site/site.ts'
import { isShorter } from '../units/exact-length.ts'
import type { Metres } from '../units/quantity.ts'
import type { Crossing, Exposure } from './crossing.ts'
import type { DesignValues } from './design-values.ts'
import type { NeedRefusal } from './refusal.ts'
import { barrierLength, crossOnRoad, frontOf, type TrafficView } from './traffic-view.ts'

/** How far upstream one hazard requires the barrier to reach. */
export interface Reach {
  readonly hazard: Hazard
  readonly exposure: Exposure
  /** Whether L_A is the clear zone's limit rather than the hazard's far side. */
  readonly isCut: boolean
  readonly crossing: Crossing
  /** Station at which this traffic meets the hazard. */
  readonly front: Metres
  /** Station of the end of need. */
  readonly station: Metres
}

/**
 * The reach that `hazard` requires.
 * @param flareFrom  station of the first hazard: the flare begins the parallel length upstream of it
 */
export function reachFor(
  site: Site,
  values: DesignValues,
  view: TrafficView,
  hazard: Hazard,
  flareFrom: Metres,
): Result<Reach, NeedRefusal> {
  const clearZone = values.clearZone
  const { flare } = site.barrier
  const far = hazard.far === null ? null : hazard.far + view.shift
  // L_A is the far side, or L_C where the hazard reaches beyond it
  const isCut = hazard.beyondClearZone || far === null || isShorter(clearZone, far)
  const lateralExtent = isCut ? clearZone : far
  const isFlared = flare !== null && (view.shift === 0 || flare.ends === 'both')
  const front = frontOf(view, hazard)
  const exposure: Exposure = {
    lateralExtent,
    barrierOffset: site.barrier.offset + view.shift,
    runout: values.runout,
    parallelLength: isFlared ? flare.parallelLength + barrierLength(site, flareFrom, front) : 0,
    flareSlope: isFlared ? 1 / flare.rate : 0,
    reading: site.runoutOnCurves,
  }
  if (!isShorter(exposure.barrierOffset, lateralExtent))
    return ok({
      hazard,
      exposure,
      isCut,
      crossing: { ...noLength, lateral: exposure.barrierOffset },
      front,
      station: front,
    })
  const crossing = crossOnRoad(site, view, front, exposure)
  if (!crossing.ok) return crossing
  const station = front - view.direction * crossing.value.upstream
  return ok({ hazard, exposure, isCut, crossing: crossing.value, front, station })
}

const noLength = { length: 0, upstream: 0, leavesUpstream: 0, rule: 'nothing to shield' } as const

/** The station at which this traffic meets the first of the hazards that begin inside the clear zone of the near edge. */
export function firstFront(hazards: readonly Hazard[], view: TrafficView, clearZone: Metres): Metres {
  let first = view.direction * Number.POSITIVE_INFINITY
  for (const hazard of hazards) {
    if (isShorter(clearZone, hazard.near)) continue
    const front = frontOf(view, hazard)
    if (view.direction * (first - front) > 0) first = front
  }
  return first
}
