import { describe, expect, it } from 'vitest'
import { dimensionParts } from './dimension-parts.ts'
import { dimension, point } from './draw.ts'

describe('dimensionParts', () => {
  it('lays the dimension line parallel to what it measures, at its offset to the left', () => {
    const { lines } = dimensionParts(dimension('d', point(0, 0), point(0, 30), 5, '30 in', 7), 0.1)
    expect(lines.at(-1)).toMatchObject({ from: point(-5, 0), to: point(-5, 30) })
  })

  it('writes upward from below to above, whichever end comes first', () => {
    const up = dimensionParts(dimension('d', point(0, 0), point(0, 30), 5, '30 in', 7), 0.1).text
    const down = dimensionParts(dimension('d', point(0, 30), point(0, 0), -5, '30 in', 7), 0.1).text
    expect(up.turnDegrees).toBeCloseTo(90)
    expect(down.turnDegrees).toBeCloseTo(up.turnDegrees)
    expect(down.at.x).toBeCloseTo(up.at.x)
  })

  it('keeps a level text upright when the dimension runs from right to left', () => {
    const { text } = dimensionParts(dimension('d', point(30, 0), point(0, 0), 5, '30 in', 7), 0.1)
    expect(text.turnDegrees).toBeCloseTo(0)
    expect(text.at.y).toBeGreaterThan(-5)
  })
})
