import { dividedStretches } from './divided-stretches.ts'
import type { LayoutRequest } from './layout.ts'
import { type Frame, postLattice } from './post-lattice.ts'
import { type Sixteenths, sixteenths } from './sixteenths.ts'

/** The posts that are driven already; all distances from the first end's origin. */
export interface StandingPosts {
  /** Posts up to here are driven and cannot be in the way of anything; they are counted through both end units. */
  readonly until: Sixteenths
  /** Where one was left out among them: that is in the way there as anywhere. */
  readonly leftOut: ReadonlySet<Sixteenths>
  /** Where one stands that was moved, and the place of the plain spacing that is next to it. */
  readonly moved: readonly { readonly from: Sixteenths; readonly to: Sixteenths }[]
  /** Where one stands that is special. */
  readonly special: ReadonlySet<Sixteenths>
}

export function standingPosts(request: LayoutRequest, frame: Frame): StandingPosts {
  const { standing, system } = request
  const { from, full } = postLattice(frame, system)
  const places = (inches: readonly number[] | undefined): readonly Sixteenths[] =>
    (inches ?? []).map((one) => sixteenths(one) - frame.origin)
  const leftOut = new Set(places(standing?.leftOutAtInches))
  const plain = (at: Sixteenths): Sixteenths => from + Math.round((at - from) / full) * full
  return {
    until: drivenUntil(request, frame, leftOut),
    leftOut,
    moved: places(standing?.movedToInches).map((to) => ({ from: plain(to), to })),
    special: new Set(places(standing?.specialAtInches)),
  }
}

function drivenUntil(request: LayoutRequest, frame: Frame, leftOut: ReadonlySet<Sixteenths>): Sixteenths {
  const driven = request.standing?.postsDriven ?? 0
  if (driven === 0) return Number.NEGATIVE_INFINITY
  const { posts } = frame.first
  if (driven <= posts.length) return posts[driven - 1]!
  const lattice = postLattice(frame, request.system)
  const divided = dividedStretches(request, frame, lattice)
  let at = lattice.from
  let more = driven - posts.length
  while (more > 0 && at < lattice.to) {
    at += lattice.full / (divided.find(({ from, to }) => at >= from && at < to)?.into ?? 1)
    if (!leftOut.has(at)) more--
  }
  const beyond = frame.second.posts.toReversed()
  return more === 0 ? at : frame.length - beyond[Math.min(more, beyond.length - 1)]!
}
