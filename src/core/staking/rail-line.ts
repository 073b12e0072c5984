import type { EndSheet } from '../hardware/hardware-sheet.ts'
import type { RunEnd } from '../layout/layout.ts'
import { err, ok, type Result } from '../result.ts'
import { inches, type Metres } from '../units/quantity.ts'
import type { Barrier } from './barrier.ts'
import { type FlareCurve, flareCurve } from './flare-curve.ts'
import { flaredEnd, type MisplacedFlare } from './run-flare-curve.ts'

/**
 * The face of rail as it stands beside its own line, by the distance `rail` along it from the centre of post 1, m.
 * Its line is where the face runs parallel to the road, extended through both flares.
 */
export interface RailLine {
  /** The stretch between the flares. */
  readonly flat: { readonly from: Metres; readonly to: Metres }
  /** Where a flare of an end unit begins on a flare of the run. */
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
  const curves = [curveOf(first), curveOf(second)]
  for (const curve of curves) if (curve !== null && 'kind' in curve) return err(curve)
  const [nearUnit, farUnit] = curves as [FlareCurve | null, FlareCurve | null]
  const length = (inward: number): Metres => inches(inward)
  const unitFrom = nearUnit
    ? length(originOf(layout.posts, 'first', first)) + nearUnit.length
    : Number.NEGATIVE_INFINITY
  const unitTo = farUnit ? length(originOf(layout.posts, 'second', second)) - farUnit.length : Number.POSITIVE_INFINITY
  const nearRun = flaredEnd(barrier, 'first', nearUnit, unitFrom)
  if (!nearRun.ok) return nearRun
  const farRun = flaredEnd(barrier, 'second', farUnit, unitTo)
  if (!farRun.ok) return farRun
  const [near, from] = [nearRun.value?.curve ?? nearUnit, nearRun.value?.bend ?? unitFrom]
  const [far, to] = [farRun.value?.curve ?? farUnit, farRun.value?.bend ?? unitTo]
  const before = (rail: Metres): Metres => Math.max(0, from - rail)
  const after = (rail: Metres): Metres => Math.max(0, rail - to)
  return ok({
    flat: { from, to },
    corners: [unitFrom, unitTo],
    farthest: Math.max(near?.offset ?? 0, far?.offset ?? 0),
    awayAt: (rail) => (near?.away(before(rail)) ?? 0) + (far?.away(after(rail)) ?? 0),
    slopeAt: (rail) => (rail < from ? -near!.slope(before(rail)) : 0) + (rail > to ? far!.slope(after(rail)) : 0),
    alongAt: (rail) =>
      rail + (near ? before(rail) - near.along(before(rail)) : 0) - (far ? after(rail) - far.along(after(rail)) : 0),
  })
}

function curveOf(end: RunEnd): FlareCurve | FlareNotStated | null {
  if (end.kind !== 'unit' || end.sheet.flare === 'none') return null
  return flareCurve(end.sheet.flare) ?? { kind: 'flare-not-stated', sheet: end.sheet.id }
}

/** Where the unit's origin lies, inches along the rail from post 1 of the run. */
function originOf(posts: Barrier['layout']['posts'], unit: 'first' | 'second', end: RunEnd): number {
  const sheet = (end as Extract<RunEnd, { kind: 'unit' }>).sheet as EndSheet
  const outermost = posts.find((post) => post.unit === unit && post.ownNumber === 1)
  if (outermost === undefined) throw new RangeError(`the layout has no post 1 of ${sheet.id}`)
  const inward = sheet.posts[0]!.along
  return unit === 'first' ? outermost.alongInches - inward : outermost.alongInches + inward
}
