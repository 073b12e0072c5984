import { describe, expect, it } from 'vitest'
import { distance } from '../geometry/point.ts'
import { cutAlignment } from './cut-alignment.ts'
import { azimuthAt, endStation, layAlignment, pointAt } from './horizontal-alignment.ts'

const whole = layAlignment({ point: { easting: 0, northing: 0 }, azimuth: 1, station: 1000 }, [
  { length: 100, curvatureStart: 0, curvatureEnd: 0 },
  { length: 60, curvatureStart: 0, curvatureEnd: 1 / 200 },
  { length: 80, curvatureStart: 1 / 200, curvatureEnd: 1 / 200 },
])

describe('a part of an alignment', () => {
  it('runs where the whole runs, also where it begins and ends within a spiral or an arc', () => {
    const part = cutAlignment(whole, 1130, 1200)
    expect([part.startStation, endStation(part), part.elements.length]).toEqual([1130, 1200, 2])
    for (let station = 1130; station <= 1200; station += 3.5) {
      expect(distance(pointAt(part, station), pointAt(whole, station))).toBeLessThan(1e-9)
      expect(azimuthAt(part, station)).toBeCloseTo(azimuthAt(whole, station), 12)
    }
  })

  it('ends where the whole ends', () => {
    expect(cutAlignment(whole, 900, 9000)).toEqual(whole)
    expect(() => cutAlignment(whole, 1240, 1300)).toThrow(RangeError)
  })
})
