import { err, ok, type Result } from '../result.ts'
import { parseDecimal, printDecimal, ratioToNanometres } from './decimal-text.ts'
import type { Nanometres } from './exact-length.ts'
import type { TextPlace } from './length-problem.ts'

/** `us`: stations of 100 ft, `12+37.50`; `metric`: stations of 1000 m, `1+237.500`. */
export type StationSystem = 'us' | 'metric'

/** Why a text is not a station, and where. */
export type StationProblem = TextPlace &
  (
    | { readonly kind: 'empty' | 'not-a-number' | 'comma' | 'stations-not-whole' | 'trailing-text' }
    | { readonly kind: 'digits-after-plus'; readonly needed: number }
    | { readonly kind: 'too-fine' | 'too-large' }
  )

/** Digits between `+` and the decimal point, and the unit they count. */
const systems = {
  us: { digits: 2, unit: 'ft' },
  metric: { digits: 3, unit: 'm' },
} as const

/**
 * The distance along the alignment that a station text states.
 *
 * Feet are international feet (0.3048 m); a project in US survey feet scales the result by 1 200 / (3 937 x 0.3048).
 * `STA`, `Sta.` or `Station` may stand before it; a number without `+` is the distance itself (`1237.5`); a sign
 * holds for all of it, so `-0+50` is 50 ft before station 0+00. The digits before the decimal point must be complete
 * (`12+3.5` could be 12+03.5 or 12+35).
 *
 * @example parseStation('12+37.50', 'us')  // { ok: true, value: 377_190_000_000 }
 */
export function parseStation(text: string, system: StationSystem): Result<Nanometres, StationProblem> {
  const plain = text.replace(/[\u2212\u2013\u2010\u2011]/g, '-')
  const comma = plain.indexOf(',')
  if (comma >= 0) return err({ kind: 'comma', at: comma, found: ',' })
  const start = /^\s*(sta(tion)?\.?(?!\p{L})\s*)?/iu.exec(plain)?.[0].length ?? 0
  if (plain.slice(start).trim() === '') return err({ kind: 'empty', at: start, found: '' })

  const sign = /^-\s*/.exec(plain.slice(start))?.[0] ?? ''
  const first = numberAt(text, plain, start + sign.length)
  if (!first.ok) return first
  const plus = /^\s*\+\s*/.exec(plain.slice(first.value.end))?.[0]
  if (plus === undefined) return distanceOf(text, plain, first.value, first.value.found, sign, system)

  if (!/^\d+$/.test(first.value.found)) return err({ kind: 'stations-not-whole', ...placeOf(first.value) })
  const second = numberAt(text, plain, first.value.end + plus.length)
  if (!second.ok) return second
  const { digits } = systems[system]
  if (second.value.found.split('.')[0]?.length !== digits)
    return err({ kind: 'digits-after-plus', needed: digits, ...placeOf(second.value) })
  return distanceOf(text, plain, second.value, first.value.found + second.value.found, sign, system)
}

/**
 * The station of a distance along the alignment. It is rounded before it is split, so 999.996 ft with 2 decimals
 * prints as `10+00.00`; halves go away from zero, and a distance that rounds to nothing has no sign.
 * @param decimals digits after the decimal point
 */
export function printStation(distance: Nanometres, system: StationSystem, decimals: number): string {
  const { digits, unit } = systems[system]
  const [, sign = '', whole = '', fraction = ''] = /^(-?)(\d+)(.*)$/.exec(printDecimal(distance, unit, decimals)) ?? []
  const padded = whole.padStart(digits + 1, '0')
  return `${sign}${padded.slice(0, -digits)}+${padded.slice(-digits)}${fraction}`
}

interface NumberInText extends TextPlace {
  readonly end: number
}

const placeOf = ({ at, found }: TextPlace): TextPlace => ({ at, found })

function numberAt(text: string, plain: string, at: number): Result<NumberInText, StationProblem> {
  const found = /^[\d.]+/.exec(plain.slice(at))?.[0] ?? ''
  if (/^(\d+(\.\d+)?|\.\d+)$/.test(found)) return ok({ at, found, end: at + found.length })
  const shown = found || (/^\p{L}+|^\S/u.exec(text.slice(at))?.[0] ?? '')
  return err({ kind: 'not-a-number', at, found: shown })
}

/** The distance written in `number`, if nothing follows `last`, the last number read. */
function distanceOf(
  text: string,
  plain: string,
  last: NumberInText,
  number: string,
  sign: string,
  system: StationSystem,
): Result<Nanometres, StationProblem> {
  const rest = plain.slice(last.end)
  const at = last.end + rest.length - rest.trimStart().length
  if (rest.trim() !== '') return err({ kind: 'trailing-text', at, found: text.slice(at).trimEnd() })
  const size = ratioToNanometres(parseDecimal(number), systems[system].unit)
  if (!size.ok) return err({ kind: size.error, at: text.length - text.trimStart().length, found: text.trim() })
  return ok(sign !== '' && size.value !== 0 ? -size.value : size.value)
}
