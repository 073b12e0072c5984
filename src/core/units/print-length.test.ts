import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type LengthUnit, nanometresPer } from './exact-length.ts'
import { parseLength } from './length-text.ts'
import { type LengthStyle, printLength } from './print-length.ts'

const seed = 1959

// Lengths worked by hand from 1 in = 25.4 mm exactly (1959), in nm.
describe('printLength', () => {
  const quarter = 704_850_000 // 27 3/4 in
  const panel = 2_857_500_000 // 112 1/2 in

  test.each<[number, LengthStyle, string]>([
    [quarter, 'inches', '27 3/4 in'],
    [quarter, 'feet-inches', '2 ft 3 3/4 in'],
    [quarter, 'feet-inches-short', '2\' 3 3/4"'],
    [panel, 'inches', '112 1/2 in'],
    [panel, 'feet-inches', '9 ft 4 1/2 in'],
    [panel, 'feet-inches-short', '9\' 4 1/2"'],
    [1_905_000_000, 'feet-inches', '6 ft 3 in'],
    [-1_905_000_000, 'feet-inches', '-6 ft 3 in'],
    [1_828_800_000, 'feet-inches', '6 ft 0 in'],
    [1_828_800_000, 'feet-inches-short', '6\' 0"'],
    [1_847_850_000, 'feet-inches', '6 ft 0 3/4 in'],
    [1_847_850_000, 'feet-inches-short', '6\' 0 3/4"'],
    [19_050_000, 'feet-inches', '3/4 in'],
    [19_050_000, 'feet-inches-short', '3/4"'],
    [228_600_000, 'feet-inches', '9 in'],
    [-3_175_000, 'inches', '-1/8 in'],
    [0, 'inches', '0 in'],
    [0, 'feet-inches', '0 in'],
    [0, 'feet-inches-short', '0"'],
  ])('%d nm in style %s is %s', (length, style, text) => {
    expect(printLength(length, style)).toBe(text)
  })

  test('keeps 64ths exactly and rounds anything else to the nearest 16th', () => {
    expect(printLength(396_875, 'inches')).toBe('1/64 in')
    expect(printLength(25_796_875, 'inches')).toBe('1 1/64 in')
    // 787 mm is 30.98425 in: 30 in and 15.748 sixteenths
    expect(printLength(787_000_000, 'inches')).toBe('31 in')
    // 704 mm is 27.71654 in: 27 in and 11.465 sixteenths
    expect(printLength(704_000_000, 'inches')).toBe('27 11/16 in')
    expect(printLength(-704_000_000, 'inches')).toBe('-27 11/16 in')
  })

  test('carries a rounded twelfth inch into the feet', () => {
    expect(printLength(304_546_000, 'feet-inches')).toBe('1 ft 0 in') // 11.99 in
    expect(printLength(304_546_000, 'feet-inches-short')).toBe('1\' 0"')
    expect(printLength(304_546_000, 'inches')).toBe('12 in')
    expect(printLength(-609_346_000, 'feet-inches')).toBe('-2 ft 0 in') // 23.99 in
  })

  test('has no sign when the length rounds to nothing', () => {
    expect(printLength(-1, 'inches')).toBe('0 in')
    expect(printLength(-1, 'feet-inches-short')).toBe('0"')
    expect(printLength(-1, 'metres')).toBe('0.000 m')
    expect(printLength(-0, 'millimetres')).toBe('0 mm')
  })

  test('prints decimals as many as asked, halves away from zero', () => {
    expect(printLength(43_129_200_000, 'decimal-feet', { decimals: 1 })).toBe('141.5 ft') // 141.5 x 304.8 mm
    expect(printLength(43_129_200_000, 'decimal-feet')).toBe('141.50 ft')
    expect(printLength(787_400_000, 'millimetres')).toBe('787 mm')
    expect(printLength(704_850_000, 'millimetres', { decimals: 2 })).toBe('704.85 mm')
    expect(printLength(704_850_000, 'metres')).toBe('0.705 m')
    expect(printLength(500_000, 'millimetres')).toBe('1 mm')
    expect(printLength(-500_000, 'millimetres')).toBe('-1 mm')
    expect(printLength(999_999_999, 'metres', { decimals: 2 })).toBe('1.00 m')
  })

  test('throws on a length that is no whole number of nanometres', () => {
    expect(() => printLength(0.5, 'inches')).toThrow(RangeError)
    expect(() => printLength(Number.NaN, 'metres')).toThrow(RangeError)
  })
})

describe('parseLength reads back what printLength wrote', () => {
  const readBack = (text: string) => {
    const parsed = parseLength(text, null)
    if (!parsed.ok) throw new Error(`${text} was refused as ${parsed.error.kind}`)
    return parsed.value
  }

  test.each<[LengthStyle]>([['inches'], ['feet-inches'], ['feet-inches-short']])('%s, on every 64th', (style) => {
    fc.assert(
      fc.property(fc.integer({ min: -10_000_000, max: 10_000_000 }), (sixtyFourths) => {
        const length = sixtyFourths * 396_875
        expect(readBack(printLength(length, style)).nanometres).toBe(length)
      }),
      { seed, numRuns: 2000 },
    )
  })

  test.each<[LengthStyle, LengthUnit, number]>([
    ['decimal-feet', 'ft', 5],
    ['millimetres', 'mm', 6],
    ['metres', 'm', 9],
  ])('%s, on every last place, with the value of that place as resolution', (style, unit, mostDecimals) => {
    fc.assert(
      fc.property(
        fc.integer({ min: -9_000_000, max: 9_000_000 }),
        fc.integer({ min: 0, max: mostDecimals }),
        (steps, decimals) => {
          const resolution = nanometresPer[unit] / 10 ** decimals
          const parsed = readBack(printLength(steps * resolution, style, { decimals }))
          expect(parsed).toEqual({ nanometres: steps * resolution, unit, resolution })
        },
      ),
      { seed, numRuns: 2000 },
    )
  })

  test('feet and inches in millimetres: every 64th is a whole number of nanometres', () => {
    fc.assert(
      fc.property(fc.integer({ min: -10_000_000, max: 10_000_000 }), (sixtyFourths) => {
        const inMillimetres = readBack(printLength(sixtyFourths * 396_875, 'millimetres', { decimals: 6 }))
        const inFeetInches = readBack(printLength(inMillimetres.nanometres, 'feet-inches'))
        expect(inFeetInches.nanometres).toBe(sixtyFourths * 396_875)
      }),
      { seed, numRuns: 1000 },
    )
  })

  test.each<[LengthStyle, number]>([
    ['inches', 793_750],
    ['feet-inches', 793_750],
    ['feet-inches-short', 793_750],
    ['decimal-feet', 1_524_000],
    ['millimetres', 500_000],
    ['metres', 500_000],
  ])('%s, of any length, within half a last place', (style, half) => {
    fc.assert(
      fc.property(fc.integer({ min: -1e13, max: 1e13 }), (length) => {
        expect(Math.abs(readBack(printLength(length, style)).nanometres - length)).toBeLessThanOrEqual(half)
      }),
      { seed, numRuns: 2000 },
    )
  })
})
