import type { FlareLimits } from '../site/site.ts'
import { isShorter } from '../units/exact-length.ts'
import type { Metres } from '../units/quantity.ts'
import type { Exposure } from './crossing.ts'
import { isSteeper } from './flare-check.ts'
import type { Alternative } from './note.ts'
import { parallelLength } from './on-straight.ts'

/** What a barrier that can only be `available` long needs to be enough, on a straight road. */
export interface Shortfall {
  readonly exposure: Exposure
  readonly available: Metres
  /** Lateral distance to the hazard's near side: the barrier cannot be set further out. */
  readonly near: Metres
  readonly shyLine: Metres | null
  readonly flareLimits: FlareLimits | null
}

/** Each a single change that makes `available` enough; laterals are those of the exposure. */
export function alternativesTo(shortfall: Shortfall): readonly Alternative[] {
  const { exposure, available, near } = shortfall
  const { lateralExtent, barrierOffset, runout, flareSlope } = exposure
  if (!isShorter(0, available) || !isShorter(available, runout)) return []
  const flared = Math.max(0, available - exposure.parallelLength)
  const barrierThere = barrierOffset + flareSlope * flared
  // the runout line at `available`
  const pathThere = lateralExtent * (1 - available / runout)
  const alternatives: Alternative[] = []
  if (isShorter(0, flared) && isShorter(available, parallelLength(lateralExtent, barrierOffset, runout))) {
    const rate = flared / (pathThere - barrierOffset)
    alternatives.push({ change: 'flare', rate, steeperThanLimit: limitBroken(shortfall, rate, pathThere) })
  }
  const offset = pathThere - flareSlope * flared
  if (isShorter(offset, near)) alternatives.push({ change: 'barrier offset', to: offset })
  const extent = barrierThere / (1 - available / runout)
  if (isShorter(near, extent)) alternatives.push({ change: 'far side of hazard', to: extent })
  if (isShorter(barrierThere, lateralExtent))
    alternatives.push({
      change: 'accept runout length',
      to: (available * lateralExtent) / (lateralExtent - barrierThere),
    })
  return alternatives
}

function limitBroken({ exposure, shyLine, flareLimits }: Shortfall, rate: number, end: Metres): number | null {
  if (shyLine === null || flareLimits === null) return null
  if (isShorter(exposure.barrierOffset, shyLine) && isSteeper(rate, flareLimits.inside)) return flareLimits.inside
  return isShorter(shyLine, end) && isSteeper(rate, flareLimits.beyond) ? flareLimits.beyond : null
}
