// Montana Department of Transportation, Road Design Manual, Appendix K (April 2021), example 2-1, p. 2: middle ordinate
// for a stopping sight distance of 570 ft on a radius of 1,400 ft. Printed: 28.91 ft.
import { expect, test } from 'vitest'
import { pointAlong } from '../../src/core/geometry/clothoid.ts'
import { azimuthFrom, seenFrom } from '../../src/core/geometry/point.ts'

test('the middle ordinate is 28.91 ft', () => {
  const start = { easting: 0, northing: 0 }
  const arc = { start, azimuth: 0, length: 570, curvatureStart: 1 / 1400, curvatureEnd: 1 / 1400 }
  const chord = azimuthFrom(start, pointAlong(arc, 570))
  const { right } = seenFrom(start, chord, pointAlong(arc, 285))
  // The curve turns right, so its middle lies to the left of the chord.
  expect(Math.abs(-right - 28.91)).toBeLessThanOrEqual(0.005)
})
