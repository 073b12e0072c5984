import { sharpestCurvature } from '../alignment/horizontal-alignment.ts'
import { flareBends } from '../layout/run-flare.ts'
import { err, ok, type Result } from '../result.ts'
import { inches, type Metres } from '../units/quantity.ts'
import type { Barrier } from './barrier.ts'
import type { RailLine } from './rail-line.ts'
import type { StakingFrame } from './staking-frame.ts'
import { type OffAlignment, stationsAlong } from './stations-along.ts'

/** A flare of the run beside a curved road: its need was not found for that, and no source says which line it takes. */
export interface FlareOnCurve {
  readonly kind: 'flare-on-curve'
  readonly end: 'first' | 'second'
  /** Smallest radius of the alignment beside the flared rail, m. */
  readonly radius: Metres
}

/** Whether the road is straight beside each flare of the run, from where the rail bends to its end. */
export function checkFlareGround(
  barrier: Barrier,
  frame: StakingFrame,
  line: RailLine,
  datum: Metres,
): Result<null, FlareOnCurve | OffAlignment> {
  const { posts } = barrier.layout
  const bends = flareBends(barrier.layout, barrier.flare)
  for (const end of ['first', 'second'] as const) {
    const bend = bends[end]
    if (bend === null) continue
    const tip = (end === 'first' ? posts[0]! : posts.at(-1)!).alongInches
    const stations = stationsAlong(frame, line, datum, [Math.min(bend, tip), Math.max(bend, tip)].map(inches))
    if (!stations.ok) return stations
    const [low, high] = [Math.min(...stations.value), Math.max(...stations.value)]
    const sharpest = Math.max(...([1, -1] as const).map((side) => sharpestCurvature(frame.alignment, low, high, side)))
    if (sharpest > 0) return err({ kind: 'flare-on-curve', end, radius: 1 / sharpest })
  }
  return ok(null)
}
