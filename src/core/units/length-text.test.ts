import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { LengthUnit } from './exact-length.ts'
import { parseLength } from './length-text.ts'

// Worked by hand from 1 in = 25.4 mm exactly (international yard and pound agreement, 1959; ISO 80000-3), in nm.
// Columns: text, unit of a bare number, nanometres, unit, resolution in nanometres.
const accepted: readonly (readonly [string, LengthUnit | null, number, LengthUnit, number])[] = [
  // 27.75 x 25.4 mm = 704.85 mm; 1/4 in = 6.35 mm
  ['27 3/4', 'in', 704_850_000, 'in', 6_350_000],
  ['27-3/4"', null, 704_850_000, 'in', 6_350_000],
  ['27-3/4', 'in', 704_850_000, 'in', 6_350_000],
  ['27\u20133/4', 'in', 704_850_000, 'in', 6_350_000],
  ['27 3/4 in', null, 704_850_000, 'in', 6_350_000],
  ['27 3/4 in.', null, 704_850_000, 'in', 6_350_000],
  ['27 3/4 INCHES', null, 704_850_000, 'in', 6_350_000],
  ['27 3/4\u2033', null, 704_850_000, 'in', 6_350_000],
  ['27 3/4\u201d', null, 704_850_000, 'in', 6_350_000],
  ["27 3/4''", null, 704_850_000, 'in', 6_350_000],
  ['27 3/4\u2019\u2019', null, 704_850_000, 'in', 6_350_000],
  ['27\u00a03\u20444\u202fin', null, 704_850_000, 'in', 6_350_000],
  ['27¾', 'in', 704_850_000, 'in', 6_350_000],
  ['27 ¾"', null, 704_850_000, 'in', 6_350_000],
  ['27-¾"', null, 704_850_000, 'in', 6_350_000],
  ['  27 3/4  ', 'in', 704_850_000, 'in', 6_350_000],
  // the same length read to a sixteenth (1.5875 mm), a 64th (0.396875 mm) and a hundredth of an inch (0.254 mm)
  ['27 12/16', 'in', 704_850_000, 'in', 1_587_500],
  ['27 48/64', 'in', 704_850_000, 'in', 396_875],
  ['27.75', 'in', 704_850_000, 'in', 254_000],
  ['27.75 in', null, 704_850_000, 'in', 254_000],
  // more decimals than a nanometre needs: the value is whole, the last place counts as 1 nm
  ['27.7500000000', 'in', 704_850_000, 'in', 1],
  ['27 0/16', 'in', 685_800_000, 'in', 1_587_500],
  ['31', 'in', 787_400_000, 'in', 25_400_000],
  ['31"', null, 787_400_000, 'in', 25_400_000],
  ['31in', null, 787_400_000, 'in', 25_400_000],
  ['0', 'in', 0, 'in', 25_400_000],
  // each eighth is 3.175 mm
  ['⅛', 'in', 3_175_000, 'in', 3_175_000],
  ['¼', 'in', 6_350_000, 'in', 6_350_000],
  ['⅜"', null, 9_525_000, 'in', 3_175_000],
  ['½ in', null, 12_700_000, 'in', 12_700_000],
  ['⅝', 'in', 15_875_000, 'in', 3_175_000],
  ['¾', 'in', 19_050_000, 'in', 6_350_000],
  ['⅞', 'in', 22_225_000, 'in', 3_175_000],
  ['3/4"', null, 19_050_000, 'in', 6_350_000],
  ['1/32', 'in', 793_750, 'in', 793_750],
  ['.5', 'in', 12_700_000, 'in', 2_540_000],
  // signs
  ['-1/8', 'in', -3_175_000, 'in', 3_175_000],
  ['-0.5 in', null, -12_700_000, 'in', 2_540_000],
  ['\u22123 in', null, -76_200_000, 'in', 25_400_000],
  ['\u20133 in', null, -76_200_000, 'in', 25_400_000],
  ['+3 in', null, 76_200_000, 'in', 25_400_000],
  ['-6\'-3"', null, -1_905_000_000, 'in', 25_400_000],
  ['-0', 'in', 0, 'in', 25_400_000],
  // 6 ft 3 in = 75 in = 1 905 mm
  ['6\'-3"', null, 1_905_000_000, 'in', 25_400_000],
  ['6\' - 3"', null, 1_905_000_000, 'in', 25_400_000],
  ['6\' 3"', null, 1_905_000_000, 'in', 25_400_000],
  ["6'3''", null, 1_905_000_000, 'in', 25_400_000],
  ["6'3", null, 1_905_000_000, 'in', 25_400_000],
  ["6'-3", 'mm', 1_905_000_000, 'in', 25_400_000],
  ['6\u2019 3\u201d', null, 1_905_000_000, 'in', 25_400_000],
  ['6\u2032\u20133\u2033', null, 1_905_000_000, 'in', 25_400_000],
  ['6 ft 3 in', null, 1_905_000_000, 'in', 25_400_000],
  ['6 ft. 3 in.', null, 1_905_000_000, 'in', 25_400_000],
  ['6ft3in', null, 1_905_000_000, 'in', 25_400_000],
  ['6 feet 3 inches', null, 1_905_000_000, 'in', 25_400_000],
  ['6 FT - 3 IN', null, 1_905_000_000, 'in', 25_400_000],
  // 75.5 in = 1 917.7 mm; 112.5 in = 2 857.5 mm; 72.75 in = 1 847.85 mm; 83.99 in = 2 133.346 mm
  ['6\' 3 1/2"', null, 1_917_700_000, 'in', 12_700_000],
  ["6' 3 1/2", null, 1_917_700_000, 'in', 12_700_000],
  ["6'3½", null, 1_917_700_000, 'in', 12_700_000],
  ['9\' 4 1/2"', null, 2_857_500_000, 'in', 12_700_000],
  ['9\'-4 1/2"', null, 2_857_500_000, 'in', 12_700_000],
  ['9\'-4-1/2"', null, 2_857_500_000, 'in', 12_700_000],
  ["9' 4.5", null, 2_857_500_000, 'in', 2_540_000],
  ["1' .5 in", null, 317_500_000, 'in', 2_540_000], // 12.5 in
  ['9 ft 4.5 in', null, 2_857_500_000, 'in', 2_540_000],
  ['6\' 3/4"', null, 1_847_850_000, 'in', 6_350_000],
  ['6\'-0 3/4"', null, 1_847_850_000, 'in', 6_350_000],
  ['6\' 11.99"', null, 2_133_346_000, 'in', 254_000],
  ['6\'-0"', null, 1_828_800_000, 'in', 25_400_000],
  // feet: 12.5 ft = 150 in = 3 810 mm; 0.1 ft = 30.48 mm; 1/2 ft = 152.4 mm
  ["12.5'", null, 3_810_000_000, 'ft', 30_480_000],
  ['12.5 ft', null, 3_810_000_000, 'ft', 30_480_000],
  ['12.5', 'ft', 3_810_000_000, 'ft', 30_480_000],
  ['12.50000000 ft', null, 3_810_000_000, 'ft', 4],
  ['12 1/2 ft', null, 3_810_000_000, 'ft', 152_400_000],
  ["6'", 'in', 1_828_800_000, 'ft', 304_800_000],
  ['1 foot', null, 304_800_000, 'ft', 304_800_000],
  // metric
  ['787 mm', null, 787_000_000, 'mm', 1_000_000],
  ['787mm', 'in', 787_000_000, 'mm', 1_000_000],
  ['787', 'mm', 787_000_000, 'mm', 1_000_000],
  ['704.85 mm', null, 704_850_000, 'mm', 10_000],
  ['0.706 m', null, 706_000_000, 'm', 1_000_000],
  ['0.706', 'm', 706_000_000, 'm', 1_000_000],
  ['-1.905 metres', null, -1_905_000_000, 'm', 1_000_000],
  ['1905 millimeters', null, 1_905_000_000, 'mm', 1_000_000],
  ['0.000001 mm', null, 1, 'mm', 1],
  ['9007199254.740991 mm', null, 9_007_199_254_740_991, 'mm', 1],
]

