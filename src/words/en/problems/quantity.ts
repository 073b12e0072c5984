import type { QuantityKind } from '../../../core/units/quantity-kinds.ts'

/** The kind of a quantity as it follows what was expected or found. */
export const aQuantity: Readonly<Record<QuantityKind, string>> = {
  length: 'a length',
  slope: 'a slope',
  angle: 'an angle',
  torque: 'a torque',
  force: 'a force',
  count: 'a count',
}
