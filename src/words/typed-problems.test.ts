import { describe, expect, test } from 'vitest'
import type { LengthUnit } from '../core/units/exact-length.ts'
import { parseLength } from '../core/units/length-text.ts'
import type { Unit } from '../core/units/quantity-kinds.ts'
import { parseStation } from '../core/units/station.ts'
import { parseValue } from '../core/units/value-text.ts'
import { english } from './english.ts'
import type { Saying } from './saying.ts'
import { spanish } from './spanish.ts'

/** One text for each reason why it is no length. */
const noLengths: readonly (readonly [text: string, bareUnit: LengthUnit | null])[] = [
  ...(['', 'abc', '1e3', '1,5', '6-3', '1/0', '3/7', '27 5/4', '27.5 3/4', '1/2 m'] as const).map(
    (text) => [text, 'in'] as const,
  ),
  ...(['1.5 ft 3 in', '5 ft 14 in', '12.5 yd', '5 m 3 in', '27 in x', '0.0000000001 mm'] as const).map(
    (text) => [text, 'in'] as const,
  ),
  ['99999999999 m', 'in'],
  ['27', null],
]

function noLength(text: string, bareUnit: LengthUnit | null): Saying {
  const parsed = parseLength(text, bareUnit)
  if (parsed.ok) throw new Error(`${text} is a length`)
  return { kind: 'no length', problem: parsed.error }
}

describe.each([
  ['English', english(null)],
  ['Spanish', spanish(null)],
])('what is typed and is no length, in %s', (_, print) => {
  test('has a reason of its own for each kind', () => {
    const reasons = noLengths.map(([text, bareUnit]) =>
      print.say(noLength(text, bareUnit)).replace(/^(At|En el) (character|carácter) \d+(, “.*”)?: /, ''),
    )
    expect(new Set(reasons).size).toBe(18)
  })
})

test('a reason names the place, what stands there and both readings of an ambiguous text', () => {
  const ambiguous = noLength('6-3', 'in')
  expect(english(null).say(ambiguous)).toBe('At character 1, “6-3”: this can mean 6 ft 3 in or 6 minus 3, write which.')
  expect(spanish(null).say(ambiguous)).toBe('En el carácter 1, “6-3”: puede ser 6 ft 3 in o 6 menos 3, escriba cuál.')
})

test('a reason names the place alone when something is missing', () => {
  const cut = noLength('27 3/', 'in')
  expect(english(null).say(cut)).toBe('At character 6: a number is expected here.')
  expect(spanish(null).say(cut)).toBe('En el carácter 6: aquí se espera un número.')
})

test('a station says how many digits are needed, as a sentence and in a file', () => {
  const parsed = parseStation('STA 12+3.5', 'us')
  if (parsed.ok) throw new Error('it is a station')
  const [problem, not] = [parsed.error, parsed.error]
  expect(english(null).say({ kind: 'no station', problem })).toBe(
    'At character 8, “3.5”: between + and the decimal point a station has exactly 2 digits.',
  )
  expect(spanish(null).say({ kind: 'a station', not })).toBe(
    'una estación (en el carácter 8, “3.5”: entre el + y el punto decimal una estación tiene exactamente 2 cifras)',
  )
})

/** One text for each reason why it is no value of a quantity. */
const noValues: readonly (readonly [text: string, bareUnit: Unit | null])[] = [
  ['', '%'],
  ['1/2 %', null],
  ['7.5', 'count'],
  ['-8', 'count'],
  ['2.1234567 %', null],
  ['12 in-lbf', null],
  ['99999999999999999 %', null],
]

test.each([
  ['English', english(null), 'At character 1, “7.5”: a count is a whole number.'],
  ['Spanish', spanish(null), 'En el carácter 1, “7.5”: una cantidad es un número entero.'],
])('what is no value of a quantity has a reason of its own for each kind, in %s', (_, print, whole) => {
  const said = noValues.map(([text, bareUnit]) => {
    const parsed = parseValue(text, bareUnit)
    if (parsed.ok) throw new Error(`${text} is a value`)
    return print.say({ kind: 'no value', problem: parsed.error })
  })
  expect(said[2]).toBe(whole)
  expect(new Set(said.map((text) => text.replace(/^.*?: /, ''))).size).toBe(noValues.length)
})

test('what a reading gave is a problem’s own words, not those of a verdict', () => {
  const parsed = parseValue('31 in', null)
  if (!parsed.ok) throw new Error('31 in is a value')
  const found: Saying = { kind: 'value read', value: parsed.value.value, unit: 'in' }
  expect([english(null).say(found), spanish(null).say(found)]).toEqual(['31.000 in', '31.000 in'])
  expect(english(null).say({ kind: 'run not laid out' })).toBe('The run cannot be laid out.')
  expect(english(null).say({ kind: 'length not laid out' })).toBe('run not laid out')
})
