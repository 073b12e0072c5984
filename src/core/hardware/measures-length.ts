import { isLengthUnit, type Unit } from '../units/quantity-kinds.ts'
import type { Dimension } from './hardware-sheet.ts'

/** Whether the limits are those of a length. */
export const measuresLength = (limits: Dimension<Unit>): limits is Dimension => isLengthUnit(limits.unit)
