// Montana Department of Transportation, Road Design Manual, Appendix K (April 2021), example 2-1, p. 2: middle ordinate
// for a stopping sight distance of 570 ft on a radius of 1,400 ft. Printed: 28.91 ft.
import { expect, test } from 'vitest'
import { middleOrdinate } from '../../src/core/geometry/arc.ts'

test('the middle ordinate is 28.91 ft', () => {
  expect(Math.abs(middleOrdinate(1400, 570) - 28.91)).toBeLessThanOrEqual(0.005)
})
