import { describe, expect, test } from 'vitest'
import { cohenKappa, fleissKappa, krippendorffAlpha } from './agreement.ts'
import { detectionOf } from './detection.ts'
import { rateOf, timesForWidth } from './intervals.ts'

describe('the interval of a share', () => {
  /** R. G. Newcombe, Statistics in Medicine 17, 1998, table I, method 3 (score without continuity correction). */
  test.each([
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718],
  ])('is that of the published examples: %d of %d', (times, of, low, high) => {
    const rate = rateOf(times, of)
    expect([rate.low, rate.high].map((one) => Number(one.toFixed(4)))).toEqual([low, high])
  })

  test('holds where every time came out so, and says all of nothing', () => {
    expect(rateOf(20, 20).low).toBeCloseTo(1 - 0.1611, 4)
    expect(rateOf(20, 20).high).toBe(1)
    expect(rateOf(0, 0)).toEqual({ times: 0, of: 0, rate: null, low: 0, high: 1 })
  })

  test('is as wide as wished with so many times, and wider with one less', () => {
    const n = timesForWidth(0.8, 0.25)
    const width = (times: number): number => rateOf(0.8 * times, times).high - rateOf(0.8 * times, times).low
    expect([width(n) <= 0.25, width(n - 1) > 0.25]).toEqual([true, true])
  })
})

describe('detection', () => {
  /** Counts of H. Stanislaw and N. Todorov, 1999 (20 of 25 and 10 of 25); figures by Python's statistics.NormalDist. */
  test('is that of an independent computation', () => {
    const found = detectionOf(20, 25, 10, 25)!
    expect(found.sensitivity).toBeCloseTo(1.044498707092581, 9)
    expect(found.criterion).toBeCloseTo(-0.2788451757356595, 9)
    expect(found.sensitivityHigh - found.sensitivity).toBeCloseTo(0.7433385470318303, 9)
  })

  test('is finite for who found all and called nothing wrong, and nothing for who guesses', () => {
    expect(detectionOf(10, 10, 0, 40)!.sensitivity).toBeCloseTo(3.941547326087692, 9)
    expect(detectionOf(5, 10, 5, 10)!.sensitivity).toBeCloseTo(0, 12)
    expect(detectionOf(0, 0, 0, 10)).toBeNull()
  })
})

describe('agreement', () => {
  /** K. Krippendorff, Computing Krippendorff's alpha-reliability, 2011, C: four observers, twelve units; alpha = 0.743. */
  const observers = ['123321412...', '1233224125.3', '.3332342251.', '12332441251.']
  const units = Array.from({ length: 12 }, (_, i) => observers.map((row) => (row[i] === '.' ? null : row[i]!)))

  test('of four observers of whom not all said something is the published 0.743', () => {
    expect(krippendorffAlpha(units)).toBeCloseTo(0.743, 3)
  })

  /** The table of fourteen raters and ten subjects by which Fleiss' kappa is taught; kappa = 0.210. */
  const counts = [
    [0, 0, 0, 0, 14],
    [0, 2, 6, 4, 2],
    [0, 0, 3, 5, 6],
    [0, 3, 9, 2, 0],
    [2, 2, 8, 1, 1],
    [7, 7, 0, 0, 0],
    [3, 2, 6, 3, 0],
    [2, 5, 3, 2, 2],
    [6, 5, 2, 1, 0],
    [0, 2, 2, 3, 7],
  ]

  test('of fourteen raters is the published 0.210', () => {
    const said = counts.map((row) => row.flatMap((n, word) => Array.from({ length: n }, () => String(word))))
    expect(fleissKappa(said)).toBeCloseTo(0.21, 3)
  })

  test('of two is (0.7 - 0.5) / (1 - 0.5) for 20 yes of both, 15 no of both, 5 and 10 apart', () => {
    const rows = [
      [20, 'y', 'y'],
      [5, 'y', 'n'],
      [10, 'n', 'y'],
      [15, 'n', 'n'],
    ] as const
    const said = rows.flatMap(([n, a, b]) => Array.from({ length: n }, () => [a, b]))
    expect(cohenKappa(said)).toBeCloseTo(0.4, 12)
    expect(cohenKappa([...said, ['y', null]])).toBeCloseTo(0.4, 12)
  })

  test('is not told where everybody always said the same, or nobody met', () => {
    const same = [
      ['y', 'y'],
      ['y', 'y'],
    ]
    expect([cohenKappa(same), fleissKappa(same), krippendorffAlpha(same)]).toEqual([null, null, null])
    expect([cohenKappa([]), fleissKappa([]), krippendorffAlpha([['y', null]])]).toEqual([null, null, null])
  })
})
