import type { LayoutPost } from '../layout/layout.ts'
import { flareBends } from '../layout/run-flare.ts'
import type { RunModel } from './run-model.ts'

/** The straight line of rail that an end unit stands off. */
export interface RunLine {
  /** The run's posts on it. */
  readonly posts: readonly LayoutPost[]
  /** True where it is a flare of the run itself. */
  readonly isFlared: boolean
}

/** The line that the rail has where the end unit begins: the run's flare toward that end, or else its parallel part. */
export function runLineAt({ layout, flare }: RunModel, end: 'first' | 'second'): RunLine {
  const { first, second } = flareBends(layout, flare)
  const from = end === 'second' ? (second ?? first ?? -Infinity) : -Infinity
  const to = end === 'first' ? (first ?? second ?? Infinity) : Infinity
  return {
    posts: layout.posts.filter(({ unit, alongInches }) => unit === 'run' && alongInches >= from && alongInches <= to),
    isFlared: (end === 'first' ? first : second) !== null,
  }
}
