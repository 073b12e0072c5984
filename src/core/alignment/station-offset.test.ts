import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { distance } from '../geometry/point.ts'
import type { Polyline } from '../geometry/polyline.ts'
import { azimuthAt, endStation, type HorizontalAlignment, layAlignment, pointAt } from './horizontal-alignment.ts'
import { offsetLength, offsetLine } from './offset-line.ts'
import { pointToStationOffset, stationOffsetToPoint } from './station-offset.ts'

const start = { point: { easting: 600_000, northing: 200_000 }, azimuth: 0.7, station: 3000 }
const tangent = (length: number) => ({ length, curvatureStart: 0, curvatureEnd: 0 })
const arc = (length: number, radius: number) => ({ length, curvatureStart: 1 / radius, curvatureEnd: 1 / radius })
const spiral = (length: number, from: number, to: number) => ({ length, curvatureStart: from, curvatureEnd: to })

/** Tangent, spiral, curve, spiral between two radii, curve, reversing spiral, curve, spiral, tangent. */
const road = layAlignment(start, [
  tangent(200),
  spiral(90, 0, 1 / 300),
  arc(160, 300),
  spiral(40, 1 / 300, 1 / 150),
  arc(80, 150),
  spiral(150, 1 / 150, -1 / 200),
  arc(120, -200),
  spiral(60, -1 / 200, 0),
  tangent(250),
])

const bend = layAlignment(start, [tangent(100), arc(50 * Math.PI, 50), tangent(100)])

describe('station and offset', () => {
  test('go to a point and back, to a micrometre, anywhere nearer than the centre of curvature', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: -45, max: 45, noNaN: true }),
        (share, offset) => {
          const station = 3000 + share * (endStation(road) - 3000)
          const point = stationOffsetToPoint(road, { station, offset })
          if (!point.ok) throw new Error(point.error.kind)
          const answers = pointToStationOffset(road, point.value)
          const same = answers.filter((a) => Math.abs(a.station - station) < 1e-6 && Math.abs(a.offset - offset) < 1e-6)
          expect(same).toHaveLength(1)
          for (const answer of answers) {
            if (answer.kind !== 'square') continue
            const back = stationOffsetToPoint(road, answer)
            expect(back.ok && distance(back.value, point.value)).toBeLessThan(1e-6)
          }
        },
      ),
      { seed: 41, numRuns: 1500 },
    )
  })

  test('hold up to a millimetre from the centre of a curve', () => {
    for (const reach of [49, 49.9, 49.99, 49.999]) {
      const point = stationOffsetToPoint(bend, { station: 3120, offset: reach })
      if (!point.ok) throw new Error(point.error.kind)
      const [first, ...others] = pointToStationOffset(bend, point.value)
      const back = first && stationOffsetToPoint(bend, first)
      expect(back?.ok && distance(back.value, point.value)).toBeLessThan(1e-6)
      // a coordinate of 600,000 m is a multiple of 1.2e-10 m, which the short arm to the centre turns into stations
      expect(Math.abs(first!.station - 3120)).toBeLessThan(Math.max(1e-6, (2e-10 * 50) / (50 - reach)))
      for (const other of others) expect(Math.abs(other.offset)).toBeGreaterThan(reach)
    }
  })

  test('miss no nearest place: the first answer is as near as the nearest of 20,000 samples', () => {
    const samples = Array.from({ length: 20_001 }, (_, i) =>
      pointAt(road, 3000 + ((endStation(road) - 3000) * i) / 20_000),
    )
    fc.assert(
      fc.property(
        fc.double({ min: -200, max: 900, noNaN: true }),
        fc.double({ min: -200, max: 900, noNaN: true }),
        (e, n) => {
          const point = { easting: 600_000 + e, northing: 200_000 + n }
          const sampled = Math.min(...samples.map((sample) => distance(sample, point)))
          const ends = Math.min(distance(point, samples[0]!), distance(point, samples.at(-1)!))
          const [first] = pointToStationOffset(road, point)
          const found = first === undefined ? ends : Math.min(ends, Math.abs(first.offset))
          expect(found).toBeLessThanOrEqual(sampled + 1e-9)
          expect(found).toBeGreaterThan(sampled - 0.03)
        },
      ),
      { seed: 42, numRuns: 150 },
    )
  })

  test('inside a bend there are several answers, nearest first, and none is invented', () => {
    const centre = stationOffsetToPoint(bend, { station: 3100, offset: 50 })
    if (!centre.ok) throw new Error('no centre')
    const atCentre = pointToStationOffset(bend, centre.value)
    expect(atCentre).toEqual([
      {
        kind: 'curve centre',
        station: expect.closeTo(3100, 6),
        toStation: expect.closeTo(3100 + 50 * Math.PI, 6),
        offset: expect.closeTo(50, 6),
      },
    ])
    // 1 m back from the centre, square to both tangents and nothing else: the curve is nearest to neither
    const azimuth = azimuthAt(bend, 3050)
    const behind = {
      easting: centre.value.easting - 1 * Math.sin(azimuth),
      northing: centre.value.northing - Math.cos(azimuth),
    }
    expect(pointToStationOffset(bend, behind).map((a) => [a.kind, Math.round(a.station * 1e6) / 1e6])).toEqual([
      ['square', 3099],
      ['square', 3101 + Math.round(50 * Math.PI * 1e6) / 1e6],
    ])
  })

  test('past the centre of curvature and past the ends there is no point', () => {
    expect(stationOffsetToPoint(bend, { station: 3150, offset: 50.1 })).toEqual({
      ok: false,
      error: { kind: 'past-centre', station: 3150, offset: 50.1, radius: 50 },
    })
    expect(stationOffsetToPoint(bend, { station: 2999, offset: 0 })).toMatchObject({ error: { kind: 'off-alignment' } })
    expect(() => stationOffsetToPoint(bend, { station: Number.NaN, offset: 0 })).toThrow(RangeError)
  })

  test('at a kink the outer wedge is answered by the kink and the inner one by both tangents', () => {
    const kinked: HorizontalAlignment = {
      startStation: 0,
      elements: [
        { start: { easting: 0, northing: 0 }, azimuth: 0, ...tangent(100), station: 0 },
        { start: { easting: 0, northing: 100 }, azimuth: 0.5, ...tangent(100), station: 100 },
      ],
    }
    expect(pointToStationOffset(kinked, { easting: -10, northing: 101 })).toEqual([
      { kind: 'kink', station: 100, offset: -Math.hypot(10, 1) },
    ])
    expect(pointToStationOffset(kinked, { easting: 10, northing: 97 })).toHaveLength(2)
  })
})

describe('the line beside the alignment', () => {
  test('has the length that its points have', () => {
    for (const offset of [-40, -3, 0, 8, 40]) {
      const line = offsetLine(road, 3050, 4000, offset, 1e-4)
      if (!line.ok) throw new Error('no line')
      expect(Math.abs(polylineLength(line.value) - offsetLength(road, 3050, 4000, offset))).toBeLessThan(0.005)
    }
  })

  test('is refused where the road turns tighter than the offset', () => {
    expect(offsetLine(bend, 3000, 3300, 50, 0.01)).toEqual({
      ok: false,
      error: { kind: 'tighter-than-offset', radius: 50, offset: 50 },
    })
    expect(offsetLine(bend, 3000, 3300, -500, 0.01).ok).toBe(true)
  })
})

const polylineLength = (line: Polyline): number =>
  line.slice(1).reduce((sum, point, i) => sum + distance(line[i]!, point), 0)
