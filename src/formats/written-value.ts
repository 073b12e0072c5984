import type { MeasuredAnswer } from '../core/measurement/reading.ts'
import { err, ok, type Result } from '../core/result.ts'
import { printDecimal } from '../core/units/decimal-text.ts'
import { type LengthUnit, lengthIn, type Nanometres } from '../core/units/exact-length.ts'
import { type ParsedLength, parseLength } from '../core/units/length-text.ts'
import { printLength } from '../core/units/print-length.ts'
import { printValue } from '../core/units/print-value.ts'
import { isLengthUnit, type Unit, valueIn } from '../core/units/quantity-kinds.ts'
import { type ParsedValue, parseValue } from '../core/units/value-text.ts'
import type { ProblemSaying } from '../words/problems/problem-saying.ts'
import { writtenLength } from './written-length.ts'

/**
 * The value that a file gives as a text or a number, of whichever kind its unit tells, or what was expected instead.
 * @param bareUnit unit of a value that names none
 */
export function writtenValue(given: string | number, bareUnit: Unit): Result<ParsedValue, ProblemSaying> {
  if (isLengthUnit(bareUnit) && typeof given === 'number') {
    const length = writtenLength(given, bareUnit)
    return length.ok ? ok({ ...length.value, value: length.value.nanometres }) : length
  }
  const parsed = parseValue(String(given), bareUnit)
  if (parsed.ok) return parsed
  const { error } = parsed
  return err(
    error.kind === 'length' && isLengthUnit(bareUnit)
      ? { kind: 'a length', not: error.problem }
      : { kind: 'a value with its unit', not: error },
  )
}

/** The fields `value`, `unit` and `resolution` from which `writtenValue` gives the same value again. */
export function valueToText({ value, unit, resolution }: MeasuredAnswer): object {
  if (!isLengthUnit(unit)) {
    const stated = resolution === null ? {} : { resolution: printValue(valueIn(resolution, unit), unit) }
    return { value: valueIn(value, unit), unit, ...stated }
  }
  const stated =
    resolution === null ? {} : { resolution: exactTexts(resolution, unit)[0] ?? exactTexts(resolution, 'mm')[0] }
  const text = exactTexts(value, unit)[0]
  return text === undefined ? { value: lengthIn(value, unit), unit, ...stated } : { value: text, ...stated }
}

/** The ways to write `length` in `unit` exactly, the shortest first; none when it takes endless decimals. */
function exactTexts(length: Nanometres, unit: LengthUnit): string[] {
  const decimals = Array.from({ length: 10 }, (_, places) => `${printDecimal(length, unit, places)} ${unit}`)
  const candidates = unit === 'in' ? [printLength(length, 'inches'), ...decimals] : decimals
  return candidates.filter((text) => parsed(text)?.nanometres === length)
}

function parsed(text: string): ParsedLength | null {
  const length = parseLength(text, null)
  return length.ok ? length.value : null
}
