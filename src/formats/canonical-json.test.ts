import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { canonicalJson } from './canonical-json.ts'

describe('canonicalJson', () => {
  // RFC 8785, section 3.2.3: the sorting example, less the names that need no escape to tell the order
  test('sorts names by their UTF-16 code units', () => {
    const value = {
      '\u20ac': 'Euro Sign',
      '\r': 'Carriage Return',
      '1': 'One',
      '\ud83d\ude00': 'Smiley',
      '\u00f6': 'o',
    }
    expect(canonicalJson(value)).toBe(
      '{"\\r":"Carriage Return","1":"One","\u00f6":"o","\u20ac":"Euro Sign","\ud83d\ude00":"Smiley"}',
    )
  })

  // RFC 8785, section 3.2.2.3 and appendix B
  test('prints numbers as ECMAScript does', () => {
    expect(canonicalJson([Number('333333333.3333333'), 1e30, 4.5, 2e-3, 0.000000000000000000000000001, -0])).toBe(
      '[333333333.3333333,1e+30,4.5,0.002,1e-27,0]',
    )
  })

  test('leaves out a field that is undefined and refuses what JSON cannot hold', () => {
    expect(canonicalJson({ a: undefined, b: [] })).toBe('{"b":[]}')
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY, [undefined], new Date(0), () => 1])
      expect(() => canonicalJson(value)).toThrow(TypeError)
  })

  test('gives one text however the fields were put in, and JSON reads it back', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        const text = canonicalJson(value)
        expect(canonicalJson(reversed(value))).toBe(text)
        expect(JSON.parse(text)).toEqual(JSON.parse(JSON.stringify(value)))
      }),
      { seed: 5, numRuns: 200 },
    )
  })
})

function reversed(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(reversed)
  if (typeof value !== 'object' || value === null) return value
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([name, inner]) => [name, reversed(inner)]),
  )
}
