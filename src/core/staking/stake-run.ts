import { distance, type Point, pointBetween } from '../geometry/point.ts'
import { kindOfPost } from '../layout/kind-of-post.ts'
import type { LayoutPost } from '../layout/layout.ts'
import { sheetOf } from '../layout/sheet-of.ts'
import { ok, type Result } from '../result.ts'
import type { Metres } from '../units/quantity.ts'
import type { Barrier } from './barrier.ts'
import { locatePanels } from './locate-panels.ts'
import { datumOf, type RailPlace, type StakingRefusal } from './locate-rail.ts'
import { panelChords } from './panel-chords.ts'
import type { StakeSaying } from './stake-saying.ts'
import type { StakingFrame } from './staking-frame.ts'
import { tapeRail } from './tape-rail.ts'

export type StakeCode = 'POST' | 'END-POST' | 'MOVED-POST' | 'SPECIAL-POST' | 'STANDING-POST'

/** One post to set out: the point of the face of rail square to its centre. */
export interface Stake extends RailPlace {
  /** Number of the post, from 1 at the first end. */
  readonly point: number
  readonly code: StakeCode
  readonly purpose: StakeSaying
  /** From the stake before: along the rail, and straight as a tape shows it. */
  readonly fromLast: { readonly railInches: number; readonly chord: Metres } | null
  /** Where one comes by following the rail from post 1, without station and offset. */
  readonly taped: Point
}

export interface Staking {
  /** From the first end. */
  readonly stakes: readonly Stake[]
  /** By how much the two ways to the last stake miss each other, and where they miss most; m. */
  readonly closure: { readonly atLast: Metres; readonly largest: Metres; readonly atPoint: number }
}

/**
 * Every post of the run as a point to set out, each found in two ways: by station and offset, and by following the rail
 * from post 1.
 */
export function stakeRun(barrier: Barrier, frame: StakingFrame): Result<Staking, StakingRefusal> {
  const { posts } = barrier.layout
  const along = posts.map(({ alongInches }) => alongInches)
  const places = locatePanels(barrier, frame, along)
  if (!places.ok) return places
  const taped = tapePanels(barrier, frame, along)
  if (!taped.ok) return taped
  const stakes = posts.map((post, i): Stake => {
    const place = places.value[i]!
    const before = places.value[i - 1]
    return {
      ...place,
      point: post.number,
      code: codeOf(post, barrier),
      purpose: purposeOf(post, barrier),
      fromLast:
        before === undefined
          ? null
          : {
              railInches: place.alongInches - before.alongInches,
              chord: distance(before.position, place.position),
            },
      taped: taped.value[i]!,
    }
  })
  return ok({ stakes, closure: closureOf(stakes) })
}

/** The points reached by following the rail, within straight panels on their chords. */
function tapePanels(
  barrier: Barrier,
  frame: StakingFrame,
  alongInches: readonly number[],
): Result<readonly Point[], StakingRefusal> {
  const chords = panelChords(barrier, alongInches)
  const start = locatePanels(barrier, frame, chords.along.slice(0, 1))
  if (!start.ok) return start
  const taped = tapeRail(barrier, frame, datumOf(barrier), chords.along, start.value[0]!.position)
  if (!taped.ok) return taped
  const points = taped.value
  return ok(
    chords.places.map(({ at, within }) =>
      within === null ? points[at]! : pointBetween(points[within.from]!, points[within.to]!, within.share),
    ),
  )
}

function closureOf(stakes: readonly Stake[]): Staking['closure'] {
  const misses = stakes.map(({ position, taped }) => distance(position, taped))
  const largest = Math.max(...misses)
  return { atLast: misses.at(-1)!, largest, atPoint: stakes[misses.indexOf(largest)]!.point }
}

function codeOf(post: LayoutPost, { layout }: Barrier): StakeCode {
  switch (post.state) {
    case 'moved':
      return 'MOVED-POST'
    case 'special':
      return 'SPECIAL-POST'
    case 'standing':
      return 'STANDING-POST'
    case 'regular':
      return post.number === 1 || post.number === layout.posts.length ? 'END-POST' : 'POST'
  }
}

function purposeOf(post: LayoutPost, barrier: Barrier): StakeSaying {
  const { block, ownNumber: number, unit, state } = post
  const end = unit === 'run' ? null : barrier[unit]
  return {
    kind: 'post at stake',
    ...{ of: kindOfPost(post, sheetOf(barrier, post.unit)), block },
    own: end?.kind === 'unit' && number !== null ? { number, unit: end.sheet.kind } : null,
    state: state === 'moved' ? 'moved' : state === 'standing' ? 'stands already' : null,
  }
}
