import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { nanometresPer } from './exact-length.ts'
import { parseStation, printStation, type StationSystem } from './station.ts'

// Worked by hand from 1 ft = 304.8 mm exactly (international yard and pound agreement, 1959), in nm.
describe('parseStation reads', () => {
  test.each<[string, StationSystem, number]>([
    ['12+37.50', 'us', 377_190_000_000], // 1237.5 ft
    ['STA 12+37.50', 'us', 377_190_000_000],
    ['Sta. 12+37.5', 'us', 377_190_000_000],
    ['Station 12+37.5', 'us', 377_190_000_000],
    ['sta12+37.5', 'us', 377_190_000_000],
    [' 12 + 37.5 ', 'us', 377_190_000_000],
    ['1237.5', 'us', 377_190_000_000],
    ['12+37', 'us', 377_037_600_000], // 1237 ft
    ['0+00', 'us', 0],
    ['-0+00', 'us', 0],
    ['-0+50', 'us', -15_240_000_000], // 50 ft before 0+00
    ['\u22120+50', 'us', -15_240_000_000],
    ['-1+25.25', 'us', -38_176_200_000], // 125.25 ft
    ['1+237.500', 'metric', 1_237_500_000_000],
    ['STA 1+237.5', 'metric', 1_237_500_000_000],
    ['1237.5', 'metric', 1_237_500_000_000],
    ['-0+050', 'metric', -50_000_000_000],
  ])('%s in %s stations', (text, system, nanometres) => {
    expect(parseStation(text, system)).toEqual({ ok: true, value: nanometres })
  })
})

const refused: readonly (readonly [string, StationSystem, string, number, string])[] = [
  ['', 'us', 'empty', 0, ''],
  ['STA ', 'us', 'empty', 4, ''],
  ['12+3.5', 'us', 'digits-after-plus', 3, '3.5'],
  ['12+137.5', 'us', 'digits-after-plus', 3, '137.5'],
  ['12+.5', 'us', 'digits-after-plus', 3, '.5'],
  ['1+37.50', 'metric', 'digits-after-plus', 2, '37.50'],
  ['1+1237', 'metric', 'digits-after-plus', 2, '1237'],
  ['12++50', 'us', 'not-a-number', 3, '+'],
  ['12+', 'us', 'not-a-number', 3, ''],
  ['+50', 'us', 'not-a-number', 0, '+'],
  ['12+-50', 'us', 'not-a-number', 3, '-'],
  ['bridge', 'us', 'not-a-number', 0, 'bridge'],
  ['Stade 12+00', 'us', 'not-a-number', 0, 'Stade'],
  ['STA x', 'us', 'not-a-number', 4, 'x'],
  ['12+37.', 'us', 'not-a-number', 3, '37.'],
  ['12.5+00', 'us', 'stations-not-whole', 0, '12.5'],
  ['12+37,50', 'us', 'comma', 5, ','],
  ['1,237.5', 'us', 'comma', 1, ','],
  ['12+37.50 BK ', 'us', 'trailing-text', 9, 'BK'],
  ['12+37.50+00', 'us', 'trailing-text', 8, '+00'],
  ['1237.5 ft', 'us', 'trailing-text', 7, 'ft'],
  ['1e3', 'us', 'trailing-text', 1, 'e3'],
  ['0+00.000001', 'us', 'too-fine', 0, '0+00.000001'], // 304.8 nm
  ['999999999+00', 'us', 'too-large', 0, '999999999+00'],
]

describe('parseStation refuses', () => {
  test.each(refused)('%s in %s stations as %s', (text, system, kind, at, found) => {
    expect(parseStation(text, system)).toMatchObject({ ok: false, error: { kind, at, found } })
  })

  test('with how many digits are needed', () => {
    expect(parseStation('STA 12+3.5', 'us')).toMatchObject({ error: { kind: 'digits-after-plus', needed: 2 } })
  })
})

describe('printStation', () => {
  test.each<[number, StationSystem, number, string]>([
    [377_190_000_000, 'us', 2, '12+37.50'],
    [377_190_000_000, 'us', 0, '12+38'],
    [1_237_500_000_000, 'metric', 3, '1+237.500'],
    [-15_240_000_000, 'us', 2, '-0+50.00'],
    [-38_176_200_000, 'us', 2, '-1+25.25'],
    [1_524_000_000, 'us', 2, '0+05.00'],
    [0, 'us', 2, '0+00.00'],
    [0, 'metric', 0, '0+000'],
    [-1, 'us', 2, '0+00.00'],
    [304_798_780_800, 'us', 2, '10+00.00'], // 999.996 ft
    [-304_798_780_800, 'us', 2, '-10+00.00'],
    [999_999_600_000, 'metric', 3, '1+000.000'], // 999.9996 m
  ])('%d nm in %s stations with %d decimals is %s', (distance, system, decimals, text) => {
    expect(printStation(distance, system, decimals)).toBe(text)
  })

  test.each<[StationSystem, 'ft' | 'm', number]>([
    ['us', 'ft', 5],
    ['metric', 'm', 9],
  ])('is read back by parseStation, %s', (system, unit, mostDecimals) => {
    fc.assert(
      fc.property(
        fc.integer({ min: -9_000_000, max: 9_000_000 }),
        fc.integer({ min: 0, max: mostDecimals }),
        (steps, decimals) => {
          const distance = (steps * nanometresPer[unit]) / 10 ** decimals
          expect(parseStation(printStation(distance, system, decimals), system)).toEqual({ ok: true, value: distance })
        },
      ),
      { seed: 1959, numRuns: 2000 },
    )
  })
})
