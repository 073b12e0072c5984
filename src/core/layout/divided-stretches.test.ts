import { describe, expect, it } from 'vitest'
import { type DividedStretch, isDividedPost } from './divided-stretches.ts'

describe('a post within what is divided', () => {
  const divided: readonly DividedStretch[] = [
    { from: 0, to: 400, into: 2 },
    { from: 400, to: 600, into: 4 },
    { from: 1000, to: 1200, into: 2 },
  ]
  const lattice = { from: -200, to: 2000, full: 100 }
  it.each([
    [50, true],
    [100, true],
    [350, true],
    [425, true],
    [575, true],
    [1050, true],
    // Where two stretches meet there is one; at their outer ends the spaces beyond are full.
    [400, true],
    [0, false],
    [600, false],
    [1000, false],
    [1200, false],
    // Off the divided lattice, or beyond it.
    [25, false],
    [410, false],
    [-50, false],
    [650, false],
  ])('%d: %s', (at, stands) => {
    expect(isDividedPost(divided, lattice, at)).toBe(stands)
  })
})
