import type { LayoutPost } from '../layout/layout.ts'
import { flareBends } from '../layout/run-flare.ts'
import { flareRunsOutAt } from '../staking/unit-flare.ts'
import { endSheetOf, type RunModel } from './run-model.ts'

/** The straight line of rail that an end unit stands off. */
export interface RunLine {
  /** The run's posts on it. */
  readonly posts: readonly LayoutPost[]
  /** True where it is a flare of the run itself. */
  readonly isFlared: boolean
}

/** The line that the rail has where the end unit begins: the run's flare toward that end, or else its parallel part. */
export function runLineAt(model: RunModel, end: 'first' | 'second'): RunLine {
  const { layout } = model
  const { first, second } = flareBends(layout, model.flare)
  const from = Math.max(
    runsOutAt(model, 'first') ?? -Infinity,
    end === 'second' ? (second ?? first ?? -Infinity) : -Infinity,
  )
  const to = Math.min(
    runsOutAt(model, 'second') ?? Infinity,
    end === 'first' ? (first ?? second ?? Infinity) : Infinity,
  )
  return {
    posts: layout.posts.filter(({ unit, alongInches }) => unit === 'run' && alongInches >= from && alongInches <= to),
    isFlared: (end === 'first' ? first : second) !== null,
  }
}

/** Where the unit's own flare has run out: beside a long adapter panel posts of the run still stand in it. */
function runsOutAt(model: RunModel, end: 'first' | 'second'): number | null {
  const sheet = endSheetOf(model, end)
  return sheet === null ? null : flareRunsOutAt(model.layout, end, sheet)
}
