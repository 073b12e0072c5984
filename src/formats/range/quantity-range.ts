import { toMetres } from '../../core/units/exact-length.ts'
import {
  isLengthUnit,
  kindOf,
  type OtherUnit,
  type QuantityKind,
  type Steps,
  stepsPer,
  type Unit,
  valueIn,
} from '../../core/units/quantity-kinds.ts'
import type { ShapeProblem } from '../../words/problems/shape.ts'
import { lengthFault } from './range-faults.ts'

interface QuantityRange {
  readonly unit: OtherUnit
  readonly least: number
  readonly most: number
}

/** How far a value that is no length may go, as a reading or on a sheet: our judgement, to catch slips of the keyboard. */
const farthest: Readonly<Record<Exclude<QuantityKind, 'length'>, QuantityRange>> = {
  slope: { unit: '%', least: -1000, most: 1000 },
  angle: { unit: '°', least: -360, most: 360 },
  torque: { unit: 'N·m', least: 0, most: 10_000 },
  force: { unit: 'kN', least: 0, most: 1000 },
  count: { unit: 'count', least: 0, most: 100_000 },
}

/** What was expected of a value that is no length and lies outside its range; null inside it. */
export function quantityFault(value: number, unit: OtherUnit): ShapeProblem | null {
  const { least, most, unit: at } = rangeOf(unit)
  if (unit === 'count' && !Number.isInteger(value)) return { kind: 'value of type', type: 'whole number' }
  const size = (value * stepsPer(unit)) / stepsPer(at)
  return size >= least && size <= most ? null : { kind: 'value between', least, most, unit: at }
}

/** What was expected of a value that no reading can have; null where it can be one. */
export const readingValueFault = (value: Steps, unit: Unit): ShapeProblem | null =>
  isLengthUnit(unit) ? lengthFault('readingValue', toMetres(value)) : quantityFault(valueIn(value, unit), unit)

/** The same of a step or an uncertainty, in `unit`, which is more than nothing. */
export function doubtFault(name: 'resolution' | 'uncertainty', value: number, unit: Unit): ShapeProblem | null {
  if (isLengthUnit(unit)) return lengthFault(name, (value * stepsPer(unit)) / 1e9)
  const { most, unit: at } = rangeOf(unit)
  return value > 0 && (value * stepsPer(unit)) / stepsPer(at) <= most
    ? null
    : { kind: 'value above zero, at most', most, unit: at }
}

const rangeOf = (unit: OtherUnit): QuantityRange => farthest[kindOf(unit) as Exclude<QuantityKind, 'length'>]
