import type { LongitudinalSheet, OmissionRule } from '../hardware/hardware-sheet.ts'
import { type DividedStretch, dividedStretches, refuseDivided } from './divided-stretches.ts'
import type { EndSide } from './end-side.ts'
import { doubledRail } from './gaps-at-curb.ts'
import type { LayoutRequest, Obstructed } from './layout.ts'
import { type Frame, type PostLattice, postLattice, shifted } from './post-lattice.ts'
import type { Refusal } from './refusal.ts'
import { inchesOf, type Sixteenths, sixteenths } from './sixteenths.ts'
import { type StandingPosts, standingPosts } from './standing-posts.ts'

/** Rail that is doubled. */
interface Doubled {
  readonly from: Sixteenths
  readonly to: Sixteenths
}

/** How the posts of the run stand; all distances from the first end's origin. */
export interface PostPlan {
  readonly omitted: readonly {
    readonly at: Sixteenths
    readonly obstructions: Obstructed
    readonly rule: OmissionRule['kind']
  }[]
  readonly moved: readonly { readonly from: Sixteenths; readonly to: Sixteenths }[]
  readonly special: readonly { readonly at: Sixteenths; readonly kind: string }[]
  /** Parts of the run whose full spaces are divided. */
  readonly divided: readonly DividedStretch[]
  readonly nested: readonly Doubled[]
  /** Posts that no splice may lie on. */
  readonly noSpliceAt: readonly { readonly at: Sixteenths; readonly obstructions: Obstructed }[]
}

export const changedPosts = (plan: PostPlan): number => plan.omitted.length + plan.moved.length + plan.special.length

/** Every lawful way to stand the posts of this frame; empty when there is none, with the reasons. */
export function postPlans(
  request: LayoutRequest,
  frame: Frame,
): { readonly plans: readonly PostPlan[]; readonly refused: readonly Refusal[] } {
  const lattice = postLattice(frame, request.system)
  const divided = dividedStretches(request, frame, lattice)
  const standing = standingPosts(request, frame)
  const nested = request.reduced.filter((part) => part.nested).map((part) => shifted(part, frame))
  const refusal =
    unitPostObstructed(request, frame, standing.until) ??
    refuseDivided(request, frame, lattice, divided, standing.until) ??
    doubledInUnit(nested, frame)
  if (refusal !== null) return { plans: [], refused: [refusal] }

  const refused: Refusal[] = []
  const mostMoved = mostMovedIn(request.system)
  let answers: readonly (readonly GapAnswer[])[] = [[]]
  for (const gap of obstructedGroups(request, frame, lattice, standing)) {
    const options = gapAnswers(request, frame, lattice, divided, standing, gap)
    refused.push(...options.refused)
    const every = answers.flatMap((before) => options.answers.map((one) => [...before, one]))
    answers = every.filter((chosen) => movedIn(chosen) <= mostMoved)
    if (answers.length < every.length)
      refused.push({ kind: 'too many posts moved', obstructions: gap.obstructions, most: mostMoved })
  }
  const plans: PostPlan[] = []
  for (const chosen of answers) {
    const plan = planOf(chosen, divided, nested)
    const clash = gapsTooNear(chosen) ?? standsOtherwise(plan, frame, standing)
    if (clash === null) plans.push(plan)
    else refused.push(clash)
  }
  return { plans, refused }
}

const movedIn = (chosen: readonly GapAnswer[]): number => chosen.filter(({ movedTo }) => movedTo !== null).length

function mostMovedIn({ movedPost }: LongitudinalSheet): number {
  const most = movedPost === 'notStated' ? undefined : movedPost.mostInRun
  return most === undefined || most === 'notStated' ? Number.POSITIVE_INFINITY : most.posts
}

