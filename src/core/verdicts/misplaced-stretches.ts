import type { Nanometres } from '../units/exact-length.ts'
import { isInside, type Room, roundTo } from './proof.ts'

/** What of a space decides whether posts stand out of place. */
export interface SpaceRead {
  readonly excess: Nanometres
  /** Excesses that the next reading proves right. */
  readonly room: Room
  /** Excesses that the sheet allows. */
  readonly limits: Room
  /** Steps that a post can be moved by, the coarsest first. */
  readonly setOut: readonly Nanometres[]
  readonly isFailing: boolean
}

/** Neighbouring posts, by their numbers, that are to be moved by one amount. */
export interface Stretch {
  readonly from: number
  readonly to: number
  /** Positive downstream. */
  readonly by: Nanometres
  /** Indices of the spaces at its ends that are wrong, from the first end on. */
  readonly boundaries: readonly number[]
  /** The one of them that names it: the one before it, or for posts from the first end on the one after them. */
  readonly idFrom: number
  readonly reaches: 'first end' | 'second end' | null
  /** Posts beside it that have to be moved as well. */
  readonly with: readonly number[]
  /** Spaces that nobody read and that could say something else. */
  readonly unread: readonly number[]
}

/** Posts between two wrong spaces, which stand or are moved together. */
interface Segment {
  readonly from: number
  readonly to: number
  readonly isFixed: boolean
}

/** How many neighbouring segments are set straight between two that stay, at most: our judgement, to bound the search. */
const longestChain = 64

/**
 * Which posts to move, and by how much, so that every space that is wrong lies in its room: the fewest posts. The posts
 * between two wrong spaces are moved together; where several neighbours are moved between posts that stay, what is left
 * over is shared among their spaces. Null when posts that cannot be moved leave no way.
 *
 * @param spaces   space i lies between posts i + 1 and i + 2; null where nobody read it
 * @param isFixed  by post, whether it belongs to a run that stands
 */
export function misplacedStretches(
  spaces: readonly (SpaceRead | null)[],
  isFixed: readonly boolean[],
): readonly Stretch[] | null {
  const cuts = wrongSpaces(spaces)
  const segments = segmentsBetween(cuts, isFixed)
  const read = cuts.map((i) => spaces[i]!)
  const stays = whatStays(segments, read)
  if (stays === null) return null
  const moves = movesBetween(stays, read)
  return segments.flatMap((segment, k) => {
    if (stays[k]!) return []
    const boundaries = [k - 1, k].filter((c) => c >= 0 && c < cuts.length).map((c) => cuts[c]!)
    const neighbours = [
      ...(k > 0 && !stays[k - 1] ? [segment.from - 1] : []),
      ...(k + 1 < segments.length && !stays[k + 1] ? [segment.to + 1] : []),
    ]
    return [
      {
        from: segment.from,
        to: segment.to,
        by: moves[k]!,
        boundaries,
        idFrom: cuts[Math.max(0, k - 1)]!,
        reaches: k === 0 ? 'first end' : k === segments.length - 1 ? 'second end' : null,
        with: neighbours,
        unread: unreadBeside(spaces, segment),
      } as const,
    ]
  })
}

/** Spaces outside their room, in every row of neighbours of which one fails. */
function wrongSpaces(spaces: readonly (SpaceRead | null)[]): readonly number[] {
  const cuts: number[] = []
  let row: number[] = []
  for (const [i, space] of [...spaces, null].entries()) {
    if (space !== null && !isInside(space.room, space.excess)) {
      row.push(i)
      continue
    }
    if (row.some((at) => spaces[at]!.isFailing)) cuts.push(...row)
    row = []
  }
  return cuts
}

function segmentsBetween(cuts: readonly number[], isFixed: readonly boolean[]): readonly Segment[] {
  const starts = [0, ...cuts.map((i) => i + 1)]
  return starts.map((start, k) => {
    const end = k < cuts.length ? cuts[k]! : isFixed.length - 1
    return { from: start + 1, to: end + 1, isFixed: isFixed.slice(start, end + 1).includes(true) }
  })
}

