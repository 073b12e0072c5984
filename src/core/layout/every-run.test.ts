import { describe, expect, it } from 'vitest'
import { faultsOf, recount } from '../../../test/referee/layout-faults.ts'
import {
  type Fixed,
  mulberry32,
  randomReducedRun,
  randomRun,
  randomStandingRun,
} from '../../../test/referee/random-runs.ts'
import type { Layout, LayoutRequest } from './layout.ts'
import { solveLayout } from './solve-layout.ts'

const fixed: readonly Fixed[] = ['first', 'second', 'both', 'none']

/** The best runs of a request and those that come after them. */
function runsOf(request: LayoutRequest): readonly Layout[] {
  const solved = solveLayout(request)
  if (!solved.ok) throw new Error(solved.error.kind)
  const found: Layout[] = []
  for (const layout of solved.value.runs) if (found.push(layout) === 12) break
  return found
}

const keys = ['changedPosts', 'oddPanels', 'railInches', 'pieces'] as const
const isBefore = (one: Layout, other: Layout): boolean => {
  const key = keys.find((each) => one.score[each] !== other.score[each])
  return key === undefined || one.score[key] < other.score[key]
}

/** The integer program looks at the best run of each alone; here every run is held to the rules, written a second time. */
describe('every run that is given, and not the best alone,', () => {
  it.each([
    ['with obstructions and a short stock', randomRun, 71, 80],
    ['with parts at reduced spacing', randomReducedRun, 72, 80],
    ['where something stands', randomStandingRun, 74, 240],
  ] as const)('%s: is lawful, counted right, in its order and given once', (_, random, seed, requests) => {
    const dice = mulberry32(seed)
    let runs = 0
    for (let i = 0; i < requests; i++) {
      const request = random(dice, fixed[i % 4]!)
      const layouts = runsOf(request)
      for (const layout of layouts) {
        expect([i, faultsOf(request, layout)]).toEqual([i, []])
        expect([i, layout.score]).toEqual([i, recount(layout, request.system)])
      }
      expect([i, layouts.slice(1).every((layout, at) => isBefore(layouts[at]!, layout))]).toEqual([i, true])
      // Two that differ only by where they lie are one.
      const pieces = layouts.map(({ posts, panels }) => JSON.stringify([posts, panels.map(({ inches }) => inches)]))
      expect([i, new Set(pieces).size]).toEqual([i, layouts.length])
      runs += layouts.length
    }
    expect(runs).toBeGreaterThan(100)
  })
})
