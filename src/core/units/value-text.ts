import { err, ok, type Result } from '../result.ts'
import { parseDecimal } from './decimal-text.ts'
import type { TextPlace } from './length-problem.ts'
import { parseLength } from './length-text.ts'
import { endOf, scanLength, tokenAt } from './length-tokens.ts'
import {
  exactValue,
  isLengthUnit,
  isSigned,
  kindOf,
  type OtherUnit,
  otherUnits,
  type Steps,
  spellingsOf,
  stepsPer,
  type Unit,
} from './quantity-kinds.ts'
import type { ValueProblem } from './value-problem.ts'

export interface ParsedValue {
  readonly value: Steps
  /** The unit as written; feet and inches together count as `in`. */
  readonly unit: Unit
  /** What the text's last place is worth. */
  readonly resolution: Steps
}

/**
 * The value that `text` states: a length as `parseLength` reads it, or a whole number or decimal with a unit of another
 * kind, as `2.5 %`, `-3°`, `25 lbf·ft`, `34 N·m`; a count is a whole number. Only slopes and angles go below nothing.
 *
 * @param bareUnit  unit of a number that names none; null when the unit must be written
 */
export function parseValue(text: string, bareUnit: Unit | null): Result<ParsedValue, ValueProblem> {
  const lengthUnit = bareUnit === null || isLengthUnit(bareUnit) ? bareUnit : null
  const asLength = (): Result<ParsedValue, ValueProblem> => {
    const length = parseLength(text, lengthUnit)
    if (!length.ok) return err({ kind: 'length', problem: length.error })
    const { nanometres: value, unit, resolution } = length.value
    return ok({ value, unit, resolution })
  }
  const given = unitAtEnd(text)
  if (given === null && lengthUnit === bareUnit) return asLength()

  const scanned = scanLength(text)
  if (!scanned.ok) return err({ kind: 'length', problem: scanned.error })
  const tokens = scanned.value
  const sign = tokenAt(tokens, 0)
  if (sign.kind === 'end') return err({ kind: 'empty', at: 0, found: '' })
  const isNegative = sign.kind === 'hyphen' || sign.kind === 'minus'
  const at = isNegative || sign.kind === 'plus' ? 1 : 0
  const number = tokenAt(tokens, at)
  if (number.kind === 'glyph' || tokenAt(tokens, at + 1).kind === 'slash' || tokenAt(tokens, at + 1).kind === 'glyph')
    return err({ kind: 'fraction', at: number.at, found: number.found })
  if (number.kind !== 'number')
    return err({ kind: 'length', problem: { kind: 'not-a-number', at: number.at, found: number.found } })
  const rest = text.slice(endOf(number)).trim()
  const unit = rest === '' ? bareUnit : given
  if (unit === null || isLengthUnit(unit) || (rest !== '' && !spellingsOf(unit).includes(rest))) {
    // It may be a length where something else is measured: whoever asked says so.
    const length = asLength()
    return length.ok ? length : err({ kind: 'unknown unit', at: endOf(number), found: text.slice(endOf(number)) })
  }
  return decimalValue(number, unit, isNegative)
}

/** The unit of another kind than length that stands at the end of the text; null for none. */
function unitAtEnd(text: string): OtherUnit | null {
  const end = text.trim()
  return otherUnits.find((unit) => spellingsOf(unit).some((written) => end.endsWith(written))) ?? null
}

function decimalValue(number: TextPlace, unit: OtherUnit, isNegative: boolean): Result<ParsedValue, ValueProblem> {
  const { numerator, denominator } = parseDecimal(number.found)
  const kind = kindOf(unit)
  if (kind === 'count' && denominator !== 1n) return err({ kind: 'not whole', ...placeOf(number) })
  if (isNegative && numerator !== 0n && !isSigned(kind)) return err({ kind: 'below zero', ...placeOf(number) })
  if (denominator > 1_000_000n) return err({ kind: 'too fine', ...placeOf(number) })
  const size = Number(number.found)
  if (!Number.isSafeInteger(Math.round(size * stepsPer(unit)))) return err({ kind: 'too large', ...placeOf(number) })
  const value = exactValue(isNegative ? -size : size, unit) + 0
  return ok({ value, unit, resolution: Math.max(1, Math.round(stepsPer(unit) / Number(denominator))) })
}

const placeOf = ({ at, found }: TextPlace): TextPlace => ({ at, found })
