import type { LongitudinalSheet } from '../hardware/hardware-sheet.ts'
import type { EndSide } from './end-side.ts'
import { type Sixteenths, sixteenths } from './sixteenths.ts'

/** Where the two ends stand: `origin` is the first end's origin from the datum, `length` the rail between the origins. */
export interface Frame {
  readonly first: EndSide
  readonly second: EndSide
  readonly origin: Sixteenths
  readonly length: Sixteenths
}

/** The run's own posts stand at `from + k * full`, strictly between the last posts of the two units. */
export interface PostLattice {
  readonly from: Sixteenths
  readonly to: Sixteenths
  readonly full: Sixteenths
}

export function postLattice(frame: Frame, system: LongitudinalSheet): PostLattice {
  const from = Math.max(...frame.first.posts)
  const to = frame.length - Math.max(...frame.second.posts)
  return { from, to, full: sixteenths(system.spacings.full.inches) }
}

/** A stretch counted from the datum, as it lies from the first end's origin. */
export const shifted = (part: { readonly fromInches: number; readonly toInches: number }, frame: Frame) => ({
  from: sixteenths(part.fromInches) - frame.origin,
  to: sixteenths(part.toInches) - frame.origin,
})
