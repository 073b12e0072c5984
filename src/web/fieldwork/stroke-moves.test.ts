import { expect, test } from 'vitest'
import { centredStroke, grownStroke, isTap, isWithin, movedStroke } from './stroke-moves.ts'

const size = { width: 400, height: 200 }
const arrow = {
  kind: 'arrow',
  points: [
    [0.5, 0.5],
    [0.6, 0.5],
  ],
} as const

test('a stroke is moved by a fortieth of the longer edge, whichever way', () => {
  expect(movedStroke(arrow, size, 1, 0).points).toEqual([
    [0.525, 0.5],
    [0.625, 0.5],
  ])
  expect(movedStroke(arrow, size, 0, -1).points).toEqual([
    [0.5, 0.45],
    [0.6, 0.45],
  ])
})

test('a stroke keeps its length in pixels when it is turned', () => {
  // 40 pixels to the right are 40 pixels down after a quarter turn.
  expect(grownStroke(arrow, size, 1, Math.PI / 2).points).toEqual([
    [0.5, 0.5],
    [0.5, 0.7],
  ])
  expect(grownStroke(arrow, size, 2, 0).points[1]).toEqual([0.7, 0.5])
})

test('a stroke is on the photo as long as all of its points are', () => {
  expect(isWithin(centredStroke('circle', size))).toBe(true)
  expect(isWithin(movedStroke(arrow, size, 16, 0))).toBe(true)
  expect(isWithin(movedStroke(arrow, size, 17, 0))).toBe(false)
  expect(isWithin(movedStroke(arrow, size, 0, 11))).toBe(false)
})

test('a tap is no stroke, a line that comes back to where it began is one', () => {
  expect(isTap(arrow)).toBe(false)
  expect(isTap({ ...arrow, points: [arrow.points[0], [0.505, 0.505]] })).toBe(true)
  expect(
    isTap({
      kind: 'line',
      points: [
        [0.5, 0.5],
        [0.8, 0.5],
        [0.5, 0.5],
      ],
    }),
  ).toBe(false)
})
