import { ok, type Result } from '../result.ts'
import type { Barrier } from '../staking/barrier.ts'
import { postBolts, spliceBolts } from './count-bolts.ts'
import { countBlocks, countEnds, countPanels, countPosts } from './count-pieces.ts'
import { type PayRounding, payLength } from './pay-length.ts'
import { numbered, type Quantity, sumOf } from './quantity.ts'
import { type Boundaries, type BoundaryProblem, type RunLength, runLength } from './run-length.ts'
import { spareParts } from './spare-parts.ts'

export interface QuantityRule {
  readonly boundaries: Boundaries
  readonly rounding: PayRounding
  /** Posts that are in the ground already, from the first end on. */
  readonly postsDriven: number
}

/** What a run is made of and paid by; every total lists its pieces. */
export interface Quantities {
  readonly run: RunLength
  /** Feet paid for the run. */
  readonly paidFeet: number
  /** All rail from end to end, end units included. */
  readonly installed: Quantity
  /** Terminals, anchors and transitions, paid by each. */
  readonly ends: readonly Quantity[]
  readonly posts: readonly Quantity[]
  readonly blocks: Quantity
  readonly panels: readonly Quantity[]
  readonly bolts: readonly Quantity[]
  readonly spares: readonly Quantity[]
}

/** The quantities of a run; what stands or hangs already is counted apart. */
export function takeQuantities(barrier: Barrier, rule: QuantityRule): Result<Quantities, BoundaryProblem> {
  const run = runLength(barrier, rule.boundaries)
  if (!run.ok) return run
  const posts = countPosts(barrier, rule.postsDriven)
  const blocks = countBlocks(barrier, rule.postsDriven)
  const panels = countPanels(barrier)
  const bolts = [...spliceBolts(barrier), ...postBolts(barrier)]
  return ok({
    run: run.value,
    paidFeet: payLength(run.value.length.amount, rule.rounding),
    installed: sumOf(
      'length/installed',
      { kind: 'rail from end to end' },
      'in',
      barrier.layout.panels.map(({ number, inches }) => ({ what: numbered('panel', number), amount: inches })),
    ),
    ends: countEnds(barrier),
    posts,
    blocks,
    panels,
    bolts,
    spares: spareParts({ posts, blocks, panels, bolts }),
  })
}
