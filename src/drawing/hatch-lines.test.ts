import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { point } from './draw.ts'
import { hatchLines } from './hatch-lines.ts'

const length = ([a, b]: readonly [{ x: number; y: number }, { x: number; y: number }]): number =>
  Math.hypot(b.x - a.x, b.y - a.y)

const box = (x: number, y: number, w: number, h: number) => [
  point(x, y),
  point(x + w, y),
  point(x + w, y + h),
  point(x, y + h),
]

describe('hatchLines', () => {
  it('keeps every line inside a rectangle, at 45 degrees', () => {
    const coordinate = fc.integer({ min: -500, max: 500 })
    const size = fc.integer({ min: 1, max: 400 })
    fc.assert(
      fc.property(coordinate, coordinate, size, size, (x, y, w, h) => {
        for (const [a, b] of hatchLines(box(x, y, w, h), 7)) {
          for (const p of [a, b]) {
            expect(p.x).toBeGreaterThanOrEqual(x - 1e-9)
            expect(p.x).toBeLessThanOrEqual(x + w + 1e-9)
            expect(p.y).toBeGreaterThanOrEqual(y - 1e-9)
            expect(p.y).toBeLessThanOrEqual(y + h + 1e-9)
          }
          expect(b.y - a.y).toBeCloseTo(b.x - a.x, 9)
        }
      }),
      { seed: 1, numRuns: 200 },
    )
  })

  it('covers a shape evenly: the lines times their spacing make up its area, within the lattice', () => {
    const total = hatchLines(box(3, -11, 200, 100), 1).reduce((sum, one) => sum + length(one), 0)
    expect(total / (200 * 100)).toBeCloseTo(1, 2)
  })

  it('leaves out what lies between the arms of a hollow shape', () => {
    const u = [
      point(0, 0),
      point(30, 0),
      point(30, 30),
      point(20, 30),
      point(20, 10),
      point(10, 10),
      point(10, 30),
      point(0, 30),
    ]
    for (const [a, b] of hatchLines(u, 2)) {
      const middle = point((a.x + b.x) / 2, (a.y + b.y) / 2)
      expect(middle.x > 10 && middle.x < 20 && middle.y > 10).toBe(false)
    }
  })
})
