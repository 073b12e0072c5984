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
import { lengthFault, plain } from './range-faults.ts'

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

/** The kind as it follows `expected` or `found`. */
export const aKind = (kind: QuantityKind): string => (kind === 'angle' ? 'an angle' : `a ${kind}`)

/** What was expected of a value that is no length and lies outside its range; null inside it. */
export function quantityFault(value: number, unit: OtherUnit): string | null {
  const { least, most, unit: at } = rangeOf(unit)
  if (unit === 'count' && !Number.isInteger(value)) return 'a whole number'
  const size = (value * stepsPer(unit)) / stepsPer(at)
  return size >= least && size <= most
    ? null
    : `${aKind(kindOf(unit))} of ${plain(least)} ${at} to ${plain(most)} ${at}`
}

/** What was expected of a value that no reading can have; null where it can be one. */
export const readingValueFault = (value: Steps, unit: Unit): string | null =>
  isLengthUnit(unit) ? lengthFault('readingValue', toMetres(value)) : quantityFault(valueIn(value, unit), unit)

/** The same of a step or an uncertainty, in `unit`, which is more than nothing. */
export function doubtFault(name: 'resolution' | 'uncertainty', value: number, unit: Unit): string | null {
  if (isLengthUnit(unit)) return lengthFault(name, (value * stepsPer(unit)) / 1e9)
  const { most, unit: at } = rangeOf(unit)
  return value > 0 && (value * stepsPer(unit)) / stepsPer(at) <= most
    ? null
    : `${aKind(kindOf(unit))} of more than 0, at most ${plain(most)} ${at}`
}

const rangeOf = (unit: OtherUnit): QuantityRange => farthest[kindOf(unit) as Exclude<QuantityKind, 'length'>]
