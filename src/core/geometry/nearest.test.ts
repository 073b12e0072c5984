import { describe, expect, test } from 'vitest'
import type { Clothoid } from './clothoid.ts'
import { feetOn } from './nearest.ts'

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
