import { exactLength, type LengthUnit, lengthIn } from '../core/units/exact-length.ts'
import { printValue } from '../core/units/print-value.ts'
import { exactValue, valueIn } from '../core/units/quantity-kinds.ts'

/** `6 ft 3 in`, `27 3/4 in`, `5/8 in`, `2.5 ft`, `6-ft`; sizes of bolts such as `5/8 x 1 1/4 in` are names. `3 in a row` is no length, and
 * a length that has the same in metres beside it already is done. */
const customary =
  /(?<![\d/.-]|x |\d )(-?)(?:(\d+) ft (\d+ \d+\/\d+|\d+\/\d+|\d+) in|(\d+ \d+\/\d+|\d+\/\d+|\d+(?:\.\d+)?)[ -](in|ft))(?![\w/]| a row| the )(?<done> \(-?[\d.]+ mm?\))?/g
const metric = /(?<![\d/.-]|x |\d )(-?)(\d+(?:\.\d+)?) (mm|m)(?![\w/])(?<done> \(-?[\d.]+ (?:in|ft)\))?/g

/** Torques and forces, and of each what it is in the other system, with how many decimals. */
const torqueOrForce = {
  us: /(-?\d+(?:\.\d+)?) (N·m|kN)(?![\w·])/g,
  metric: /(-?\d+(?:\.\d+)?) (lbf·ft|lbf)(?![\w·])/g,
}
const others = {
  N·m: { unit: 'lbf·ft', decimals: 1 },
  kN: { unit: 'lbf', decimals: 0 },
  lbf·ft: { unit: 'N·m', decimals: 1 },
  lbf: { unit: 'kN', decimals: 3 },
} as const

/**
 * The text with every length, torque and force that is given in the other system followed by the same in `units`: `31 in (787.4 mm)`. What
 * is published stays as it is published; beside it stands the same value, never one rounded to other limits.
 */
export const inBothUnits = (text: string, units: 'us' | 'metric'): string =>
  withOthers(withLengths(text, units, inBrackets), units, inBrackets)

const inBrackets = (given: string, other: string): string => `${given} (${other})`

/** The text with every length, torque and force in `units` alone, for where there is room for one. */
export const inOneUnit = (text: string, units: 'us' | 'metric'): string =>
  withOthers(withLengths(text, units, alone), units, alone)

const alone = (_: string, other: string): string => other

function withLengths(text: string, units: 'us' | 'metric', print: (given: string, other: string) => string): string {
  if (units === 'us')
    return text.replaceAll(metric, (given, sign: string, value: string, unit: LengthUnit, done: string | undefined) => {
      if (done !== undefined) return given
      const inches = lengthIn(exactLength(Number(value), unit), 'in')
      return print(given, `${sign}${inches < 120 ? `${plain(inches, 2)} in` : `${plain(inches / 12, 2)} ft`}`)
    })
  return text.replaceAll(
    customary,
    (given, sign: string, feet: string | undefined, inches: string, value: string, unit: LengthUnit, done?: string) => {
      if (done !== undefined) return given
      const total =
        feet === undefined ? numberOf(value) * (unit === 'ft' ? 12 : 1) : Number(feet) * 12 + numberOf(inches)
      return print(given, `${sign}${metricText(total)}`)
    },
  )
}

function withOthers(text: string, system: 'us' | 'metric', print: (given: string, other: string) => string): string {
  return text.replaceAll(torqueOrForce[system], (given: string, value: string, unit: keyof typeof others) => {
    const { unit: other, decimals } = others[unit]
    return print(given, printValue(Number(valueIn(exactValue(Number(value), unit), other).toFixed(decimals)), other))
  })
}

/** Millimetres below 1 m, metres above; all decimals where they are few, as 27 3/4 in is 704.85 mm. */
function metricText(inches: number): string {
  const millimetres = inches * 25.4
  return millimetres < 1000 ? `${fewest(millimetres, 2, 1)} mm` : `${fewest(millimetres / 1000, 4, 3)} m`
}

/** Exact with at most `most` decimals, else rounded to `fewer`. */
function fewest(value: number, most: number, fewer: number): string {
  const isExact = Math.abs(value - Number(value.toFixed(most))) < 1e-9
  return plain(value, isExact ? most : fewer)
}

const plain = (value: number, decimals: number): string => String(Number(value.toFixed(decimals)))

/** `27 3/4` as a number. */
function numberOf(text: string): number {
  return text.split(' ').reduce((sum, part) => {
    const [numerator, denominator = 1] = part.split('/').map(Number)
    return sum + numerator! / denominator
  }, 0)
}