describe('parseLength reads', () => {
  test.each(accepted)('%s with bare unit %s', (text, bareUnit, nanometres, unit, resolution) => {
    expect(parseLength(text, bareUnit)).toEqual({ ok: true, value: { nanometres, unit, resolution } })
  })
})

// Columns: text, unit of a bare number, kind, index of the first character in question, those characters.
const refused: readonly (readonly [string, LengthUnit | null, string, number, string])[] = [
  ['', 'in', 'empty', 0, ''],
  ['   ', 'in', 'empty', 0, ''],
  ['abc', 'in', 'not-a-number', 0, 'abc'],
  ['in', 'in', 'not-a-number', 0, 'in'],
  ['-', 'in', 'not-a-number', 1, ''],
  ['--3', 'in', 'not-a-number', 1, '-'],
  ['27.', 'in', 'not-a-number', 0, '27.'],
  ['1.2.3', 'in', 'not-a-number', 0, '1.2.3'],
  ['27 3/', 'in', 'not-a-number', 5, ''],
  ['27 3/x', 'in', 'not-a-number', 5, 'x'],
  ['27 3/¾', 'in', 'not-a-number', 5, '¾'],
  ["6'-", 'in', 'not-a-number', 3, ''],
  ['1e3', 'in', 'exponent', 0, '1e3'],
  ['1.5E-3 m', null, 'exponent', 0, '1.5E-3'],
  ['27,75', 'in', 'comma', 2, ','],
  ['1,905 mm', null, 'comma', 1, ','],
  ['6-3', 'in', 'ambiguous', 0, '6-3'],
  ['6-3"', null, 'ambiguous', 0, '6-3'],
  [' 6\u20133 1', 'in', 'ambiguous', 1, '6\u20133'],
  ['6 3', 'in', 'ambiguous', 0, '6 3'],
  ['1 905 mm', null, 'ambiguous', 0, '1 905'],
  ['27 - 3/4', 'in', 'ambiguous', 0, '27 - 3/4'],
  ['27 -3/4', 'in', 'ambiguous', 0, '27 -3/4'],
  ['27\u22123/4', 'in', 'ambiguous', 0, '27\u22123/4'],
  ['6\' -3"', null, 'ambiguous', 0, "6' -3"],
  ['6\'\u22123"', null, 'ambiguous', 0, "6'\u22123"],
  ['6 ft.5', null, 'ambiguous', 0, '6 ft.5'],
  ['27 3/0', 'in', 'zero-denominator', 3, '3/0'],
  ["6' 3/0", 'in', 'zero-denominator', 3, '3/0'],
  ['1/3', 'in', 'unknown-denominator', 0, '1/3'],
  ['27 5/10', 'in', 'unknown-denominator', 3, '5/10'],
  ['27 1/128', 'in', 'unknown-denominator', 3, '1/128'],
  ['3/1', 'in', 'unknown-denominator', 0, '3/1'],
  ['⅙', 'in', 'unknown-denominator', 0, '⅙'],
  ['27⅓ in', null, 'unknown-denominator', 2, '⅓'],
  ['27 5/4', 'in', 'improper-fraction', 3, '5/4'],
  ['27 4/4', 'in', 'improper-fraction', 3, '4/4'],
  ['273/4', 'in', 'improper-fraction', 0, '273/4'],
  ['27.5 3/4', 'in', 'decimal-with-fraction', 0, '27.5 3/4'],
  ['27 3.5/4', 'in', 'decimal-with-fraction', 0, '27 3.5/4'],
  ['27 3/4.0', 'in', 'decimal-with-fraction', 0, '27 3/4.0'],
  ["27 3/4'", null, 'fraction-in-unit', 0, '27 3/4'],
  ['27 3/4\u2019', null, 'fraction-in-unit', 0, '27 3/4'],
  ['27¾ mm', null, 'fraction-in-unit', 0, '27¾'],
  ['27 3/4', 'mm', 'fraction-in-unit', 0, '27 3/4'],
  ['1/2 m', null, 'fraction-in-unit', 0, '1/2'],
  ['12.5\'6"', null, 'feet-not-whole', 0, '12.5'],
  ['12 1/2 ft 6 in', null, 'feet-not-whole', 0, '12 1/2'],
  ['6\'14"', null, 'inches-not-below-twelve', 2, '14'],
  ["6'-12", null, 'inches-not-below-twelve', 3, '12'],
  ['6 ft 12 1/2 in', null, 'inches-not-below-twelve', 5, '12 1/2'],
  ['27', null, 'unit-missing', 0, '27'],
  ['-27 3/4', null, 'unit-missing', 1, '27 3/4'],
  ['27 cm', 'in', 'unknown-unit', 3, 'cm'],
  ['27 3/4 pixels', 'in', 'unknown-unit', 7, 'pixels'],
  ['3 mm 2 in', null, 'two-units', 5, '2 in'],
  ['3 in 2 ft', null, 'two-units', 5, '2 ft'],
  ['6 ft 3 mm', null, 'two-units', 5, '3 mm'],
  ["6'-3'", null, 'two-units', 3, "3'"],
  ['27 3/4 1/2', 'in', 'trailing-text', 7, '1/2'],
  ['1/8/24', 'in', 'trailing-text', 3, '/24'],
  ['27 3/4 in high', null, 'trailing-text', 10, 'high'],
  ["6' high", null, 'trailing-text', 3, 'high'],
  ['6\'3" 1/2 ', null, 'trailing-text', 5, '1/2'],
  ['12+37.50', 'ft', 'trailing-text', 2, '+37.50'],
  ['27 ± 1', 'in', 'trailing-text', 3, '± 1'],
  ['27#', 'in', 'trailing-text', 2, '#'],
  // 0.000001 in is 25.4 nm; 1/64 ft is 4.7625 mm, so feet to a 64th are never too fine
  ['0.000001 in', null, 'too-fine', 0, '0.000001 in'],
  ['0.0000001 mm', null, 'too-fine', 0, '0.0000001 mm'],
  ['0.0000000001', 'm', 'too-fine', 0, '0.0000000001'],
  [' 9007199254.740992 mm', null, 'too-large', 1, '9007199254.740992 mm'],
  ['99999999999999999999', 'in', 'too-large', 0, '99999999999999999999'],
]

