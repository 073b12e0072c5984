// Open-access surveying text by J. Mahun, chapter E "Spirals", section 9 (power-series method): a spiral of 300 ft that
// turns 0.235619 rad. Its radius, 636.62 ft, follows from the two. Printed to 0.01 ft and to the second.
//
// Errors of the printed page, which this test names instead of following:
//  - x at 180 ft is printed 198.87, a slip of digits for 179.87;
//  - x at 240 ft is printed 239.46, where the series gives 239.4548 (one unit in the last place);
//  - the chord column c repeats x; the chord is sqrt(x² + y²), computed here from outside the project.
import { expect, test } from 'vitest'
import { azimuthAlong, type Clothoid, pointAlong } from '../../src/core/geometry/clothoid.ts'
import { azimuthFrom, distance } from '../../src/core/geometry/point.ts'

const length = 300
const spiral: Clothoid = {
  start: { easting: 0, northing: 0 },
  azimuth: 0,
  length,
  curvatureStart: 0,
  curvatureEnd: (2 * 0.235619) / length,
}

const printed = [
  { l: 60, delta: 0.009425, x: 60.0, y: 0.19, a: '0-10-48', chord: 59.9998 },
  { l: 120, delta: 0.037699, x: 119.98, y: 1.51, a: '0-43-12', chord: 119.9924 },
  { l: 180, delta: 0.084823, x: 179.87, y: 5.09, a: '1-37-12', chord: 179.9424 },
  { l: 240, delta: 0.150796, x: 239.45, y: 12.04, a: '2-52-46', chord: 239.7575 },
  { l: 300, delta: 0.235619, x: 298.34, y: 23.47, a: '4-29-52', chord: 299.2604 },
]

test.each(printed)('the spiral at $l ft', ({ l, delta, x, y, a, chord }) => {
  const point = pointAlong(spiral, l)
  expect(Math.abs(azimuthAlong(spiral, l) - delta)).toBeLessThanOrEqual(0.6e-6)
  expect(Math.abs(point.northing - x)).toBeLessThanOrEqual(0.00501)
  expect(Math.abs(point.easting - y)).toBeLessThanOrEqual(0.00501)
  expect(inDegreesMinutesSeconds(azimuthFrom(spiral.start, point))).toBe(a)
  expect(Math.abs(distance(spiral.start, point) - chord)).toBeLessThanOrEqual(0.00006)
})

test('the printed x at 180 ft, 198.87, cannot be: it is longer than the spiral up to there', () => {
  expect(pointAlong(spiral, 180).northing).toBeLessThan(180)
})

function inDegreesMinutesSeconds(angle: number): string {
  const seconds = Math.round((angle * 180 * 3600) / Math.PI)
  const two = (n: number) => String(n).padStart(2, '0')
  return `${Math.floor(seconds / 3600)}-${two(Math.floor(seconds / 60) % 60)}-${two(seconds % 60)}`
}