/** By segment, whether it stays: so that the fewest posts are moved. */
function whatStays(segments: readonly Segment[], read: readonly SpaceRead[]): readonly boolean[] | null {
  const before = sums(segments.map(({ from, to }) => to - from + 1))
  const fixed = sums(segments.map(({ isFixed }) => Number(isFixed)))
  const excess = sums(read.map((one) => one.excess))
  const low = sums(read.map(({ room }) => room.low))
  const high = sums(read.map(({ room }) => room.high))
  const canChain = (i: number, j: number): boolean => {
    const left = excess[j]! - excess[i]!
    // Posts that stay on both sides differ by no more than one space may: else one side is out of place.
    const isNear = isInside(read[i]!.limits, left) && isInside(read[j - 1]!.limits, left)
    return isNear && left >= low[j]! - low[i]! && left <= high[j]! - high[i]!
  }
  const best: { readonly cost: number; readonly last: number }[] = []
  for (let j = 0; j < segments.length; j++) {
    let found = { cost: fixed[j] === 0 ? before[j]! : Number.POSITIVE_INFINITY, last: -1 }
    for (let i = j - 2; i >= Math.max(0, j - longestChain) && fixed[i + 1] === fixed[j]; i--) {
      const cost = best[i]!.cost + before[j]! - before[i + 1]!
      if (cost < found.cost && canChain(i, j)) found = { cost, last: i }
    }
    best.push(found)
  }
  const end = segments.length
  let least = { cost: Number.POSITIVE_INFINITY, at: -1 }
  for (let j = end - 1; j >= 0 && fixed[end] === fixed[j + 1]; j--) {
    const cost = best[j]!.cost + before[end]! - before[j + 1]!
    if (cost < least.cost) least = { cost, at: j }
  }
  if (least.at < 0) return null
  const stays = segments.map(() => false)
  for (let at = least.at; at >= 0; at = best[at]!.last) stays[at] = true
  return stays
}

const sums = (values: readonly number[]): readonly number[] => {
  const list = [0]
  for (const value of values) list.push(list[list.length - 1]! + value)
  return list
}

/** How far each segment is moved: nothing where it stays. */
function movesBetween(stays: readonly boolean[], read: readonly SpaceRead[]): readonly Nanometres[] {
  const moves: number[] = stays.map(() => 0)
  const staying = stays.flatMap((stay, k) => (stay ? [k] : []))
  const [first, last] = [staying[0]!, staying[staying.length - 1]!]
  for (let k = first - 1; k >= 0; k--) moves[k] = setOutMove(moves[k + 1]! + read[k]!.excess, read[k]!)
  for (let k = last + 1; k < stays.length; k++) moves[k] = setOutMove(moves[k - 1]! - read[k - 1]!.excess, read[k - 1]!)
  for (const [n, j] of staying.entries()) if (n > 0) shareOut(staying[n - 1]!, j, moves, read)
  return moves
}

const setOutMove = (wanted: Nanometres, space: SpaceRead): Nanometres =>
  roundedWhere(
    wanted,
    space.setOut,
    (move) => isInside(space.room, wanted - move) && isInside(space.room, move - wanted),
  )

/** What the spaces between two segments that stay have in excess together, as evenly as their rooms allow. */
function shareOut(from: number, to: number, moves: number[], read: readonly SpaceRead[]): void {
  const within = read.slice(from, to)
  let left = total(within.map(({ excess }) => excess))
  let lowAfter = total(within.map(({ room }) => room.low))
  let highAfter = total(within.map(({ room }) => room.high))
  for (const [n, space] of within.slice(0, -1).entries()) {
    lowAfter -= space.room.low
    highAfter -= space.room.high
    const room = { low: Math.max(space.room.low, left - highAfter), high: Math.min(space.room.high, left - lowAfter) }
    const share = Math.min(room.high, Math.max(room.low, left / (within.length - n)))
    const before = moves[from + n]! - space.excess
    const move = roundedWhere(before + share, space.setOut, (one) => isInside(room, one - before))
    moves[from + n + 1] = move
    left -= move - before
  }
}

const total = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0)

/** To the coarsest of the steps that can be set out and holds; not at all where none does. */
const roundedWhere = (
  value: Nanometres,
  steps: readonly Nanometres[],
  holds: (rounded: Nanometres) => boolean,
): Nanometres => steps.map((step) => roundTo(value, step)).find(holds) ?? Math.round(value)

/** Within the segment, and one space beyond each of its ends. */
function unreadBeside(spaces: readonly (SpaceRead | null)[], { from, to }: Segment): readonly number[] {
  const unread: number[] = []
  for (let i = Math.max(0, from - 3); i <= Math.min(spaces.length - 1, to); i++) if (spaces[i] === null) unread.push(i)
  return unread
}
