import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { azimuthAlong, type Clothoid, endOf, pointAlong } from './clothoid.ts'
import { distance } from './point.ts'

const origin = { easting: 0, northing: 0 }

/** Outside check: composite Simpson rule on 4,000 intervals. */
function bySimpson(line: Clothoid, along: number) {
  const n = 4000
  let easting = line.start.easting
  let northing = line.start.northing
  for (let i = 0; i <= n; i++) {
    const weight = ((i === 0 || i === n ? 1 : i % 2 ? 4 : 2) * along) / n / 3
    const azimuth = azimuthAlong(line, (along * i) / n)
    easting += weight * Math.sin(azimuth)
    northing += weight * Math.cos(azimuth)
  }
  return { easting, northing }
}

const clothoids = fc.record({
  start: fc.constant(origin),
  azimuth: fc.double({ min: -7, max: 7, noNaN: true }),
  length: fc.double({ min: 1, max: 600, noNaN: true }),
  curvatureStart: fc.double({ min: -0.01, max: 0.01, noNaN: true }),
  curvatureEnd: fc.double({ min: -0.01, max: 0.01, noNaN: true }),
})

describe('a clothoid', () => {
  test('ends where numerical integration of its direction ends, whatever its two curvatures', () => {
    fc.assert(
      fc.property(clothoids, fc.double({ min: 0, max: 1, noNaN: true }), (line, share) => {
        const along = share * line.length
        expect(distance(pointAlong(line, along), bySimpson(line, along))).toBeLessThan(1e-9)
      }),
      { seed: 31, numRuns: 300 },
    )
  })

  test('is the same line walked backwards', () => {
    fc.assert(
      fc.property(clothoids, (line) => {
        const back: Clothoid = {
          start: endOf(line),
          azimuth: azimuthAlong(line, line.length) + Math.PI,
          length: line.length,
          curvatureStart: -line.curvatureEnd,
          curvatureEnd: -line.curvatureStart,
        }
        expect(distance(endOf(back), line.start)).toBeLessThan(1e-10)
      }),
      { seed: 32, numRuns: 300 },
    )
  })

  test('goes over into an arc without a step when its change of curvature vanishes', () => {
    const arc = { start: origin, azimuth: 1, length: 200, curvatureStart: 0.01, curvatureEnd: 0.01 }
    for (const change of [1e-3, 1e-5, 5.1e-5, 4.9e-5, 1e-8, 1e-12, 1e-15]) {
      const bent = { ...arc, curvatureEnd: 0.01 + change }
      expect(distance(endOf(bent), bySimpson(bent, 200))).toBeLessThan(1e-10)
      expect(distance(endOf(bent), endOf(arc))).toBeLessThan(change * 200 * 200)
    }
  })

  test('turns right when its curvature is positive', () => {
    const right = { start: origin, azimuth: 0, length: 10, curvatureStart: 0.1, curvatureEnd: 0.1 }
    expect(pointAlong(right, 10).easting).toBeGreaterThan(0)
    expect(pointAlong({ ...right, curvatureStart: 0, curvatureEnd: -0.1 }, 10).easting).toBeLessThan(0)
  })
})
