import { describe, expect, it } from 'vitest'
import type { Layout } from './layout.ts'
import { flareBends } from './run-flare.ts'

/** Posts at 0 and 600 in, rail from 37.5 to 637.5 in; post 1 stands 37.5 in upstream of the datum. */
const layout = {
  posts: [{ alongInches: 0 }, { alongInches: 600 }],
  panels: [
    { fromInches: 37.5, toInches: 337.5 },
    { fromInches: 337.5, toInches: 637.5 },
  ],
  postOneAtInches: -37.5,
} as unknown as Layout
const bends = (firstFromInches: number | null, secondFromInches: number | null) =>
  flareBends(layout, { rate: 14, firstFromInches, secondFromInches })

describe('where the rail bends into a flare of the run', () => {
  it('is counted from post 1', () => {
    expect(bends(100, 400)).toEqual({ first: 137.5, second: 437.5 })
    expect(bends(100, null)).toEqual({ first: 137.5, second: null })
    expect(bends(null, 400)).toEqual({ first: null, second: 437.5 })
  })

  it('is nowhere without a flare, and at or beyond the ends of posts and rail', () => {
    expect(flareBends(layout, null)).toEqual({ first: null, second: null })
    expect(bends(-37.5, 600)).toEqual({ first: null, second: null })
    expect(bends(-37, 599.5)).toEqual({ first: 0.5, second: 637 })
    expect(bends(-500, 5000)).toEqual({ first: null, second: null })
  })
})
