import { describe, expect, it } from 'vitest'
import { normalDistribution } from '../../src/core/measurement/normal.ts'

// Abramowitz and Stegun, Handbook of Mathematical Functions (1964), Table 26.1: P(x), fifteen decimals as printed.
const table = [
  [0, 0.5],
  [0.5, 0.691462461274013],
  [1, 0.841344746068543],
  [1.5, 0.933192798731142],
  [2, 0.977249868051821],
  [2.5, 0.993790334674224],
  [3, 0.99865010196837],
] as const

describe('the normal distribution function', () => {
  it.each(table)('at %d is %d (Table 26.1)', (x, p) => {
    expect(Math.abs(normalDistribution(x) - p)).toBeLessThanOrEqual(1e-15 * 2)
    expect(Math.abs(normalDistribution(-x) - (1 - p))).toBeLessThanOrEqual(1e-15 * 2)
  })
})
