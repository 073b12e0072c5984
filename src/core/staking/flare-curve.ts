import { rootBetween } from '../geometry/root.ts'
import type { Flare } from '../hardware/hardware-sheet.ts'
import type { Metres } from '../units/quantity.ts'

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

/** The flare of one shape that reaches `offset` after `length` m of rail. */
export function flareCurve(shape: Flare['shape'], length: Metres, offset: Metres): FlareCurve {
  return shape === 'straight' || offset === 0 ? straightFlare(length, offset) : parabolicFlare(length, offset)
}

/** The offset grows evenly along the rail. */
function straightFlare(length: Metres, offset: Metres): FlareCurve {
  const slope = offset / length
  const cosine = cosineOf(slope)
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

/**
 * The same flare of straight panels: at the corners it has the offset that `curve` has there, between them none bends.
 * @param corners  rising distances along the rail between 0 and the length of the flare, where one panel meets the next
 */
export function alongPanels(curve: FlareCurve, corners: readonly Metres[]): FlareCurve {
  const { length, offset } = curve
  const ends = [0, ...corners, length]
  const pieces = ends.slice(1).map((to, i) => {
    const from = ends[i]!
    return { from, to, away: curve.away(from), slope: (curve.away(to) - curve.away(from)) / (to - from), along: 0 }
  })
  for (const [i, piece] of pieces.entries()) {
    const before = pieces[i - 1]
    if (before !== undefined) piece.along = before.along + (piece.from - before.from) * cosineOf(before.slope)
  }
  const at = (q: Metres) => pieces.find(({ to }) => q <= to) ?? pieces[pieces.length - 1]!
  return {
    length,
    offset,
    along: (q) => at(q).along + (q - at(q).from) * cosineOf(at(q).slope),
    away: (q) => at(q).away + (q - at(q).from) * at(q).slope,
    slope: (q) => at(q).slope,
  }
}

const cosineOf = (sine: number): number => Math.sqrt(1 - sine * sine)

/** Length along y = offset (x/road)² from 0 to `x`: (x/2)√(1+k²x²) + asinh(kx)/2k with k = 2 offset/road². */
export function parabolaLength(road: Metres, offset: Metres, x: Metres): Metres {
  const k = (2 * offset) / (road * road)
  return (x / 2) * Math.hypot(1, k * x) + Math.asinh(k * x) / (2 * k)
}
