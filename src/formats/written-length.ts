import { err, ok, type Result } from '../core/result.ts'
import { exactLength, type LengthUnit, nanometresPer } from '../core/units/exact-length.ts'
import { type ParsedLength, parseLength } from '../core/units/length-text.ts'
import type { ProblemSaying } from '../words/problems/problem-saying.ts'

/**
 * The length that a file gives as a text or a number, or what was expected instead.
 *
 * A number counts like the same digits as a text. One finer than whole nanometres, as only a computation gives it, is
 * rounded to them.
 * @param bareUnit unit of a value that names none
 */
export function writtenLength(given: string | number, bareUnit: LengthUnit): Result<ParsedLength, ProblemSaying> {
  const parsed = parseLength(String(given), bareUnit)
  if (parsed.ok) return parsed
  if (typeof given === 'string') return err({ kind: 'a length', not: parsed.error })
  if (!Number.isSafeInteger(Math.round(given * nanometresPer[bareUnit]))) return err({ kind: 'length too great' })
  return ok({ nanometres: exactLength(given, bareUnit), unit: bareUnit, resolution: 1 })
}
