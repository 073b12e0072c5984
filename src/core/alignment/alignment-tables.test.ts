import { describe, expect, test } from 'vitest'
import { distance, movedBy } from '../geometry/point.ts'
import { degrees } from '../units/quantity.ts'
import { crossSlopeAt, riseAt } from './cross-slope.ts'
import { azimuthAt, endStation, layAlignment, pointAt } from './horizontal-alignment.ts'
import { meaningsOf, writtenStations } from './station-equations.ts'
import { profileAt, verticalAlignment } from './vertical-alignment.ts'

describe('station equations', () => {
  // at 1000 the stationing jumps ahead to 1200 (a gap), at 2000 (written 2200) back to 2100 (an overlap)
  const equations = [
    { internal: 1000, back: 1000, ahead: 1200 },
    { internal: 2000, back: 2200, ahead: 2100 },
  ]

  test('a written station in the overlap means two places, in the gap none, elsewhere one', () => {
    expect(meaningsOf(equations, 2150)).toEqual([
      { internal: 1950, region: 1 },
      { internal: 2050, region: 2 },
    ])
    expect(meaningsOf(equations, 1100)).toEqual([])
    expect(meaningsOf(equations, 900)).toEqual([{ internal: 900, region: 0 }])
    expect(meaningsOf(equations, 2300)).toEqual([{ internal: 2200, region: 2 }])
  })

  test('an equation itself is one place with two written stations', () => {
    expect(writtenStations(equations, 1000)).toEqual([1000, 1200])
    expect(meaningsOf(equations, 1000)).toEqual([{ internal: 1000, region: 0 }])
    expect(meaningsOf(equations, 1200)).toEqual([{ internal: 1000, region: 1 }])
    expect(writtenStations(equations, 1950)).toEqual([2150])
  })

  test('what is written leads back to the place', () => {
    for (let internal = 0; internal <= 3000; internal += 12.5)
      for (const written of writtenStations(equations, internal))
        expect(meaningsOf(equations, written).map((m) => m.internal)).toContainEqual(expect.closeTo(internal, 9))
  })
})

describe('the vertical alignment', () => {
  // y = y(PVC) + g1 x + (g2 - g1) x² / 2L: +3 % to -2 %, PVI 500 at 100.00, L = 400; high point at x = 3 · 400/5 = 240
  const made = verticalAlignment([
    { station: 0, elevation: 85, curveLength: 0 },
    { station: 500, elevation: 100, curveLength: 400 },
    { station: 1000, elevation: 90, curveLength: 0 },
  ])
  if (!made.ok) throw new Error(made.error.kind)

  test('follows grades outside the parabola and the parabola inside', () => {
    expect(profileAt(made.value, 100)).toEqual({ elevation: 88, grade: 0.03 })
    expect(profileAt(made.value, 540)!.elevation).toBeCloseTo(94 + 0.03 * 240 - (0.05 * 240 * 240) / 800, 12)
    expect(profileAt(made.value, 540)!.grade).toBeCloseTo(0, 15)
    expect(profileAt(made.value, 500)!.elevation).toBeCloseTo(100 - (0.05 * 400) / 8, 12)
    expect(profileAt(made.value, 700)!.elevation).toBeCloseTo(96, 12)
    expect(profileAt(made.value, 1000)!.elevation).toBe(90)
    expect(profileAt(made.value, 1000.1)).toBeNull()
  })

  test('refuses curves that overlap and stations that fall back', () => {
    const point = (station: number, curveLength: number) => ({ station, elevation: 0, curveLength })
    expect(verticalAlignment([point(0, 0), point(100, 150), point(200, 100)])).toMatchObject({
      error: { kind: 'curves-overlap', index: 2, overlap: 25 },
    })
    expect(verticalAlignment([point(0, 0), point(0, 0)])).toMatchObject({
      error: { kind: 'stations-fall-back', index: 1 },
    })
  })
})

