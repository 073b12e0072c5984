import { exposureText } from '../hardware/crashworthy-end.ts'
import { quantityText } from '../hardware/dimension-text.ts'
import { testReason } from '../hardware/test-text.ts'
import type { Side } from '../measurement/reading.ts'
import { printValue } from '../units/print-value.ts'
import { isLengthUnit, type Unit } from '../units/quantity-kinds.ts'
import type { Measured, VerdictReason } from './verdict.ts'

/** The reason of a verdict in plain words, without the rule itself. */
export function describeReason(because: VerdictReason): string {
  switch (because.kind) {
    case 'measured':
      return describeMeasured(because)
    case 'chosen':
      return because.label
    case 'confirmed':
      return because.yes ? 'confirmed' : 'not confirmed'
    case 'nobody looked':
      return 'no reading'
    case 'could not be seen':
      return 'could not be seen'
    case 'set aside':
      return `set aside by ${because.by}: ${because.because}`
    case 'may not be set aside':
      return `set aside by ${because.by}, which the sheet does not allow: ${because.because}`
    case 'readings missing':
      return `no direct reading, and these are missing to compute it: ${because.missing.join(', ')}`
    case 'answer of another kind':
      return `the reading gives no ${because.expected}`
    case 'no limit stated':
      return 'the sheet states no limit'
    case 'side not stated':
      return 'side not stated: whether it lies away from traffic or toward it'
    case 'criteria':
      return testReason(because.hardware, because.at, because.answer)
    case 'crashworthy':
      return exposureText(because.sheet, because.exposure)
  }
}

/** `28 1/2 in, 1 1/2 in outside the limit; ± 0.24 in (k = 2); probability of conformity under 0.1 %` */
function describeMeasured(because: Measured): string {
  const { unit, margin, uncertainty, guard, probability, computed } = because
  const far = measuredText(Math.abs(margin), unit)
  const side = margin < 0 ? `${far} outside the limit` : margin === 0 ? 'on the limit' : `${far} inside the limit`
  const rule = guard > 0 && Math.abs(margin) < guard ? ', within the guard band' : ''
  const percent = probability > 0.999 ? 'over 99.9' : probability < 0.001 ? 'under 0.1' : (probability * 100).toFixed(1)
  const how = computed ? 'computed ' : ''
  const either = because.side === 'not stated' ? ' on either side' : ''
  return `${how}${valueText(because)}, ${side}${rule}${either}; ± ${decimalText(2 * uncertainty, unit)} (k = 2); probability of conformity ${percent} %`
}

/** A measured value in words; of an offset with its side, as `48 in away from traffic`. */
export function valueText({ value, unit, side }: Pick<Measured, 'value' | 'unit' | 'side'>): string {
  if (side === undefined || value === 0) return measuredText(value, unit)
  const size = measuredText(Math.abs(value), unit)
  if (side === 'not stated') return `${size}, side not stated`
  return `${size} ${sideText(value < 0 ? 'toward' : 'away')}`
}

export const sideText = (side: Side): string => (side === 'away' ? 'away from traffic' : 'toward traffic')

/** As the trade writes it when that is exact; in decimals otherwise, so that no value is rounded onto a limit. */
export function measuredText(value: number, unit: Unit): string {
  return unit === 'in' && !Number.isInteger(value * 64) ? decimalText(value, unit) : quantityText(value, unit)
}

const decimals = { in: 3, ft: 3, mm: 1, m: 4, '%': 2, '°': 2, lbf·ft: 1, N·m: 1, lbf: 0, kN: 2, count: 0 } as const
const decimalText = (value: number, unit: Unit): string =>
  isLengthUnit(unit) ? `${value.toFixed(decimals[unit])} ${unit}` : printValue(value, unit, decimals[unit])
