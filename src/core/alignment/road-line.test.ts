import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { pointAt } from './horizontal-alignment.ts'
import { roadLine } from './road-line.ts'

const metres = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const turns = fc.constantFrom('left' as const, 'right' as const)

describe('the line of a road', () => {
  it('is the same for a circle and for an alignment of one arc of it', () => {
    fc.assert(
      fc.property(
        metres(50, 5000),
        turns,
        metres(-40, 40),
        metres(-500, 500),
        metres(1, 100),
        (r, turn, offset, at, long) => {
          const curve = roadLine({ kind: 'curve', radius: r, turn })
          const elements = roadLine({ kind: 'elements', horizontal: curve.alignmentAround(at, at + long) })
          expect(elements.lengthBeside(at, at + long, offset)).toBeCloseTo(curve.lengthBeside(at, at + long, offset), 6)
          expect(elements.lengthBeside(at + long, at, offset)).toBeCloseTo(curve.lengthBeside(at + long, at, offset), 6)
          for (const sign of [1, -1] as const) {
            const radius = curve.sharpestRadius(at, at + long, sign)
            const same = elements.sharpestRadius(at + long, at, sign)
            if (radius === null) expect(same).toBeNull()
            else expect(same).toBeCloseTo(radius, 6)
          }
        },
      ),
      { seed: 13 },
    )
  })

  it('is shorter on the inside of a curve by offset times angle: 100 m on a radius of 200 m turn by half a radian', () => {
    const right = roadLine({ kind: 'curve', radius: 200, turn: 'right' })
    expect(right.lengthBeside(0, 100, 10)).toBe(95)
    expect(right.lengthBeside(0, 100, -10)).toBe(105)
    const left = roadLine({ kind: 'curve', radius: 200, turn: 'left' })
    expect(left.lengthBeside(0, 100, 10)).toBe(105)
    expect(left.lengthBeside(100, 0, 10)).toBe(-105)
  })

  it('turns right to the east of north, and left to the west', () => {
    const quarter = 50 * Math.PI
    const right = roadLine({ kind: 'curve', radius: 100, turn: 'right' }).alignmentAround(0, quarter / 3)
    expect(right.startStation).toBeCloseTo(-quarter / 3, 9)
    const end = pointAt(right, right.startStation + quarter)
    expect([end.easting, end.northing]).toEqual([expect.closeTo(100, 9), expect.closeTo(100, 9)])
    const left = roadLine({ kind: 'curve', radius: 100, turn: 'left' }).alignmentAround(0, quarter / 3)
    expect(pointAt(left, left.startStation + quarter).easting).toBeCloseTo(-100, 9)
  })

  it('of a straight road goes on at both ends and is as long at any offset', () => {
    const line = roadLine({ kind: 'straight' })
    expect([line.isStraight, line.reach, line.radius, line.sharpestRadius(0, 1e6, 1)]).toEqual([true, null, null, null])
    expect(line.lengthBeside(250, 100, 12)).toBe(-150)
    const around = line.alignmentAround(10, 20)
    expect([around.startStation, pointAt(around, 30)]).toEqual([0, { easting: 0, northing: 30 }])
  })

  it('described by elements is known between its ends, and is straight only as far as it is', () => {
    const { horizontal } = { horizontal: roadLine({ kind: 'straight' }).alignmentAround(100, 200) }
    const line = roadLine({ kind: 'elements', horizontal })
    expect(line.reach).toEqual({ from: 0, to: 300 })
    expect(line.sharpestRadius(-50, 1000, -1)).toBeNull()
    expect(line.isStraight).toBe(false)
  })
})
