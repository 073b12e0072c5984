import { expect } from 'vitest'
import type { LayoutRequest, LayoutScore } from '../../src/core/layout/layout.ts'
import { solveLayout } from '../../src/core/layout/solve-layout.ts'
import { faultsOf, recount } from './layout-faults.ts'

/** How the solver's best runs compare with the referee's, and how much there was to compare. */
export interface Tally {
  lawful: number
  unlawful: number
  withChangedPosts: number
  withOddPanels: number
  readonly differences: unknown[]
}

export function compareOptima(
  requests: Iterable<LayoutRequest>,
  optimum: (request: LayoutRequest) => LayoutScore | null,
): Tally {
  const tally: Tally = { lawful: 0, unlawful: 0, withChangedPosts: 0, withOddPanels: 0, differences: [] }
  let run = 0
  for (const request of requests) {
    const expected = optimum(request)
    const { score, faults } = solved(request)
    if (expected === null) tally.unlawful++
    else tally.lawful++
    if (expected !== null && expected.changedPosts > 0) tally.withChangedPosts++
    if (expected !== null && expected.oddPanels > 0) tally.withOddPanels++
    if (JSON.stringify(score) !== JSON.stringify(expected) || faults.length > 0)
      tally.differences.push({ run, integerProgram: expected, solver: score, faults, request: brief(request) })
    run++
  }
  return tally
}

/** The solver's best run, with its score counted again from the pieces. */
export function solved(request: LayoutRequest): { score: LayoutScore | null; faults: readonly string[] } {
  const search = solveLayout(request)
  if (!search.ok) throw new Error(`not a request: ${search.error.kind}`)
  const [layout] = firstOf(search.value.runs)
  if (layout === undefined) return { score: null, faults: [] }
  const counted = recount(layout, request.system)
  expect(layout.score).toEqual(counted)
  return { score: counted, faults: faultsOf(request, layout) }
}

function* firstOf<T>(items: Iterable<T>): Generator<T> {
  for (const item of items) return yield item
}

/** The request without the sheets' text, to be read in a failure. */
const brief = ({ system, first, second, ...rest }: LayoutRequest) => ({
  system: system.id,
  ...rest,
  ends: [first, second].map((end) => (end.kind === 'unit' ? { unit: end.sheet.id, atInches: end.atInches } : end)),
})
