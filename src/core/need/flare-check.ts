import type { FlareLimits } from '../site/site.ts'
import { isShorter } from '../units/exact-length.ts'
import type { Metres } from '../units/quantity.ts'
import type { Exposure } from './crossing.ts'
import type { Note } from './note.ts'
import { flaredLength } from './on-straight.ts'

/**
 * What the shy line says of a flare that ends at `endLateral`: a flare that lies inside it is held to the one limit,
 * beyond it to the other, and a flare that crosses it to both, part by part.
 *
 * @param onStraight  whether the compound flare can be computed by the straight formula
 */
export function checkFlare(
  exposure: Exposure,
  endLateral: Metres,
  shyLine: Metres | null,
  limits: FlareLimits | null,
  onStraight: boolean,
): readonly Note[] {
  if (shyLine === null || limits === null) return []
  const rate = 1 / exposure.flareSlope
  const isInside = isShorter(exposure.barrierOffset, shyLine)
  const isBeyond = isShorter(shyLine, endLateral)
  const notes: Note[] = []
  if (isInside && isSteeper(rate, limits.inside))
    notes.push({ kind: 'flare-too-steep', where: 'inside shy line', rate, limit: limits.inside })
  if (isBeyond && isSteeper(rate, limits.beyond))
    notes.push({ kind: 'flare-too-steep', where: 'beyond shy line', rate, limit: limits.beyond })
  if (isInside && isBeyond) {
    const at = exposure.parallelLength + rate * (shyLine - exposure.barrierOffset)
    notes.push({
      kind: 'flare-crosses-shy-line',
      at,
      insideLimit: limits.inside,
      beyondLimit: limits.beyond,
      compound: onStraight ? compoundFlare(exposure, at, shyLine, limits.beyond) : null,
    })
  }
  return notes
}

/** Whether a flare of `rate`:1 is steeper than one of `limit`:1; the ninth decimal is arithmetic noise. */
export const isSteeper = (rate: number, limit: number): boolean => Math.round(rate * 1e9) < Math.round(limit * 1e9)

// Beyond the shy line the compound flare is a flare that begins there: L_1 and L_2 become the crossing's.
function compoundFlare(exposure: Exposure, at: Metres, shyLine: Metres, rate: number) {
  const beyond = { ...exposure, parallelLength: at, barrierOffset: shyLine, flareSlope: 1 / rate }
  const lengthOfNeed = flaredLength(beyond)
  return { lengthOfNeed, lateralAtEnd: exposure.lateralExtent * (1 - lengthOfNeed / exposure.runout) }
}
