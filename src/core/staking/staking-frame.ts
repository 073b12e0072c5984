import type { CrossSlopeTable } from '../alignment/cross-slope.ts'
import { type HorizontalAlignment, layAlignment } from '../alignment/horizontal-alignment.ts'
import type { StationEquation } from '../alignment/station-equations.ts'
import type { VerticalAlignment } from '../alignment/vertical-alignment.ts'
import type { Side } from '../site/site.ts'
import { type Metres, metres } from '../units/quantity.ts'

/** Where a run stands by its road. */
export interface StakingFrame {
  readonly alignment: HorizontalAlignment
  readonly equations: readonly StationEquation[]
  /** Continuous station of the run's datum. */
  readonly datumStation: Metres
  /** Of the face of rail where it runs parallel to the alignment; positive right looking up-station. */
  readonly offset: Metres
  /** Side of the travelled way that the run protects, looking up-station: a flare goes away to that side. */
  readonly side: Side
  /** 1 where downstream is up-station, -1 where it is down-station. */
  readonly direction: 1 | -1
  /** Null where the road's heights are not known. */
  readonly surface: RoadSurface | null
}

export interface RoadSurface {
  readonly profile: VerticalAlignment
  readonly crossSlopes: CrossSlopeTable
}

/**
 * A straight road without coordinates of its own: northing runs along it, 0 at the datum, and easting square to it,
 * positive to the right.
 */
export function straightFrame(
  place: Pick<StakingFrame, 'datumStation' | 'offset' | 'side' | 'direction'>,
): StakingFrame {
  const reach = metres(10_000)
  const alignment = layAlignment(
    { point: { easting: 0, northing: -reach }, azimuth: 0, station: place.datumStation - reach },
    [{ length: 2 * reach, curvatureStart: 0, curvatureEnd: 0 }],
  )
  return { ...place, alignment, equations: [], surface: null }
}

/** What moves away from the road counts this way in offsets. */
export const outwardSign = (side: Side): 1 | -1 => (side === 'right' ? 1 : -1)
