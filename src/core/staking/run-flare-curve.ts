import { flareBends } from '../layout/run-flare.ts'
import { err, ok, type Result } from '../result.ts'
import { inches, type Metres } from '../units/quantity.ts'
import type { Barrier } from './barrier.ts'
import type { FlareCurve } from './flare-curve.ts'

/** A flare of the run that would bend rail which has to be straight, or whose place is fixed. */
export type MisplacedFlare =
  | {
      readonly kind: 'flare-inside-unit'
      readonly end: 'first' | 'second'
      readonly sheet: string
      /** Where the flare would begin, and where the unit or its own flare ends; inches along the rail from post 1. */
      readonly flareInches: number
      readonly unitInches: number
    }
  | {
      readonly kind: 'flare-at-fixed-end'
      readonly end: 'first' | 'second'
      readonly closedBy: 'standing splice' | 'bridge end'
    }

/** A flare of the run with that of the end unit on it, and where it begins. */
interface FlaredEnd {
  /** Distance along the rail from post 1. */
  readonly bend: Metres
  readonly curve: FlareCurve
}

/**
 * The flare of the run toward one end, carried on through the end unit; null where the run has none there.
 * @param unitCurve  the unit's own flare; null where it has none
 * @param unitInner  where the unit's own flare begins, m along the rail from post 1
 */
export function flaredEnd(
  barrier: Barrier,
  end: 'first' | 'second',
  unitCurve: FlareCurve | null,
  unitInner: Metres,
): Result<FlaredEnd | null, MisplacedFlare> {
  const { layout, flare } = barrier
  const along = flareBends(layout, flare)[end]
  if (flare === null || along === null) return ok(null)
  const closing = barrier[end]
  if (closing.kind !== 'unit') return err({ kind: 'flare-at-fixed-end', end, closedBy: 'standing splice' })
  if (closing.sheet.kind === 'bridge end') return err({ kind: 'flare-at-fixed-end', end, closedBy: 'bridge end' })
  const outward = end === 'first' ? -1 : 1
  const joint = innerEnd(barrier, end)
  const isInside = (place: number) => outward * (place - along) < 0
  const unitInches = unitCurve !== null && isInside(unitInner / inches(1)) ? unitInner / inches(1) : joint
  if (isInside(unitInches))
    return err({ kind: 'flare-inside-unit', end, sheet: closing.sheet.id, flareInches: along, unitInches })
  const bend = inches(along)
  const tip = inches(end === 'first' ? layout.posts[0]!.alongInches : layout.posts.at(-1)!.alongInches)
  const length = Math.abs(tip - bend)
  const sine = 1 / Math.hypot(flare.rate, 1)
  return ok({
    bend,
    curve: unitCurve === null ? straightOut(length, sine) : carriedOn(sine, outward * (unitInner - bend), unitCurve),
  })
}

/** Where the end unit's own posts and panels end toward the run, inches along the rail from post 1. */
function innerEnd({ layout }: Barrier, end: 'first' | 'second'): number {
  const places = [
    ...layout.posts.filter(({ unit }) => unit === end).map(({ alongInches }) => alongInches),
    ...layout.panels.filter(({ unit }) => unit === end).flatMap(({ fromInches, toInches }) => [fromInches, toInches]),
  ]
  return end === 'first' ? Math.max(...places) : Math.min(...places)
}

function straightOut(length: Metres, sine: number): FlareCurve {
  const cosine = Math.sqrt(1 - sine * sine)
  return { length, offset: length * sine, along: (q) => q * cosine, away: (q) => q * sine, slope: () => sine }
}

/**
 * A straight flare for `before` m of rail, then `curve` measured from that straight line carried on: the unit's own line
 * is turned by the angle θ of the run's flare.
 *
 * along = b cos θ + x cos θ - y sin θ, away = b sin θ + x sin θ + y cos θ, with x and y the unit's own.
 */
function carriedOn(sine: number, before: Metres, curve: FlareCurve): FlareCurve {
  const cosine = Math.sqrt(1 - sine * sine)
  const along = (q: Metres): Metres =>
    q <= before ? q * cosine : before * cosine + curve.along(q - before) * cosine - curve.away(q - before) * sine
  const away = (q: Metres): Metres =>
    q <= before ? q * sine : before * sine + curve.along(q - before) * sine + curve.away(q - before) * cosine
  const length = before + curve.length
  return {
    length,
    offset: away(length),
    along,
    away,
    slope: (q) => (q <= before ? sine : Math.sin(Math.asin(sine) + Math.asin(curve.slope(q - before)))),
  }
}
