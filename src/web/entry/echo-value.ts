import { type LengthUnit, lengthIn, type Nanometres, nanometresPer } from '../../core/units/exact-length.ts'
import { printLength } from '../../core/units/print-length.ts'
import { printValue } from '../../core/units/print-value.ts'
import {
  exactValue,
  isLengthUnit,
  kindOf,
  otherUnits,
  type Steps,
  type Unit,
  valueIn,
} from '../../core/units/quantity-kinds.ts'

/** `value` as it was understood, and in the other units of its kind: `25 lbf·ft ≈ 33.895 N·m`, `8`. */
export function echoValue(value: Steps, unit: Unit): string {
  if (isLengthUnit(unit)) return echoLength(value, unit)
  const others = otherUnits.filter((one) => one !== unit && kindOf(one) === kindOf(unit))
  return [
    printValue(valueIn(value, unit), unit),
    ...others.map((one) => {
      const rounded = Number(valueIn(value, one).toFixed(3))
      return `${exactValue(rounded, one) === value ? '=' : '≈'} ${printValue(rounded, one)}`
    }),
  ].join(' ')
}

/**
 * `length` as it was understood and in the other unit: `6 ft 3 in = 75 in = 1.905 m`. A text that is not exactly the
 * length stands after `≈`.
 * @param unit  the unit it was given in, which comes first
 */
function echoLength(length: Nanometres, unit: LengthUnit): string {
  const customary = inCustomary(length)
  const metric = inMetric(length)
  const texts = unit === 'in' || unit === 'ft' ? [...customary, metric] : [metric, ...customary]
  return texts.map(({ text, isExact }, i) => (i === 0 ? text : `${isExact ? '=' : '≈'} ${text}`)).join(' ')
}

interface Printed {
  readonly text: string
  readonly isExact: boolean
}

function inCustomary(length: Nanometres): readonly Printed[] {
  if (length % (nanometresPer.in / 64) !== 0) {
    const text = `${lengthIn(length, 'in').toFixed(3)} in`
    return [{ text, isExact: length % (nanometresPer.in / 1000) === 0 }]
  }
  const inches = { text: printLength(length, 'inches'), isExact: true }
  return Math.abs(length) < nanometresPer.ft
    ? [inches]
    : [{ text: printLength(length, 'feet-inches'), isExact: true }, inches]
}

function inMetric(length: Nanometres): Printed {
  if (Math.abs(length) >= nanometresPer.m)
    return { text: printLength(length, 'metres', { decimals: 4 }), isExact: length % 100_000 === 0 }
  return { text: printLength(length, 'millimetres', { decimals: 2 }), isExact: length % 10_000 === 0 }
}
