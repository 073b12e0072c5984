import { isShorter } from '../units/exact-length.ts'
import type { Metres } from '../units/quantity.ts'
import type { Crossing, Exposure } from './crossing.ts'

/**
 * X = L_R (L_A - L_2) / L_A, not below 0.
 * @example parallelLength(8, 2, 100)  // 75
 * @source AASHTO Roadside Design Guide, 2011, sec. 5.6.4; Montana Road Design Manual, eq. 9.4-2
 */
export const parallelLength = (lateralExtent: Metres, barrierOffset: Metres, runout: Metres): Metres =>
  Math.max(0, (runout * (lateralExtent - barrierOffset)) / lateralExtent)

/**
 * X = (L_A + (b/a) L_1 - L_2) / (b/a + L_A/L_R). Holds only where it is larger than L_1.
 * @source AASHTO Roadside Design Guide, 2011, sec. 5.6.4
 */
export const flaredLength = (exposure: Exposure): Metres =>
  (exposure.lateralExtent + exposure.flareSlope * exposure.parallelLength - exposure.barrierOffset) /
  (exposure.flareSlope + exposure.lateralExtent / exposure.runout)

/**
 * The end of need on a straight road. Where the runout line meets the barrier before the flare begins, the parallel
 * formula governs.
 */
export function crossOnStraight(exposure: Exposure): Crossing {
  const { lateralExtent, barrierOffset, runout } = exposure
  const parallel = parallelLength(lateralExtent, barrierOffset, runout)
  if (exposure.flareSlope === 0 || !isShorter(exposure.parallelLength, parallel))
    return {
      length: parallel,
      lateral: barrierOffset,
      upstream: parallel,
      leavesUpstream: runout,
      rule: 'parallel',
    }
  const length = flaredLength(exposure)
  return {
    length,
    lateral: lateralExtent - (lateralExtent / runout) * length,
    upstream: length,
    leavesUpstream: runout,
    rule: 'flared',
  }
}