describe('parseLength refuses', () => {
  test.each(refused)('%s with bare unit %s as %s', (text, bareUnit, kind, at, found) => {
    expect(parseLength(text, bareUnit)).toMatchObject({ ok: false, error: { kind, at, found } })
    expect(text.slice(at, at + found.length)).toBe(found)
  })
})

describe('parseLength of any text', () => {
  const pieces = [
    '6',
    '12',
    '3',
    '.5',
    '27.75',
    '/',
    '4',
    '¾',
    '⅓',
    "'",
    '"',
    '-',
    '\u2212',
    ' ',
    ' ',
    'in',
    'ft',
    'mm',
    'x',
    ',',
    '+',
  ]

  test('gives a whole number of nanometres or a place that lies in the text', () => {
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom(...pieces), { maxLength: 9 }),
        fc.constantFrom(null, 'in', 'm'),
        (parts, bare) => {
          const text = parts.join('')
          const parsed = parseLength(text, bare)
          if (parsed.ok) expect(Number.isSafeInteger(parsed.value.nanometres)).toBe(true)
          else expect(text.slice(parsed.error.at).startsWith(parsed.error.found)).toBe(true)
          expect(parsed.ok || (parsed.error.at >= 0 && parsed.error.at <= text.length)).toBe(true)
        },
      ),
      { seed: 1959, numRuns: 5000 },
    )
  })

  test('gives the opposite length for the opposite sign, and the same reason', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...pieces.slice(0, 11)), { minLength: 1, maxLength: 6 }), (parts) => {
        const text = parts.join(' ')
        const [plain, negative] = [parseLength(text, 'in'), parseLength(`-${text}`, 'in')]
        expect(negative.ok ? 0 - negative.value.nanometres : negative.error.kind).toBe(
          plain.ok ? plain.value.nanometres : plain.error.kind,
        )
      }),
      { seed: 1959, numRuns: 2000 },
    )
  })
})
