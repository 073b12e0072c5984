import { err, ok, type Result } from '../result.ts'
import { parseDecimal, type Ratio } from './decimal-text.ts'
import type { LengthProblem, TextPlace } from './length-problem.ts'
import { endOf, type LengthToken, tokenAt } from './length-tokens.ts'

/** The number before a unit: `27`, `27.75`, `3/4`, `27 3/4`, `27-3/4` or `27¾`. */
export interface Amount extends TextPlace {
  readonly value: Ratio
  readonly hasFraction: boolean
  /** Index of the first token after it. */
  readonly next: number
}

/** What a rule is divided in. */
const denominators = [2n, 4n, 8n, 16n, 32n, 64n]

/**
 * The amount that begins at token `start` of `text`.
 * A hyphen joins a whole number to its fraction only when it touches both; `27 - 3/4` could be a subtraction.
 */
export function readAmount(text: string, tokens: readonly LengthToken[], start: number): Result<Amount, LengthProblem> {
  const first = tokenAt(tokens, start)
  if (beginsFraction(tokens, start)) return readFraction(text, tokens, start, null)
  if (first.kind !== 'number') return err({ kind: 'not-a-number', at: first.at, found: first.found })

  const dash = tokenAt(tokens, start + 1)
  const hasDash = dash.kind === 'hyphen' || dash.kind === 'minus'
  const second = start + (hasDash ? 2 : 1)
  if (beginsFraction(tokens, second)) {
    const fraction = readFraction(text, tokens, second, first)
    if (!fraction.ok || !hasDash || joinsTightly(first, dash, tokenAt(tokens, second))) return fraction
    const part = text.slice(tokenAt(tokens, second).at, endOf(fraction.value))
    const readings = [`${first.found} ${part}`, { from: first.found, less: part }] as const
    return err({ kind: 'ambiguous', readings, at: first.at, found: fraction.value.found })
  }
  const other = tokenAt(tokens, second)
  if (other.kind === 'number' && !first.found.includes('.')) {
    const whole = hasDash ? { from: first.found, less: other.found } : `${first.found}${other.found}`
    const readings = [`${first.found} ft ${other.found} in`, whole] as const
    return err({ kind: 'ambiguous', readings, at: first.at, found: text.slice(first.at, endOf(other)) })
  }
  return ok({
    value: parseDecimal(first.found),
    hasFraction: false,
    next: start + 1,
    at: first.at,
    found: first.found,
  })
}

function beginsFraction(tokens: readonly LengthToken[], index: number): boolean {
  const { kind } = tokenAt(tokens, index)
  return kind === 'glyph' || (kind === 'number' && tokenAt(tokens, index + 1).kind === 'slash')
}

/** The fraction that begins at token `start`, with the `whole` number before it if there is one. */
function readFraction(
  text: string,
  tokens: readonly LengthToken[],
  start: number,
  whole: TextPlace | null,
): Result<Amount, LengthProblem> {
  const parts = fractionParts(tokens, start)
  if (!parts.ok) return parts
  const { upper, lower, last, next } = parts.value
  const { at } = tokenAt(tokens, start)
  const place = { at, found: text.slice(at, endOf(last)) }
  const amountPlace = whole ? { at: whole.at, found: text.slice(whole.at, endOf(last)) } : place
  if ([whole?.found ?? '', upper, lower].some((number) => number.includes('.')))
    return err({ kind: 'decimal-with-fraction', ...amountPlace })

  const numerator = BigInt(upper)
  const denominator = BigInt(lower)
  if (denominator === 0n) return err({ kind: 'zero-denominator', ...place })
  if (!denominators.includes(denominator)) return err({ kind: 'unknown-denominator', ...place })
  if (numerator >= denominator) return err({ kind: 'improper-fraction', ...place })
  const value = { numerator: BigInt(whole?.found ?? 0) * denominator + numerator, denominator }
  return ok({ value, hasFraction: true, next, ...amountPlace })
}

interface FractionParts {
  readonly upper: string
  readonly lower: string
  readonly last: TextPlace
  readonly next: number
}

/** Upper and lower number of a fraction, which is one glyph or a number, a slash and a number. */
function fractionParts(tokens: readonly LengthToken[], start: number): Result<FractionParts, LengthProblem> {
  const top = tokenAt(tokens, start)
  if (top.kind === 'glyph') return ok({ upper: top.numerator, lower: top.denominator, last: top, next: start + 1 })
  const bottom = tokenAt(tokens, start + 2)
  if (bottom.kind !== 'number') return err({ kind: 'not-a-number', at: bottom.at, found: bottom.found })
  return ok({ upper: top.found, lower: bottom.found, last: bottom, next: start + 3 })
}

const joinsTightly = (before: TextPlace, dash: LengthToken, after: TextPlace): boolean =>
  dash.kind === 'hyphen' && endOf(before) === dash.at && endOf(dash) === after.at
