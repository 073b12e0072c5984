import { exactLength, type LengthUnit } from '../units/exact-length.ts'
import { printLength } from '../units/print-length.ts'
import { printValue } from '../units/print-value.ts'
import { isLengthUnit, type Unit } from '../units/quantity-kinds.ts'

/** `27 3/4 in`, `4 ft`, `787 mm`: a length in its own unit, fractions where the trade writes them. */
export function lengthText(value: number, unit: LengthUnit): string {
  const exact = exactLength(value, unit)
  switch (unit) {
    case 'in':
      return printLength(exact, 'inches')
    case 'ft':
      return printLength(exact, 'decimal-feet')
    case 'mm':
      return printLength(exact, 'millimetres')
    case 'm':
      return printLength(exact, 'metres')
  }
}

/** A value of any kind in its own unit. */
export const quantityText = (value: number, unit: Unit): string =>
  isLengthUnit(unit) ? lengthText(value, unit) : printValue(value, unit)

/** `9 ft 4 1/2 in`: a length along the rail as the trade says it. */
export const feetInchesText = (inches: number): string => printLength(exactLength(inches, 'in'), 'feet-inches')
