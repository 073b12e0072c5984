import type { QuantityKind } from '../../../core/units/quantity-kinds.ts'

/** The kind of a quantity as it follows what was expected or found. */
export const aQuantity: Readonly<Record<QuantityKind, string>> = {
  length: 'una longitud',
  slope: 'una pendiente',
  angle: 'un ángulo',
  torque: 'un par de apriete',
  force: 'una fuerza',
  count: 'una cantidad',
}