test('cross slope runs out evenly from crown to superelevation', () => {
  const table = [
    { station: 0, left: -0.02, right: -0.02 },
    { station: 100, left: 0.06, right: -0.06 },
  ]
  expect(crossSlopeAt(table, 50)).toEqual({ left: expect.closeTo(0.02, 15), right: expect.closeTo(-0.04, 15) })
  expect(riseAt(table, 200, -3.6)).toBeCloseTo(0.216, 12)
  expect(riseAt(table, -5, 3.6)).toBeCloseTo(-0.072, 12)
})

// Constructed arithmetic cases (not published): expected values computed outside the project by adaptive quadrature.
describe('a spiralled curve, constructed', () => {
  const cases = [
    {
      name: 'R 800 ft, L 250 ft, I 50 degrees, PI 200+00',
      input: [800, 250, 50] as const,
      pi: 20_000,
      parts: {
        x: 249.3903,
        y: 12.9981,
        shift: 3.2524,
        shiftAt: 124.8983,
        tangent: 499.4611,
        external: 86.2909,
        arc: 448.1317,
      },
      tangents: { longTangent: 166.8803, shortTangent: 83.5276 },
      stations: [19_500.539, 19_750.539, 20_198.671, 20_448.671],
    },
    {
      name: 'R 636.6198 ft, L 300 ft, I 40 degrees, PI 100+00',
      input: [636.6198, 300, 40] as const,
      pi: 10_000,
      parts: {
        x: 298.3388,
        y: 23.4687,
        shift: 5.8788,
        shiftAt: 149.7228,
        tangent: 383.5732,
        external: 47.113,
        arc: 144.4445,
      },
      tangents: { longTangent: 200.5847, shortTangent: 100.5318 },
      stations: [9616.427, 9916.427, 10_060.871, 10_360.871],
    },
  ]

  test.each(cases)('$name', ({ input: [radius, spiral, deflection], pi, parts, tangents, stations }) => {
    const turning = degrees(deflection)
    const curvature = 1 / radius
    const start = { point: { easting: 0, northing: 0 }, azimuth: 0, station: pi - parts.tangent }
    const laid = layAlignment(start, [
      { length: spiral, curvatureStart: 0, curvatureEnd: curvature },
      { length: parts.arc, curvatureStart: curvature, curvatureEnd: curvature },
      { length: spiral, curvatureStart: curvature, curvatureEnd: 0 },
    ])
    const near = (found: number, value: number) => expect(Math.abs(found - value)).toBeLessThan(2e-4)
    const ends = [...laid.elements.map((element) => element.station), endStation(laid)]
    ends.forEach((station, i) => {
      expect(Math.abs(station - stations[i]!)).toBeLessThan(0.6e-3)
    })
    // The spiral ends at X and Y, where its direction leads back to the tangent.
    const circle = laid.elements[1]!
    near(circle.start.northing, parts.x)
    near(circle.start.easting, parts.y)
    near(circle.start.northing - circle.start.easting / Math.tan(circle.azimuth), tangents.longTangent)
    near(circle.start.easting / Math.sin(circle.azimuth), tangents.shortTangent)
    // The circle's centre lies R + p beside the tangent and k along it.
    const centre = movedBy(circle.start, circle.azimuth, 0, radius)
    near(centre.easting - radius, parts.shift)
    near(centre.northing, parts.shiftAt)
    // The whole turns by I, ends on the other tangent as far from the point of intersection, and passes it at E.
    near(azimuthAt(laid, endStation(laid)), turning)
    const corner = { easting: 0, northing: parts.tangent }
    const end = pointAt(laid, endStation(laid))
    near(end.easting, movedBy(corner, turning, parts.tangent, 0).easting)
    near(end.northing, movedBy(corner, turning, parts.tangent, 0).northing)
    near(distance(corner, pointAt(laid, circle.station + parts.arc / 2)), parts.external)
  })
})
