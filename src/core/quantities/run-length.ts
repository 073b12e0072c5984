import type { EndSheet } from '../hardware/hardware-sheet.ts'
import type { LayoutPanel, Unit } from '../layout/layout.ts'
import { err, ok, type Result } from '../result.ts'
import type { Barrier } from '../staking/barrier.ts'
import { numbered, type Quantity, sumOf } from './quantity.ts'
import type { BoundarySaying } from './quantity-saying.ts'

/**
 * Where the run ends and an end unit begins, for pay:
 * - `splice`: the splice at which the unit's last panel joins the run
 * - `post`: the centre of a post, in the unit's own count from its outermost
 * - `listed length`: where the length that the unit's sheet lists runs out
 *
 * At a splice that stands, and where nobody knows what ends the rail, the run begins there by any rule.
 */
export type Boundary =
  | { readonly kind: 'splice' }
  | { readonly kind: 'post'; readonly number: number }
  | { readonly kind: 'listed length' }

export interface Boundaries {
  readonly first: Boundary
  readonly second: Boundary
}

export type BoundaryProblem =
  | { readonly kind: 'no-such-post'; readonly end: 'first' | 'second'; readonly number: number; readonly posts: number }
  | { readonly kind: 'boundaries-cross'; readonly fromInches: number; readonly toInches: number }

export interface RunLength {
  /** Inches along the rail from the centre of post 1. */
  readonly fromInches: number
  readonly toInches: number
  /** Rail between the boundaries, panel by panel. */
  readonly length: Quantity
}

/** The length of the run by the rule that the agency pays by. */
export function runLength(barrier: Barrier, rule: Boundaries): Result<RunLength, BoundaryProblem> {
  const from = boundaryOf(barrier, 'first', rule.first)
  if (!from.ok) return from
  const to = boundaryOf(barrier, 'second', rule.second)
  if (!to.ok) return to
  if (to.value < from.value) return err({ kind: 'boundaries-cross', fromInches: from.value, toInches: to.value })
  return ok({
    fromInches: from.value,
    toInches: to.value,
    length: sumOf('length/run', { kind: 'rail of run' }, 'in', pieces(barrier.layout.panels, from.value, to.value)),
  })
}

/** The boundary at one end to be said, for the head of any list that uses it; `boundary` is one that `runLength` takes. */
export function boundarySaying(barrier: Barrier, which: 'first' | 'second', boundary: Boundary): BoundarySaying {
  const end = barrier[which]
  if (end.kind === 'standing splice') return { kind: 'pay boundary at standing splice' }
  if (end.kind === 'unknown') return { kind: 'pay boundary at unknown end' }
  const of = end.sheet.kind
  switch (boundary.kind) {
    case 'splice':
      return { kind: 'pay boundary at splice', of }
    case 'post':
      return {
        kind: 'pay boundary at post',
        number: unitPost(barrier, which, boundary.number)!.number,
        own: { number: boundary.number, of },
      }
    case 'listed length':
      return { kind: 'pay boundary at listed length', of }
    default:
      return boundary satisfies never
  }
}

const pieces = (panels: readonly LayoutPanel[], from: number, to: number) =>
  panels.flatMap((panel) => {
    const amount = Math.min(panel.toInches, to) - Math.max(panel.fromInches, from)
    const whole = panel.fromInches >= from && panel.toInches <= to
    return amount > 0 ? [{ what: numbered('panel', panel.number, whole ? 'whole' : 'part'), amount }] : []
  })

/** Inches along the rail from the centre of post 1. */
function boundaryOf(barrier: Barrier, unit: 'first' | 'second', boundary: Boundary): Result<number, BoundaryProblem> {
  const end = barrier[unit]
  const inward = unit === 'first' ? 1 : -1
  if (end.kind !== 'unit') return ok(originOf(barrier, unit))
  switch (boundary.kind) {
    case 'splice':
      return ok(originOf(barrier, unit) + inward * lengthOf(barrier.layout.panels, unit))
    case 'listed length':
      return ok(originOf(barrier, unit) + inward * end.sheet.listedLength.inches)
    case 'post':
      return postOf(barrier, unit, end.sheet, boundary.number)
    default:
      return boundary satisfies never
  }
}

/** Where the outermost panel of the end begins. */
const originOf = ({ layout }: Barrier, unit: 'first' | 'second'): number =>
  unit === 'first' ? layout.panels[0]!.fromInches : layout.panels.at(-1)!.toInches

const lengthOf = (panels: readonly LayoutPanel[], unit: Unit): number =>
  panels.filter((panel) => panel.unit === unit).reduce((sum, { inches }) => sum + inches, 0)

function postOf(
  barrier: Barrier,
  unit: 'first' | 'second',
  sheet: EndSheet,
  number: number,
): Result<number, BoundaryProblem> {
  const post = unitPost(barrier, unit, number)
  return post === undefined
    ? err({ kind: 'no-such-post', end: unit, number, posts: sheet.posts.length })
    : ok(post.alongInches)
}

const unitPost = ({ layout }: Barrier, unit: 'first' | 'second', number: number) =>
  layout.posts.find((one) => one.unit === unit && one.ownNumber === number)
