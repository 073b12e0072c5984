import { describe, expect, test } from 'vitest'
import type { Clothoid } from './clothoid.ts'
import { meetingsOf } from './intersection.ts'
import { feetOn } from './nearest.ts'
import { nearestOnPolyline, polylineLength } from './polyline.ts'

const start = { easting: 0, northing: 0 }
const segment: Clothoid = { start, azimuth: 0, length: 100, curvatureStart: 0, curvatureEnd: 0 }
const arc: Clothoid = { start, azimuth: 0, length: 50 * Math.PI, curvatureStart: 0.02, curvatureEnd: 0.02 }
const spiral: Clothoid = { start, azimuth: 0, length: 120, curvatureStart: 0, curvatureEnd: 0.02 }

describe('the feet of a point', () => {
  test('on a segment: one beside it, none beyond its ends', () => {
    expect(feetOn(segment, { easting: -3, northing: 40 })).toEqual([{ from: 40, to: 40, offset: -3 }])
    expect(feetOn(segment, { easting: 5, northing: 100.001 })).toEqual([])
    expect(feetOn(segment, { easting: 5, northing: -0.001 })).toEqual([])
  })

  test('on an arc: one inside it, one outside it, the whole arc from its centre, none from behind the centre', () => {
    const [inside] = feetOn(arc, { easting: 50, northing: 30 })
    expect(inside!.from).toBeCloseTo(25 * Math.PI, 9)
    expect(inside!.offset).toBeCloseTo(20, 12)
    const [outside] = feetOn(arc, { easting: 50, northing: 80 })
    expect(outside!.offset).toBeCloseTo(-30, 12)
    expect(feetOn(arc, { easting: 50, northing: 0 })).toEqual([{ from: 0, to: arc.length, offset: 50 }])
    expect(feetOn(arc, { easting: 50, northing: -20 })).toEqual([])
  })

  test('on a spiral: none where the point lies behind every normal, one beside it', () => {
    expect(feetOn(spiral, { easting: 0, northing: -5 })).toEqual([])
    expect(feetOn(spiral, { easting: -2, northing: 10 })).toHaveLength(1)
  })
})

describe('meetings of a line with a straight line', () => {
  test('two on an arc that it cuts twice, at the chord', () => {
    const meetings = meetingsOf(arc, { easting: -10, northing: 30 }, { easting: 110, northing: 30 })
    expect(meetings.map((m) => m.reach)).toEqual([expect.closeTo(20, 9), expect.closeTo(100, 9)])
  })

  test('none when the straight line ends before it', () => {
    expect(meetingsOf(arc, { easting: -10, northing: 30 }, { easting: 5, northing: 30 })).toEqual([])
    expect(meetingsOf(segment, { easting: 1, northing: 0 }, { easting: 1, northing: 50 })).toEqual([])
  })
})

test('a polyline answers with its nearest place', () => {
  const line = [
    { easting: 0, northing: 0 },
    { easting: 0, northing: 10 },
    { easting: 10, northing: 10 },
  ]
  expect(polylineLength(line)).toBe(20)
  expect(nearestOnPolyline(line, { easting: 4, northing: 7 })).toEqual({ along: 14, away: 3 })
  expect(nearestOnPolyline(line, { easting: -3, northing: -4 })).toEqual({ along: 0, away: 5 })
})
