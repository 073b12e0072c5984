import type { Dimension } from '../../../core/hardware/hardware-sheet.ts'
import type { Unit } from '../../../core/layout/layout.ts'
import { exactLength, lengthIn } from '../../../core/units/exact-length.ts'
import { printLength } from '../../../core/units/print-length.ts'
import type { StripInput } from '../strip/strip-input.ts'

/**
 * Sizes, in inches, that the sheets do not state and that are drawn as is common practice: a W-beam 12 1/4 deep whose
 * panels lap 12 1/2 at a splice, post bolt holes 1 below the top of post more than on the rail's middle, blocks 6 x 14.
 */
export const drawnSizes = {
  beam: 12.25,
  halfLap: 6.25,
  postAboveRail: 1,
  postWidth: 4,
  breakawayWidth: 6,
  blockWidth: 6,
  blockHeight: 14,
  /** Where a post is cut off below finish grade. */
  cutBelow: 24,
} as const

/** The heights that are limited for the rail of `unit`, from its sheet. */
export const railHeightOf = (input: StripInput, unit: Unit): Dimension =>
  (unit === 'run' ? input.system : (input[unit].sheet ?? input.system)).railHeight

/** Top of rail above finish grade as drawn: the nominal height, else the limit that is stated; null when none is. */
export function drawnRailTop(height: Dimension): number | null {
  const value = [height.nominal, height.low, height.high].find((one) => one !== 'notStated')
  return value === undefined ? null : lengthIn(exactLength(value, height.unit), 'in')
}

/** A height as the drawing writes it: `27 3/4 in`, or millimetres. */
export const heightLabel = (units: StripInput['units'], inches: number): string =>
  printLength(exactLength(inches, 'in'), units === 'metric' ? 'millimetres' : 'inches')
