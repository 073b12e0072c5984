import { expect, test } from 'vitest'
import { strokesPath } from './photo-strokes.ts'

const on = { width: 400, height: 200 }

test('strokes lie in parts of the width and height of the photo', () => {
  const line = [
    [0, 0],
    [0.5, 0.5],
    [1, 0.25],
  ] as const
  expect(strokesPath({ ...on, strokes: [{ kind: 'line', points: line }] })).toBe('M0.0 0.0L200.0 100.0L400.0 50.0')
})

test('a circle is round in pixels, whatever the shape of the photo', () => {
  // 40 pixels to the right of its centre, and as many below it.
  for (const through of [
    [0.6, 0.5],
    [0.5, 0.7],
  ] as const) {
    const points = [[0.5, 0.5], through] as const
    expect(strokesPath({ ...on, strokes: [{ kind: 'circle', points }] })).toBe(
      'M240.0 100.0a40.0 40.0 0 1 1 -80.0 0a40.0 40.0 0 1 1 80.0 0',
    )
  }
})

test('an arrow has its barbs at its second point, behind it', () => {
  const points = [
    [0.1, 0.5],
    [0.5, 0.5],
  ] as const
  const [shaft, ...barbs] = strokesPath({ ...on, strokes: [{ kind: 'arrow', points }] })
    .split('M')
    .slice(1)
  expect(shaft).toBe('40.0 100.0L200.0 100.0')
  expect(barbs).toHaveLength(2)
  const sides = barbs.map((barb) => {
    const [x, y, backX, backY] = barb.split(/[ L]/).map(Number) as [number, number, number, number]
    expect([x, y]).toEqual([200, 100])
    expect(backX).toBeLessThan(200)
    return Math.sign(backY - 100)
  })
  expect(sides.sort()).toEqual([-1, 1])
})
