import type { EndSheet, Source } from './hardware-sheet.ts'

/** Which traffic an end of a run is struck by. */
export interface EndExposure {
  readonly end: 'approach' | 'departure'
  /** Whether opposing traffic can reach the departure end; null where nobody says. */
  readonly opposingReaches: boolean | null
}

export type CrashworthyEnd = Pick<EndSheet, 'crashworthy' | 'kind'>

/**
 * Whether an end unit is crashworthy, or need not be where it stands; null where that hangs on what nobody said.
 *
 * Traffic always meets the approach end; the departure end only where opposing traffic can reach it. Along a bridge end
 * traffic passes at either end of a run.
 */
export function isEndSafe(
  { crashworthy, kind }: CrashworthyEnd,
  { end, opposingReaches }: EndExposure,
): boolean | null {
  if (crashworthy) return true
  if (end === 'approach' || kind === 'bridge end') return false
  return opposingReaches === null ? null : !opposingReaches
}

export const crashworthySource: Source = {
  title: 'Texas DOT Roadway Design Manual on turned-down ends; AASHTO Roadside Design Guide',
  edition: '2011, 5.6.4, three cases of opposing traffic',
}