/** No plan of this frame changes fewer posts: each one of the run that is in the way is left out or moved. */
export function leastChanged(request: LayoutRequest, frame: Frame): number {
  const { from, to, full } = postLattice(frame, request.system)
  const standing = Math.max(from, standingPosts(request, frame).until)
  let changed = 0
  let counted = Number.NEGATIVE_INFINITY
  for (const obstruction of request.obstructions) {
    const begin = Math.max(sixteenths(obstruction.fromInches) - frame.origin, standing, counted)
    const end = Math.min(sixteenths(obstruction.toInches) - frame.origin, to)
    changed += Math.max(0, Math.ceil((end - from) / full) - Math.floor((begin - from) / full) - 1)
    counted = Math.max(counted, end)
  }
  return changed
}

function unitPostObstructed(request: LayoutRequest, frame: Frame, standing: Sixteenths): Refusal | null {
  for (const obstruction of request.obstructions) {
    const { from, to } = shifted(obstruction, frame)
    for (const [side, place] of [
      [frame.first, (at: number) => at],
      [frame.second, (at: number) => frame.length - at],
    ] as const) {
      if (side.end.kind !== 'unit') continue
      const index = side.posts.findIndex((at) => place(at) > from && place(at) < to && place(at) > standing)
      if (index >= 0)
        return { kind: 'unit post obstructed', unit: side.name, post: index + 1, obstructions: [obstruction.name] }
    }
  }
  return null
}

/** Why rail that was asked to be doubled cannot be: the panels of an end unit hang as they were tested. */
function doubledInUnit(nested: readonly Doubled[], frame: Frame): Refusal | null {
  for (const part of nested) {
    const side = reachesInto(part, frame)
    if (side !== null) return { kind: 'doubled part in unit', unit: side.name }
  }
  return null
}

/** Posts in a row, on the full lattice, that cannot stand. */
interface ObstructedGroup {
  readonly obstructions: Obstructed
  readonly posts: readonly Sixteenths[]
}

function obstructedGroups(
  request: LayoutRequest,
  frame: Frame,
  lattice: PostLattice,
  standing: StandingPosts,
): ObstructedGroup[] {
  const inTheWay = new Map<Sixteenths, Set<string>>()
  const isChanged = (at: Sixteenths): boolean =>
    standing.leftOut.has(at) || standing.moved.some(({ from }) => from === at)
  for (const obstruction of request.obstructions) {
    const { from, to } = shifted(obstruction, frame)
    const first = Math.max(1, Math.floor((from - lattice.from) / lattice.full) + 1)
    for (let at = lattice.from + first * lattice.full; at < to && at < lattice.to; at += lattice.full) {
      if (at > standing.until || isChanged(at)) inTheWay.set(at, (inTheWay.get(at) ?? new Set()).add(obstruction.name))
    }
  }
  const groups: { names: Set<string>; posts: Sixteenths[] }[] = []
  for (const [at, names] of [...inTheWay].sort(([a], [b]) => a - b)) {
    const last = groups[groups.length - 1]
    if (last !== undefined && last.posts[last.posts.length - 1] === at - lattice.full) {
      last.posts.push(at)
      for (const name of names) last.names.add(name)
    } else {
      groups.push({ names: new Set(names), posts: [at] })
    }
  }
  return groups.map(({ names, posts }) => ({ obstructions: [...names], posts }))
}

interface GapAnswer {
  readonly group: ObstructedGroup
  readonly rule: OmissionRule | null
  readonly movedTo: Sixteenths | null
  readonly special: readonly { readonly at: Sixteenths; readonly kind: string }[]
  /** From the last post that stands before the gap to the first after it; for a moved post nothing. */
  readonly gap: { readonly from: Sixteenths; readonly to: Sixteenths } | null
  readonly nested: Doubled | null
  readonly noSplice: boolean
}

