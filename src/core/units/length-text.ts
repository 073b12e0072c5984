import { err, ok, type Result } from '../result.ts'
import { type Ratio, ratioToNanometres } from './decimal-text.ts'
import { type LengthUnit, type Nanometres, nanometresPer } from './exact-length.ts'
import { type Amount, readAmount } from './length-amount.ts'
import type { LengthProblem } from './length-problem.ts'
import { endOf, type LengthToken, scanLength, tokenAt } from './length-tokens.ts'

export interface ParsedLength {
  readonly nanometres: Nanometres
  /** The unit as written; feet and inches together count as `in`. */
  readonly unit: LengthUnit
  /** What the text's last place is worth: 1/16 in for `27 12/16`, 0.01 in for `27.75`; never finer than 1 nm. */
  readonly resolution: Nanometres
}

/**
 * The length that `text` states, exactly.
 *
 * Read are whole numbers, decimals with a point, and halves to 64ths (`27 3/4`, `27-3/4"`, `27¾`), in inches, feet,
 * millimetres or metres, by mark or word; feet and inches together (`6'-3"`, `6 ft 3 1/2 in`, `6'3`); a sign before
 * all of it. A fraction of a foot is read before the word only (`12 1/2 ft`): before the mark (`27 3/4'`) it is more
 * likely a slip for inches. Nothing that could mean two lengths is read.
 *
 * @param bareUnit unit of a number that names none; null when the unit must be written
 * @returns the length, its unit and resolution; or where and why the text is refused
 * @example parseLength('27 3/4', 'in')  // { ok: true, value: { nanometres: 704_850_000, unit: 'in', resolution: 6_350_000 } }
 */
export function parseLength(text: string, bareUnit: LengthUnit | null): Result<ParsedLength, LengthProblem> {
  const scanned = scanLength(text)
  if (!scanned.ok) return scanned
  const tokens = scanned.value
  const sign = tokenAt(tokens, 0)
  if (sign.kind === 'end') return err({ kind: 'empty', at: 0, found: '' })
  const isNegative = sign.kind === 'hyphen' || sign.kind === 'minus'

  const first = readAmount(text, tokens, isNegative || sign.kind === 'plus' ? 1 : 0)
  if (!first.ok) return first
  const given = readUnit(text, tokens, first.value, bareUnit)
  if (!given.ok) return given
  const { unit, isMark, next } = given.value
  if (first.value.hasFraction && (unit === 'mm' || unit === 'm' || (unit === 'ft' && isMark)))
    return err({ kind: 'fraction-in-unit', unit, at: first.value.at, found: first.value.found })

  if (tokenAt(tokens, next).kind === 'end') return lengthOf(text, first.value.value, unit, isNegative)
  if (unit !== 'ft') return err(continuation(text, tokens, next, unit))
  const inches = readInches(text, tokens, first.value, next)
  return inches.ok ? lengthOf(text, inches.value, 'in', isNegative) : inches
}

interface GivenUnit {
  readonly unit: LengthUnit
  readonly isMark: boolean
  readonly next: number
}

/** The unit after `amount`, or `bareUnit` when the text ends there. */
function readUnit(
  text: string,
  tokens: readonly LengthToken[],
  amount: Amount,
  bareUnit: LengthUnit | null,
): Result<GivenUnit, LengthProblem> {
  const token = tokenAt(tokens, amount.next)
  if (token.kind === 'unit') return ok({ unit: token.unit, isMark: token.isMark, next: amount.next + 1 })
  if (token.kind === 'word') return err({ kind: 'unknown-unit', at: token.at, found: token.found })
  if (token.kind !== 'end') return err({ kind: 'trailing-text', at: token.at, found: text.slice(token.at).trimEnd() })
  if (bareUnit === null) return err({ kind: 'unit-missing', at: amount.at, found: amount.found })
  return ok({ unit: bareUnit, isMark: false, next: amount.next })
}

/** Feet and inches together, in inches: `feet` has been read, from token `start` on are the inches. */
function readInches(
  text: string,
  tokens: readonly LengthToken[],
  feet: Amount,
  start: number,
): Result<Ratio, LengthProblem> {
  const dash = tokenAt(tokens, start)
  const hasDash = dash.kind === 'hyphen' || dash.kind === 'minus'
  const inchStart = hasDash ? start + 1 : start
  const inches = readAmount(text, tokens, inchStart)
  if (!inches.ok && !hasDash && inches.error.kind === 'not-a-number' && inches.error.at === dash.at)
    return err(continuation(text, tokens, start, 'ft'))
  if (!inches.ok) return inches
  const { value, at, found } = inches.value
  if (hasDash && looksLikeSign(tokenAt(tokens, start - 1), dash, inches.value)) {
    const readings = [`${feet.found} ft ${found} in`, { from: `${feet.found} ft`, less: `${found} in` }] as const
    return err({ kind: 'ambiguous', readings, at: feet.at, found: text.slice(feet.at, endOf(inches.value)) })
  }
  const given = readUnit(text, tokens, inches.value, 'in')
  if (!given.ok) return given
  if (given.value.unit !== 'in') return err(continuation(text, tokens, inchStart, 'ft'))
  if (found.startsWith('.') && given.value.next === inches.value.next) {
    const readings = [`${feet.found} ft 0${found} in`, `${feet.found}${found} ft`] as const
    return err({ kind: 'ambiguous', readings, at: feet.at, found: text.slice(feet.at, endOf(inches.value)) })
  }
  if (feet.value.denominator !== 1n) return err({ kind: 'feet-not-whole', at: feet.at, found: feet.found })
  if (value.numerator >= 12n * value.denominator) return err({ kind: 'inches-not-below-twelve', at, found })
  const after = tokenAt(tokens, given.value.next)
  if (after.kind !== 'end') return err({ kind: 'trailing-text', at: after.at, found: text.slice(after.at).trimEnd() })
  const numerator = 12n * feet.value.numerator * value.denominator + value.numerator
  return ok({ numerator, denominator: value.denominator })
}

/** A dash between feet and inches joins them (`6'-3"`, `6' - 3"`), but not when it is set like a sign (`6' -3"`). */
const looksLikeSign = (before: LengthToken, dash: LengthToken, after: Amount): boolean =>
  dash.kind === 'minus' || (endOf(before) < dash.at && endOf(dash) === after.at)

/** What is wrong with more text after a length in `first`: another length, or anything else. */
function continuation(text: string, tokens: readonly LengthToken[], start: number, first: LengthUnit): LengthProblem {
  const { at } = tokenAt(tokens, start)
  const rest = { at, found: text.slice(at).trimEnd() }
  const amount = readAmount(text, tokens, start)
  const second = amount.ok ? tokenAt(tokens, amount.value.next) : undefined
  return second?.kind === 'unit'
    ? { kind: 'two-units', first, second: second.unit, ...rest }
    : { kind: 'trailing-text', ...rest }
}

function lengthOf(
  text: string,
  value: Ratio,
  unit: LengthUnit,
  isNegative: boolean,
): Result<ParsedLength, LengthProblem> {
  const size = ratioToNanometres(value, unit)
  if (!size.ok) return err({ kind: size.error, at: text.length - text.trimStart().length, found: text.trim() })
  return ok({
    nanometres: isNegative && size.value !== 0 ? -size.value : size.value,
    unit,
    resolution: Math.max(1, Math.ceil(nanometresPer[unit] / Number(value.denominator))),
  })
}
