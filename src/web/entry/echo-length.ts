import { type LengthUnit, lengthIn, type Nanometres, nanometresPer } from '../../core/units/exact-length.ts'
import { printLength } from '../../core/units/print-length.ts'

/**
 * `length` as it was understood and in the other unit: `6 ft 3 in = 75 in = 1.905 m`. A text that is not exactly the
 * length stands after `≈`.
 * @param unit  the unit it was given in, which comes first
 */
export function echoLength(length: Nanometres, unit: LengthUnit): string {
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