function gapAnswers(
  request: LayoutRequest,
  frame: Frame,
  lattice: PostLattice,
  divided: readonly DividedStretch[],
  standing: StandingPosts,
  group: ObstructedGroup,
): { answers: readonly GapAnswer[]; refused: readonly Refusal[] } {
  const answers: GapAnswer[] = []
  const refused: Refusal[] = []
  const stands = standing.moved.find(({ from }) => group.posts.includes(from))
  // A post that was left out is not moved any more.
  const isLeftOut = group.posts.some((at) => standing.leftOut.has(at))
  const moved = isLeftOut ? null : movedPost(request, frame, group, stands?.to ?? null)
  if (moved !== null) answers.push(moved)
  if (stands !== undefined) return { answers, refused: moved === null ? [otherwise('moved', stands.to, frame)] : [] }
  for (const rule of request.system.omissions) {
    if (group.posts.length > rule.most) continue
    const answer = leftOut(request, frame, lattice, divided, standing, group, rule)
    if ('kind' in answer) refused.push(answer)
    else answers.push(answer)
  }
  const most = Math.max(0, ...request.system.omissions.map((rule) => rule.most))
  if (answers.length === 0 && group.posts.length > most) {
    const firstPost = frame.first.posts.length + (group.posts[0]! - lattice.from) / lattice.full
    refused.push({
      kind: 'too many posts obstructed',
      obstructions: group.obstructions,
      posts: group.posts.length,
      most,
      firstPost,
    })
  }
  return { answers, refused }
}

/** @param stands  where the post stands that was moved already; null where that is still free */
function movedPost(
  request: LayoutRequest,
  frame: Frame,
  group: ObstructedGroup,
  stands: Sixteenths | null,
): GapAnswer | null {
  const { movedPost } = request.system
  if (movedPost === 'notStated' || group.posts.length !== 1) return null
  const at = group.posts[0]!
  const most = sixteenths(movedPost.most.inches)
  const parts = request.obstructions.map((one) => shifted(one, frame))
  const [movedTo] = (stands === null ? parts.flatMap(({ from, to }) => [from, to]) : [stands])
    .filter((edge) => Math.abs(edge - at) <= most && parts.every(({ from, to }) => edge <= from || edge >= to))
    .sort((a, b) => Math.abs(a - at) - Math.abs(b - at))
  if (movedTo === undefined) return null
  return { group, rule: null, movedTo, special: [], gap: null, nested: null, noSplice: !movedPost.atSplice }
}

function leftOut(
  request: LayoutRequest,
  frame: Frame,
  lattice: PostLattice,
  divided: readonly DividedStretch[],
  standing: StandingPosts,
  group: ObstructedGroup,
  rule: OmissionRule,
): GapAnswer | Refusal {
  const doubled = doubledRail(rule, request.curb)
  if (doubled === null) return { kind: 'not stated at a curb', obstructions: group.obstructions, rule: rule.kind }
  const { full } = lattice
  const gap = { from: group.posts[0]! - full, to: group.posts[group.posts.length - 1]! + full }
  const each = rule.specialPostsEachSide
  const kind = rule.specialPostKind ?? ''
  const special: { at: Sixteenths; kind: string }[] = []
  for (let i = 0; i < each; i++) special.push({ at: gap.from - i * full, kind }, { at: gap.to + i * full, kind })
  const outer = { from: gap.from - Math.max(0, each - 1) * full, to: gap.to + Math.max(0, each - 1) * full }
  const blocked = request.obstructions.map((one) => shifted(one, frame))
  const fits = special.every(
    ({ at }) =>
      at > lattice.from &&
      at < lattice.to &&
      (at > standing.until || standing.special.has(at)) &&
      blocked.every(({ from, to }) => at <= from || at >= to),
  )
  const clear = divided.every((stretch) => stretch.to <= outer.from || stretch.from >= outer.to)
  if (!fits || !clear)
    return { kind: 'special posts do not fit', obstructions: group.obstructions, rule: rule.kind, each }
  if (rule.leastToEndUnit !== 'notStated') {
    const changed = each > 0 ? outer : { from: group.posts[0]!, to: group.posts[group.posts.length - 1]! }
    const have = Math.min(
      frame.first.end.kind === 'unit' ? changed.from - lattice.from : Number.POSITIVE_INFINITY,
      frame.second.end.kind === 'unit' ? lattice.to - changed.to : Number.POSITIVE_INFINITY,
    )
    if (have < sixteenths(rule.leastToEndUnit)) {
      return {
        kind: 'too near the end unit',
        obstructions: group.obstructions,
        rule: rule.kind,
        have: have / 16,
        least: rule.leastToEndUnit,
      }
    }
  }
  const middle = (gap.from + gap.to) / 2
  const half = sixteenths(doubled) / 2
  const nested = half > 0 ? { from: middle - half, to: middle + half } : null
  if (nested !== null) {
    const side = reachesInto(nested, frame)
    if (side !== null)
      return { kind: 'nested rail in unit', unit: side.name, obstructions: group.obstructions, nested: doubled }
  }
  return { group, rule, movedTo: null, special, gap, nested, noSplice: !rule.spliceOnOmittedPost }
}

