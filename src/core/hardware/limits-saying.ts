import type { Unit } from '../units/quantity-kinds.ts'
import type { Dimension } from './hardware-sheet.ts'

/** The limits of a dimension in words, in the unit that its source has them in. */
export interface LimitsSaying extends Pick<Dimension<Unit>, 'low' | 'high' | 'nominal' | 'unit'> {
  readonly kind: 'limits'
}

export const limitsOf = ({ low, high, nominal, unit }: Dimension<Unit>): LimitsSaying => ({
  kind: 'limits',
  ...{ low, high, nominal, unit },
})
