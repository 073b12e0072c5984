import type { EndSheet, Flare } from '../hardware/hardware-sheet.ts'
import type { Layout } from '../layout/layout.ts'
import { exactLength, toMetres } from '../units/exact-length.ts'
import { inches, type Metres } from '../units/quantity.ts'
import { alongPanels, type FlareCurve, flareCurve } from './flare-curve.ts'

/** The flare of an end unit as its panels hang, counted from the unit's origin. */
export interface UnitFlare {
  /** Where the unit's origin lies, inches along the rail from post 1 of the run. */
  readonly originInches: number
  /** Rail from the origin to where the flare has run out, inches. */
  readonly overInches: number
  readonly curve: FlareCurve
  /** Where the rail bends inside the flare, rising distances from where it begins, m. */
  readonly corners: readonly Metres[]
  /** Whether panels bend between the corners. */
  readonly isCurved: boolean
}

type Pieces = Pick<Layout, 'posts' | 'panels'>

/**
 * The flare of the unit that closes `end`, drawn panel by panel; null when its sheet has none or states no nominal offset.
 *
 * A panel has no kink: the flare runs out at the splice nearest to the length that its sheet states, and where the sheet
 * asks for straight panels a parabola is a chord for each.
 */
export function unitFlare(layout: Pieces, end: 'first' | 'second', sheet: EndSheet): UnitFlare | null {
  const { flare, straightness } = sheet
  if (flare === 'none' || flare.offset.nominal === 'notStated') return null
  const originInches = unitOrigin(layout, end, sheet)
  const overInches = flaredRail(layout, end, sheet, flare)
  const offset = toMetres(exactLength(flare.offset.nominal, flare.offset.unit))
  const smooth = flareCurve(flare.shape, inches(overInches), offset)
  const isCurved = flare.shape === 'parabola' && straightness === 'notStated'
  if (flare.shape === 'straight' || isCurved) return { originInches, overInches, curve: smooth, corners: [], isCurved }
  const corners = splicesInward(layout, end, originInches)
    .filter((inward) => inward < overInches)
    .map((inward) => inches(overInches - inward))
    .sort((a, b) => a - b)
  return { originInches, overInches, curve: alongPanels(smooth, corners), corners, isCurved }
}

/** Where the flare of the unit that closes `end` has run out, inches along the rail from post 1; null where it has none. */
export function flareRunsOutAt(layout: Pieces, end: 'first' | 'second', sheet: EndSheet): number | null {
  if (sheet.flare === 'none') return null
  const inward = flaredRail(layout, end, sheet, sheet.flare)
  return unitOrigin(layout, end, sheet) + (end === 'first' ? inward : -inward)
}

/** The splice nearest to the length that the sheet states; of two as near the one farther in, which flares less. */
function flaredRail(layout: Pieces, end: 'first' | 'second', sheet: EndSheet, { overInches }: Flare): number {
  const splices = splicesInward(layout, end, unitOrigin(layout, end, sheet))
  return splices.reduce((best, one) => {
    const closer = Math.abs(one - overInches) - Math.abs(best - overInches)
    return closer < 0 || (closer === 0 && one > best) ? one : best
  }, splices[0] ?? overInches)
}

const splicesInward = ({ panels }: Pieces, end: 'first' | 'second', origin: number): readonly number[] =>
  panels
    .map(({ fromInches, toInches }) => (end === 'first' ? toInches - origin : origin - fromInches))
    .filter((inward) => inward > 0)

function unitOrigin({ posts }: Pieces, end: 'first' | 'second', sheet: EndSheet): number {
  const outermost = posts.find((post) => post.unit === end && post.ownNumber === 1)
  if (outermost === undefined) throw new RangeError(`the layout has no post 1 of ${sheet.id}`)
  const inward = sheet.posts[0]!.along
  return end === 'first' ? outermost.alongInches - inward : outermost.alongInches + inward
}
