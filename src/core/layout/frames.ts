import type { EndSide } from './end-side.ts'
import type { LayoutRequest } from './layout.ts'
import { type Frame, postLattice } from './post-lattice.ts'
import type { Refusal } from './refusal.ts'
import { inchesOf, type Sixteenths, sixteenths } from './sixteenths.ts'

export const fixedAt = (end: LayoutRequest['first']): Sixteenths | null =>
  end.atInches === null ? null : sixteenths(end.atInches)

/** Where the ends can stand and how much rail lies between them, for one way to close each end. */
export function frames(
  request: LayoutRequest,
  first: EndSide,
  second: EndSide,
  step: Sixteenths,
  hung: Sixteenths,
  refuse: (refusal: Refusal) => void,
): Frame[] {
  const [standing, fixed] = [standingOrigin(request, first), fixedAt(request.first)]
  if (standing !== null && fixed !== null && standing !== fixed) {
    refuse({ kind: 'stands elsewhere', by: inchesOf(Math.abs(standing - fixed)) })
    return []
  }
  const start = standing ?? fixed
  const finish = fixedAt(request.second)
  const joints = first.joint + second.joint
  const short = shortOfNeed(request, first, second, start, finish)
  if (short !== null) {
    refuse(short)
    return []
  }
  if (start !== null && finish !== null)
    return fixedFrame({ first, second, origin: start, length: finish - start }, request, step, hung, refuse)

  const { fromInches, toInches } = request.need!
  const [from, to] = [sixteenths(fromInches), sixteenths(toInches)]
  const [before, after] = [first.countsFrom ?? 0, second.countsFrom ?? 0]
  const least =
    start !== null ? to + after - start : finish !== null ? finish - from + before : before + after + to - from
  const found: Frame[] = []
  const steps = Math.max(hung / step, Math.ceil((least - joints) / step), 0)
  const shortest = joints + steps * step
  const longest = shortest + sixteenths(request.mayExtendInches)
  for (let length = shortest; length <= longest; length += step) {
    for (const origin of origins(request, { first, second, length, start, finish, from, to })) {
      const frame = { first, second, origin, length }
      if (postsMeet(frame, request)) found.push(frame)
    }
  }
  return found
}

/** Why an end that cannot move leaves part of the need without rail that counts; null when none does. */
function shortOfNeed(
  { need }: LayoutRequest,
  first: EndSide,
  second: EndSide,
  start: Sixteenths | null,
  finish: Sixteenths | null,
): Refusal | null {
  if (need === null) return null
  const atFirst =
    start === null || first.countsFrom === null ? 0 : start + first.countsFrom - sixteenths(need.fromInches)
  const atSecond =
    finish === null || second.countsFrom === null ? 0 : sixteenths(need.toInches) - finish + second.countsFrom
  if (atFirst > 0) return { kind: 'does not cover', end: 'first', shortBy: inchesOf(atFirst) }
  return atSecond > 0 ? { kind: 'does not cover', end: 'second', shortBy: inchesOf(atSecond) } : null
}

function standingOrigin(request: LayoutRequest, first: EndSide): Sixteenths | null {
  return request.standing === null ? null : sixteenths(request.standing.postOneAtInches) - first.posts[0]!
}

function postsMeet(frame: Frame, request: LayoutRequest): boolean {
  const { from, to, full } = postLattice(frame, request.system)
  return to > from && (to - from) % full === 0
}

function fixedFrame(
  frame: Frame,
  request: LayoutRequest,
  step: Sixteenths,
  hung: Sixteenths,
  refuse: (refusal: Refusal) => void,
): Frame[] {
  const { from, to, full } = postLattice(frame, request.system)
  const between = frame.length - frame.first.joint - frame.second.joint
  if (between >= 0 && hung > between) {
    refuse({ kind: 'hung too long', by: inchesOf(hung - between) })
    return []
  }
  if (between < 0 || between % step !== 0) {
    const shorter = Math.floor(between / step) * step
    const rail = (run: Sixteenths): number => inchesOf(run + frame.length - between)
    refuse({
      kind: 'ends do not meet',
      between: inchesOf(frame.length),
      nearestShorter: shorter < 0 ? null : rail(shorter),
      nearestLonger: rail(Math.max(0, shorter + step)),
    })
    return []
  }
  if (to <= from || (to - from) % full !== 0) {
    refuse({
      kind: 'posts do not meet',
      remainder: inchesOf((((to - from) % full) + full) % full),
      spacing: inchesOf(full),
    })
    return []
  }
  return [frame]
}

interface OriginQuestion {
  readonly first: EndSide
  readonly second: EndSide
  readonly length: Sixteenths
  readonly start: Sixteenths | null
  readonly finish: Sixteenths | null
  readonly from: Sixteenths
  readonly to: Sixteenths
}

/**
 * Where the first origin can lie. With both ends free the run can slide as long as it covers the need; what is lawful
 * changes only where a post passes an edge of an obstruction or is its utmost move inside one, where one of the full
 * lattice passes an edge of a reduced part, and where doubled rail begins or ends at the joint of an end unit; so those
 * places and the two ends of the slide are all that has to be tried.
 */
function origins(request: LayoutRequest, question: OriginQuestion): Sixteenths[] {
  const { first, second, length, start, finish, from, to } = question
  if (start !== null) return [start]
  if (finish !== null) return [finish - length]
  const last = from - first.countsFrom!
  const earliest = to + second.countsFrom! - length
  const found = new Set<Sixteenths>([last, earliest])
  const meet = (edge: Sixteenths, places: readonly Sixteenths[]): void => {
    for (const at of places) if (edge - at >= earliest && edge - at <= last) found.add(edge - at)
  }
  const lattice = postLattice({ first, second, origin: 0, length }, request.system)
  const meetPosts = (edge: Sixteenths, space: Sixteenths): void => {
    const nearest = Math.max(0, Math.ceil((edge - last - lattice.from) / space))
    for (let at = lattice.from + nearest * space; edge - at >= earliest && at <= lattice.to; at += space)
      found.add(edge - at)
  }
  const unitPosts = [...first.posts, ...second.posts.map((at) => length - at)]
  const space = lattice.full / finestDivision(request)
  const moved = request.system.movedPost === 'notStated' ? 0 : sixteenths(request.system.movedPost.most.inches)
  for (const obstruction of request.obstructions) {
    const [begin, end] = [sixteenths(obstruction.fromInches), sixteenths(obstruction.toInches)]
    for (const edge of [begin, end, begin + moved, end - moved]) {
      meet(edge, unitPosts)
      meetPosts(edge, space)
    }
  }
  for (const part of request.reduced) {
    const [begin, end] = [sixteenths(part.fromInches), sixteenths(part.toInches)]
    if (part.nested) {
      meet(begin, [first.joint])
      meet(end, [length - second.joint])
    }
    if (part.spacing !== 'full') for (const edge of [begin, end]) meetPosts(edge, lattice.full)
  }
  return [...found]
}

/** Into how many spaces a full one may be divided somewhere in the run. */
function finestDivision({ reduced }: LayoutRequest): 1 | 2 | 4 {
  if (reduced.some(({ spacing }) => spacing === 'quarter')) return 4
  return reduced.some(({ spacing }) => spacing === 'half') ? 2 : 1
}
