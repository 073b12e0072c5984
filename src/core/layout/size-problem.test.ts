import { describe, expect, it } from 'vitest'
import { shippedSheets } from '../../sheets/shipped-sheets.ts'
import type { LongitudinalSheet } from '../hardware/hardware-sheet.ts'
import { longestRunInches } from '../units/longest-run.ts'
import type { LayoutRequest, RunEnd } from './layout.ts'
import { sizeProblem } from './size-problem.ts'

const system = shippedSheets.find(({ id }) => id === 'w-beam-midspan-31') as LongitudinalSheet
const at = (atInches: number): RunEnd => ({ kind: 'standing splice', atInches, position: 'midspan' })

const problem = (first: number, second: number, changes: Partial<LayoutRequest> = {}) =>
  sizeProblem({
    ...{ system, first: at(first), second: at(second), need: null, stock: null, obstructions: [], reduced: [] },
    ...{ standing: null, mayExtendInches: 0, ...changes },
  })

describe('a run that is too long', () => {
  const most = longestRunInches
  it('is longer than the longest between its ends, its need or what stands', () => {
    expect(problem(0, most)).toBeNull()
    expect(problem(0, most + 1)).toEqual({ kind: 'too long', inches: most + 1, most })
    expect(problem(100, 200, { need: { fromInches: -1, toInches: most } })).toMatchObject({ inches: most + 1 })
    const standing = { postOneAtInches: -150, panels: [150, 150], postsDriven: 0 }
    expect(problem(0, most, { standing })).toMatchObject({ inches: most + 150 })
    expect(problem(-most, 0, { standing: { ...standing, panels: [150, 300] } })).toMatchObject({ inches: most + 300 })
  })
})

describe('a run with too many posts', () => {
  // 6,001 spaces of 75 in; at quarter spacing each of them has three posts more: 6,001 + 3 x 1,333 = 10,000.
  const of = (spaces: number, spacing: 'half' | 'quarter' | 'full', from = 0) => ({
    reduced: [{ fromInches: from, toInches: 75 * spaces, spacing, nested: false } as const],
  })
  it('has more than 10,000, those at reduced spacing counted as far as they lie in the run', () => {
    const posts = (changes: Partial<LayoutRequest>) => problem(0, 75 * 6001, changes)
    expect(posts(of(1333, 'quarter'))).toBeNull()
    expect(posts(of(1334, 'quarter'))).toEqual({ kind: 'too many posts', posts: 10_003, most: 10_000 })
    expect(posts(of(3999, 'half'))).toBeNull()
    expect(posts(of(4000, 'half'))).toMatchObject({ posts: 10_001 })
    expect(posts(of(6001, 'full'))).toBeNull()
    expect(posts(of(1333, 'quarter', -1_000_000))).toBeNull()
    expect(posts(of(9999, 'quarter', 75 * 5000))).toBeNull()
    expect(posts({ reduced: [...of(-5000, 'quarter', -900_000).reduced] })).toBeNull()
  })
})
