import type { Dimension } from '../../../core/hardware/hardware-sheet.ts'
import type { Unit } from '../../../core/layout/layout.ts'
import { exactLength } from '../../../core/units/exact-length.ts'
import { printLength } from '../../../core/units/print-length.ts'
import type { StripInput } from '../strip/strip-input.ts'

/** The heights that are limited for the rail of `unit`, from its sheet. */
export const railHeightOf = (input: StripInput, unit: Unit): Dimension =>
  (unit === 'run' ? input.system : (input[unit].sheet ?? input.system)).railHeight

/** A height as the drawing writes it: `27 3/4 in`, or millimetres. */
export const heightLabel = (units: StripInput['units'], inches: number): string =>
  printLength(exactLength(inches, 'in'), units === 'metric' ? 'millimetres' : 'inches')
