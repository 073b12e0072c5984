import { describe, expect, it } from 'vitest'
import type { Dimension } from '../../src/core/hardware/hardware-sheet.ts'
import { judgeMeasured, probabilityWithin } from '../../src/core/verdicts/judge-measured.ts'

describe('probability of conformity (JCGM 106:2012)', () => {
  // 7.5.1, breakdown voltage: V = -5.47 V, u = 0.05 V, upper limit -5.40 V; recalled, printed there to two places: 0.92
  it('is 0.92 in the example of the Zener diode', () => {
    expect(probabilityWithin(-5.47, 0.05, null, -5.4)).toBeCloseTo(0.92, 2)
  })

  // ILAC-G8:09/2019, table 1: a guard band w = U leaves a specific risk of false acceptance below 2.5 %
  it('leaves less than 2.5 % false acceptance one expanded uncertainty inside a single limit', () => {
    const risk = 1 - probabilityWithin(1, 0.5, 0, null)
    expect(risk).toBeLessThan(0.025)
    expect(risk).toBeGreaterThan(0.02)
  })

  // ILAC-G8:09/2019, table 1: simple acceptance, w = 0, risks up to 50 %
  it('is one half on the limit', () => {
    expect(probabilityWithin(27.75, 0.2, 27.75, null)).toBeCloseTo(0.5, 14)
  })
})

describe('guard bands (JCGM 106:2012, 8.3.2)', () => {
  const floor: Dimension = {
    nominal: 'notStated',
    low: 27.75,
    high: 'notStated',
    unit: 'in',
    role: 'floor',
    measured: '',
    source: '',
    confirmation: 'published',
  }
  const inch = 25_400_000
  const guarded = { kind: 'guard band', multiple: 1 } as const
  // acceptance limit A = T + w with w = U = 2u; u = 0.1 in, so A = 27.95 in, and certain rejection below 27.55 in
  it.each([
    [27.95, 'meets'],
    [27.9, 'too close'],
    [27.75, 'too close'],
    [27.55, 'too close'],
    [27.5, 'fails'],
  ] as const)('judges %d in against the floor of 27 3/4 in as %s', (value, verdict) => {
    expect(
      judgeMeasured(Math.round(value * inch), { fixed: 0.1 * inch, relative: 0 }, floor, guarded, false)?.verdict,
    ).toBe(verdict)
  })
})
