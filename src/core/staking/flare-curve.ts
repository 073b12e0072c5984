import { rootBetween } from '../geometry/root.ts'
import type { Flare } from '../hardware/hardware-sheet.ts'
import { inches, type Metres } from '../units/quantity.ts'

/** A flare on a straight road, by the distance `q` along the rail from where it begins; all in m. */
export interface FlareCurve {
  /** Length of rail over which it runs out. */
  readonly length: Metres
  /** Offset at its end. */
  readonly offset: Metres
  /** Distance along the road from where it begins. */
  along(q: Metres): Metres
  /** Offset square to the road. */
  away(q: Metres): Metres
  /** Offset gained for each metre of rail: the sine of its angle to the road. */
  slope(q: Metres): number
}

/** The curve of a sheet's flare at its nominal offset; null when the sheet states none. */
export function flareCurve(flare: Flare): FlareCurve | null {
  const { nominal, unit } = flare.offset
  if (nominal === 'notStated') return null
  const offset = nominal * { in: 0.0254, ft: 0.3048, mm: 0.001, m: 1 }[unit]
  const length = inches(flare.overInches)
  return flare.shape === 'straight' || offset === 0 ? straightFlare(length, offset) : parabolicFlare(length, offset)
}

/** The offset grows evenly along the rail. */
function straightFlare(length: Metres, offset: Metres): FlareCurve {
  const slope = offset / length
  const cosine = Math.sqrt(1 - slope * slope)
  return { length, offset, along: (q) => q * cosine, away: (q) => q * slope, slope: () => slope }
}

/**
 * y = E (x/X)², where x runs along the road and X is the road that `length` m of rail reach.
 * @source design-value tables of the trade: the 37.5 ft, 4 ft eccentric flare is drawn in this form
 */
export function parabolicFlare(length: Metres, offset: Metres): FlareCurve {
  // The road is shorter than the rail by no more than the offset, and no shorter than the chord.
  const road = rootBetween((x) => parabolaLength(x, offset, x) - length, length - offset, length, 1e-12)
  const along = (q: Metres): Metres =>
    q <= 0 ? 0 : rootBetween((x) => parabolaLength(road, offset, x) - q, 0, Math.min(q, road * 1.000001), 1e-12)
  const steepness = (q: Metres): number => (2 * offset * along(q)) / (road * road)
  return {
    length,
    offset,
    along,
    away: (q) => offset * (along(q) / road) ** 2,
    slope: (q) => steepness(q) / Math.hypot(1, steepness(q)),
  }
}

/** Length along y = offset (x/road)² from 0 to `x`: (x/2)√(1+k²x²) + asinh(kx)/2k with k = 2 offset/road². */
export function parabolaLength(road: Metres, offset: Metres, x: Metres): Metres {
  const k = (2 * offset) / (road * road)
  return (x / 2) * Math.hypot(1, k * x) + Math.asinh(k * x) / (2 * k)
}
