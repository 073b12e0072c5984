import type { Layout, RunEnd } from '../layout/layout.ts'
import { err, ok, type Result } from '../result.ts'
import { inches, type Metres } from '../units/quantity.ts'
import type { Barrier } from './barrier.ts'
import { flaredEnd, type MisplacedFlare } from './run-flare-curve.ts'
import { type UnitFlare, unitFlare } from './unit-flare.ts'

/**
 * The face of rail as it stands beside its own line, by the distance `rail` along it from the centre of post 1, m.
 * Its line is where the face runs parallel to the road, extended through both flares.
 */
export interface RailLine {
  /** The stretch between the flares. */
  readonly flat: { readonly from: Metres; readonly to: Metres }
  /** Where the rail bends inside the flares and where a unit's flare begins on one of the run, distances from post 1. */
  readonly corners: readonly Metres[]
  /** Greatest distance from the line. */
  readonly farthest: Metres
  /** Distance from the line, away from the road. */
  awayAt(rail: Metres): Metres
  /** Change of that distance for each metre of rail. */
  slopeAt(rail: Metres): number
  /** Distance along the line on a straight road; only differences of it mean anything. */
  alongAt(rail: Metres): Metres
}

export interface FlareNotStated {
  readonly kind: 'flare-not-stated'
  readonly sheet: string
}

export type RailLineRefusal = FlareNotStated | MisplacedFlare

export function railLine(barrier: Barrier): Result<RailLine, RailLineRefusal> {
  const { layout, first, second } = barrier
  const flares = [flareOf(layout, 'first', first), flareOf(layout, 'second', second)]
  for (const flare of flares) if (flare !== null && 'kind' in flare) return err(flare)
  const [nearUnit, farUnit] = flares as [UnitFlare | null, UnitFlare | null]
  const unitFrom = nearUnit ? inches(nearUnit.originInches + nearUnit.overInches) : Number.NEGATIVE_INFINITY
  const unitTo = farUnit ? inches(farUnit.originInches - farUnit.overInches) : Number.POSITIVE_INFINITY
  const nearRun = flaredEnd(barrier, 'first', nearUnit?.curve ?? null, unitFrom)
  if (!nearRun.ok) return nearRun
  const farRun = flaredEnd(barrier, 'second', farUnit?.curve ?? null, unitTo)
  if (!farRun.ok) return farRun
  const [near, from] = [nearRun.value?.curve ?? nearUnit?.curve, nearRun.value?.bend ?? unitFrom]
  const [far, to] = [farRun.value?.curve ?? farUnit?.curve, farRun.value?.bend ?? unitTo]
  const before = (rail: Metres): Metres => Math.max(0, from - rail)
  const after = (rail: Metres): Metres => Math.max(0, rail - to)
  return ok({
    flat: { from, to },
    corners: [
      unitFrom,
      unitTo,
      ...(nearUnit?.corners ?? []).map((corner) => unitFrom - corner),
      ...(farUnit?.corners ?? []).map((corner) => unitTo + corner),
    ],
    farthest: Math.max(near?.offset ?? 0, far?.offset ?? 0),
    awayAt: (rail) => (near?.away(before(rail)) ?? 0) + (far?.away(after(rail)) ?? 0),
    slopeAt: (rail) => (rail < from ? -near!.slope(before(rail)) : 0) + (rail > to ? far!.slope(after(rail)) : 0),
    alongAt: (rail) =>
      rail + (near ? before(rail) - near.along(before(rail)) : 0) - (far ? after(rail) - far.along(after(rail)) : 0),
  })
}

function flareOf(layout: Layout, which: 'first' | 'second', end: RunEnd): UnitFlare | FlareNotStated | null {
  if (end.kind !== 'unit' || end.sheet.flare === 'none') return null
  return unitFlare(layout, which, end.sheet) ?? { kind: 'flare-not-stated', sheet: end.sheet.id }
}