/** The end unit whose panels the doubled rail would reach into; a standing run can be doubled. */
function reachesInto(nested: Doubled, { first, second, length }: Frame): EndSide | null {
  if (first.end.kind === 'unit' && nested.from < first.joint) return first
  return second.end.kind === 'unit' && nested.to > length - second.joint ? second : null
}

function gapsTooNear(chosen: readonly GapAnswer[]): Refusal | null {
  const gaps = chosen.filter((one) => one.gap !== null)
  for (let i = 1; i < gaps.length; i++) {
    const [before, after] = [gaps[i - 1]!, gaps[i]!]
    const have = after.gap!.from - before.gap!.to
    const least = Math.max(leastBetween(before.rule!), leastBetween(after.rule!))
    if (have < least) {
      return {
        kind: 'gaps too near',
        first: before.group.obstructions,
        second: after.group.obstructions,
        have: have / 16,
        least: least / 16,
      }
    }
    const specials = new Set(before.special.map(({ at }) => at))
    if (after.special.some(({ at }) => specials.has(at))) {
      return {
        kind: 'special posts do not fit',
        obstructions: after.group.obstructions,
        rule: after.rule!.kind,
        each: after.special.length / 2,
      }
    }
  }
  return null
}

/** What stands that this plan has otherwise; null where it has all of that. */
function standsOtherwise(plan: PostPlan, frame: Frame, { moved, special }: StandingPosts): Refusal | null {
  const lost = moved.find(({ to }) => !plan.moved.some((one) => one.to === to))
  if (lost !== undefined) return otherwise('moved', lost.to, frame)
  const plain = [...special].find((at) => !plan.special.some((one) => one.at === at))
  return plain === undefined ? null : otherwise('special', plain, frame)
}

const otherwise = (state: 'moved' | 'special', at: Sixteenths, { origin }: Frame): Refusal => ({
  ...{ kind: 'stands otherwise', state },
  atInches: inchesOf(at + origin),
})

function leastBetween({ leastToNextGap }: OmissionRule): Sixteenths {
  if (leastToNextGap === 'notStated') return 0
  return sixteenths(typeof leastToNextGap === 'number' ? leastToNextGap : leastToNextGap.inches)
}

function planOf(
  chosen: readonly GapAnswer[],
  divided: readonly DividedStretch[],
  nested: PostPlan['nested'],
): PostPlan {
  return {
    omitted: chosen.flatMap((one) =>
      one.rule === null
        ? []
        : one.group.posts.map((at) => ({ at, obstructions: one.group.obstructions, rule: one.rule!.kind })),
    ),
    moved: chosen.flatMap((one) => (one.movedTo === null ? [] : [{ from: one.group.posts[0]!, to: one.movedTo }])),
    special: chosen.flatMap((one) => one.special),
    divided,
    nested: [...nested, ...chosen.flatMap((one) => (one.nested === null ? [] : [one.nested]))],
    noSpliceAt: chosen.flatMap((one) =>
      one.noSplice ? one.group.posts.map((at) => ({ at, obstructions: one.group.obstructions })) : [],
    ),
  }
}
