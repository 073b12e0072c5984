import { describe, expect, it } from 'vitest'
import { exactValue, stepsPer, valueIn } from '../../src/core/units/quantity-kinds.ts'

// Recalled, the document was not at hand. NIST SP 811, 2008, appendix B.8: foot 3.048 E-01 m (exactly), pound-force 4.448 222 E+00 N, pound-force foot
// 1.355 818 E+00 N·m; footnote 23 gives the pound-force exactly, 4.448 221 615 260 5 N.
describe('factors of NIST SP 811, appendix B.8', () => {
  it('has the pound-force as printed', () => {
    expect(stepsPer('lbf') / stepsPer('kN')).toBeCloseTo(4.4482216152605e-3, 18)
    expect((stepsPer('lbf') / stepsPer('kN')) * 1000).toBeCloseTo(4.448222, 6)
  })

  it('has the pound-force foot as the exact product of foot and pound-force, and as printed', () => {
    // In whole numbers: 4.4482216152605 times 0.3048.
    expect(44_482_216_152_605n * 3048n).toBe(135_581_794_833_140_040n)
    expect(stepsPer('lbf·ft') / stepsPer('N·m')).toBeCloseTo(1.3558179483314, 14)
    expect(stepsPer('lbf·ft') / stepsPer('N·m')).toBeCloseTo(1.355818, 6)
  })

  it('takes 100 lbf·ft for 135.5818 N·m and 10 kN for 2248.089 lbf', () => {
    expect(valueIn(exactValue(100, 'lbf·ft'), 'N·m')).toBeCloseTo(135.5818, 4)
    // 10 kN / 4.4482216152605 N
    expect(valueIn(exactValue(10, 'kN'), 'lbf')).toBeCloseTo(2248.089, 3)
  })
})
