// Penn State University, lecture "Horizontal Curves", p. 4: degree of curve 4 (arc definition), R = 1432.39 ft, arc of
// 76.62 ft from PC to station 62+00. Printed: deflection 1-31-57, chord 76.61 ft.
import { expect, test } from 'vitest'
import { pointAlong } from '../../src/core/geometry/clothoid.ts'
import { azimuthFrom, distance } from '../../src/core/geometry/point.ts'

test('deflection and chord to the first station on the curve', () => {
  const curvature = 1 / 1432.39
  const curve = {
    start: { easting: 0, northing: 0 },
    azimuth: 0,
    length: 100,
    curvatureStart: curvature,
    curvatureEnd: curvature,
  }
  const station = pointAlong(curve, 76.62)
  const angle = azimuthFrom(curve.start, station)
  const chord = distance(curve.start, station)
  const printedAngle = ((1 + 31 / 60 + 57 / 3600) * Math.PI) / 180
  expect(Math.abs(angle - printedAngle)).toBeLessThanOrEqual((0.5 / 3600) * (Math.PI / 180))
  expect(Math.abs(chord - 76.61)).toBeLessThanOrEqual(0.005)
})
