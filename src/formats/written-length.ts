import type { Answer } from '../core/measurement/reading.ts'
import { err, ok, type Result } from '../core/result.ts'
import { printDecimal } from '../core/units/decimal-text.ts'
import { exactLength, type LengthUnit, lengthIn, type Nanometres, nanometresPer } from '../core/units/exact-length.ts'
import { describeLengthProblem, type LengthProblem } from '../core/units/length-problem.ts'
import { type ParsedLength, parseLength } from '../core/units/length-text.ts'
import { printLength } from '../core/units/print-length.ts'

type LengthAnswer = Extract<Answer, { kind: 'length' }>

/**
 * The length that a file gives as a text or a number, or what was expected instead.
 *
 * A number counts like the same digits as a text. One finer than whole nanometres, as only a computation gives it, is
 * rounded to them.
 * @param bareUnit unit of a value that names none
 */
export function writtenLength(given: string | number, bareUnit: LengthUnit): Result<ParsedLength, string> {
  const parsed = parseLength(String(given), bareUnit)
  if (parsed.ok) return parsed
  if (typeof given === 'string') return err(expectedLength(parsed.error))
  if (!Number.isSafeInteger(Math.round(given * nanometresPer[bareUnit]))) return err('a length below 9007 km')
  return ok({ nanometres: exactLength(given, bareUnit), unit: bareUnit, resolution: 1 })
}

/** What was expected where a length text could not be read. */
export function expectedLength(problem: LengthProblem): string {
  const reason = describeLengthProblem(problem)
  return `a length (${reason.charAt(0).toLowerCase()}${reason.slice(1).replace(/\.$/, '')})`
}

/** The fields `value`, `unit` and `resolution` from which `writtenLength` gives the same length again. */
export function lengthToText({ value, unit, resolution }: LengthAnswer): object {
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
