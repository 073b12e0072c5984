import { feetInchesText, lengthText, quantityText } from '../core/hardware/dimension-text.ts'
import { printValue } from '../core/units/print-value.ts'
import { isLengthUnit, type Unit } from '../core/units/quantity-kinds.ts'
import { inUnits } from './in-units.ts'
import type { OwnWords } from './own-words.ts'
import type { Lengths, Print, Printers } from './print.ts'
import type { Saying } from './saying.ts'

/** What a language brings along. */
export interface Words {
  readonly language: Print['language']
  readonly printers: Printers<Saying>
  readonly joints: Readonly<Record<'and' | 'or', string>>
  /** Null in English, where each part comes with what shows it. */
  readonly own: OwnWords | null
}

/** The words of one language with lengths in `units`. */
export function printIn({ language, printers, joints, own }: Words, units: Print['units']): Print {
  const print: Print = {
    ...lengths(units),
    language,
    units,
    say: (said) => (printers[said.kind] as (saying: Saying, print: Print) => string)(said, print),
    theirs: (text) => text,
    moment: (at) => new Intl.DateTimeFormat(language, { dateStyle: 'medium', timeStyle: 'short' }).format(new Date(at)),
    day: (day) => new Intl.DateTimeFormat(language, { dateStyle: 'full' }).format(new Date(`${day}T12:00`)),
    pick: (words) => words[language],
    own: (part, english) => (own === null ? english : own[part]),
    list: (parts, joint) =>
      parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')} ${joints[joint]} ${parts.at(-1)}`,
  }
  return print
}

function lengths(units: Print['units']): Lengths {
  const written: Lengths['written'] = (text, value, unit) => {
    const led = inUnits(value, unit, units)
    return led === null ? text : `${led} (${text})`
  }
  const alone: Lengths['written'] = (text, value, unit) => inUnits(value, unit, units) ?? text
  return {
    length: (value, unit) => written(lengthText(value, unit), value, unit),
    quantity: (value, unit) => written(quantityText(value, unit), value, unit),
    feetInches: (inches) => written(feetInchesText(inches), inches, 'in'),
    written,
    measured: (value, unit) => written(measuredText(value, unit), value, unit),
    decimal: (value, unit) => written(decimalText(value, unit), value, unit),
    short: {
      length: (value, unit) => alone(lengthText(value, unit), value, unit),
      feetInches: (inches) => alone(feetInchesText(inches), inches, 'in'),
      written: alone,
    },
  }
}

const measuredText = (value: number, unit: Unit): string =>
  unit === 'in' && !Number.isInteger(value * 64) ? decimalText(value, unit) : quantityText(value, unit)

const decimals = { in: 3, ft: 3, mm: 1, m: 4, '%': 2, '°': 2, lbf·ft: 1, N·m: 1, lbf: 0, kN: 2, count: 0 } as const
const decimalText = (value: number, unit: Unit): string =>
  isLengthUnit(unit) ? `${value.toFixed(decimals[unit])} ${unit}` : printValue(value, unit, decimals[unit])
