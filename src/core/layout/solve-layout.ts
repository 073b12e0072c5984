import { atHeight, type HardwareAtHeight } from '../hardware/hardware-saying.ts'
import type { LongitudinalSheet } from '../hardware/hardware-sheet.ts'
import { err, ok, type Result } from '../result.ts'
import { buildLayout } from './build-layout.ts'
import { isDividedPost } from './divided-stretches.ts'
import { type EndSide, endSides } from './end-side.ts'
import { fixedAt, frames } from './frames.ts'
import { Heap } from './heap.ts'
import type { Layout, LayoutRequest, LayoutScore } from './layout.ts'
import { adapterToHang, hungPrefix, misplacedLength, panelKinds } from './panel-kinds.ts'
import { type PanelKind, type PanelOrder, panelOrders } from './panel-orders.ts'
import { noPostParts } from './post-clearance.ts'
import { type Frame, postLattice } from './post-lattice.ts'
import { changedPosts, leastChanged, type PostPlan, postPlans } from './post-plan.ts'
import type { Refusal } from './refusal.ts'
import { greatestCommonDivisor, inchesOf, type Sixteenths, sixteenths } from './sixteenths.ts'
import { type SizeProblem, sizeProblem } from './size-problem.ts'

/** What makes a request impossible to search at all. */
export type LayoutProblem =
  | { readonly kind: 'need missing' }
  | {
      readonly kind: 'unit does not join'
      readonly unit: HardwareAtHeight
      readonly system: HardwareAtHeight
      readonly joins: readonly string[]
    }
  | { readonly kind: 'need reversed'; readonly fromInches: number; readonly toInches: number }
  | { readonly kind: 'bridge position missing'; readonly end: 'first' | 'second' }
  | SizeProblem

export interface LayoutSearch {
  /** Every lawful run, best first, each exactly once; computed as they are asked for. */
  readonly runs: Iterable<Layout>
  /** The alternatives refused so far, each reason once. */
  readonly refused: () => readonly Refusal[]
}

/**
 * The lawful runs for `request`, best first.
 *
 * Lawful means: every splice of the run lies where the system's sheet puts it, every post stands clear of the
 * obstructions, by half its width and the clearance, or is left out, moved or replaced as a rule of the sheet allows, and the rail that counts covers the
 * need. Among the lawful the order is: fewest posts left out, moved or replaced; fewest panels of other than standard
 * length; least rail; fewest pieces; nearest to where the need begins.
 */
export function solveLayout(asked: LayoutRequest): Result<LayoutSearch, LayoutProblem> {
  const request = { ...asked, obstructions: noPostParts(asked) }
  const problem = problemOf(request)
  if (problem !== null) return err(problem)
  const reasons = new Map<string, Refusal>()
  const refuse = (refusal: Refusal): void => {
    reasons.set(JSON.stringify(refusal), refusal)
  }
  return ok({
    runs: { [Symbol.iterator]: () => search(request, refuse) },
    refused: () => withClearance([...reasons.values()], asked),
  })
}

/** What posts keep clear stands with the reasons of which an obstruction is one. */
function withClearance(reasons: readonly Refusal[], { postClearance }: LayoutRequest): readonly Refusal[] {
  const isObstructed = reasons.some((one) => 'obstructions' in one || one.kind === 'gaps too near')
  return postClearance === undefined || !isObstructed
    ? reasons
    : [...reasons, { kind: 'posts keep clear', ...postClearance }]
}

function problemOf(request: LayoutRequest): LayoutProblem | null {
  const { need, system } = request
  for (const [end, which] of [
    [request.first, 'first'],
    [request.second, 'second'],
  ] as const) {
    if (end.kind !== 'unit') continue
    if (!end.sheet.joins.includes(system.id)) {
      return { kind: 'unit does not join', unit: atHeight(end.sheet), system: atHeight(system), joins: end.sheet.joins }
    }
    if (end.sheet.kind === 'bridge end' && end.atInches === null) return { kind: 'bridge position missing', end: which }
  }
  if (need === null && (fixedAt(request.first) === null || fixedAt(request.second) === null))
    return { kind: 'need missing' }
  if (need !== null && need.toInches < need.fromInches) return { kind: 'need reversed', ...need }
  return sizeProblem(request)
}

/**
 * One place of the search, from coarse to fine: a frame whose posts are not yet planned, then one with its posts, then
 * one with an order of panels. `score` never is worse than that of anything that follows from it.
 */
interface Candidate {
  readonly frame: Frame
  readonly kinds: readonly PanelKind[]
  readonly prefix: readonly Sixteenths[]
  readonly score: LayoutScore
  readonly fromNeed: Sixteenths
  readonly plan: PostPlan | null
  readonly orders: Iterator<PanelOrder> | null
  readonly order: PanelOrder | null
}

function* search(request: LayoutRequest, refuse: (refusal: Refusal) => void): Generator<Layout> {
  const step = latticeStep(request.system)
  const open = new Heap<Candidate>(isBetter)
  for (const candidate of candidates(request, step, refuse)) open.push(candidate)
  const seen = new Set<string>()
  for (let best = open.pop(); best !== null; best = open.pop()) {
    if (best.plan === null) {
      for (const planned of planPosts(request, best, seen, refuse)) open.push(planned)
      continue
    }
    const { plan, order } = best
    if (order !== null) {
      const runPanels = [...best.prefix, ...order.panels]
      const hung = request.standing?.panels.length ?? 0
      yield buildLayout(request.system, { frame: best.frame, plan, runPanels, score: best.score, hung })
    }
    const next = withNextOrder(best, best.orders ?? panelOrders(ordersRequest(request, best, plan, step)))
    if (next !== null) open.push(next)
    else if (order === null) refuseOrders(best, plan, refuse)
  }
}

/** Every length of the search is a whole multiple of it. */
function latticeStep({ panels, spacings }: LongitudinalSheet): Sixteenths {
  const lengths = [...panels.standard, ...panels.converting, ...panels.endOnly, spacings.full]
  return lengths.map(({ inches }) => sixteenths(inches)).reduce(greatestCommonDivisor)
}

function candidates(request: LayoutRequest, step: Sixteenths, refuse: (refusal: Refusal) => void): Candidate[] {
  const first = endSides(request.first, request.system)
  const second = endSides(request.second, request.system)
  for (const refusal of [...first.refused, ...second.refused]) refuse(refusal)
  const found: Candidate[] = []
  for (const one of first.sides) {
    for (const other of second.sides) {
      const kinds = panelKinds(request, [adapterToHang(request, one), other.adapter], refuse)
      const prefix = hungPrefix(request, one, refuse)
      if (kinds === null || prefix === null) continue
      const hung = prefix.reduce((sum, panel) => sum + panel, 0)
      const longest = Math.max(...kinds.map(({ length }) => length))
      const odd = fixedOdd(request, one, other, prefix)
      const pieces = fixedPieces(one, other, prefix)
      for (const frame of frames(request, one, other, step, hung, refuse)) {
        const run = frame.length - one.joint - other.joint - hung
        const score = {
          changedPosts: leastChanged(request, frame),
          oddPanels: odd,
          railInches: inchesOf(frame.length),
          pieces: pieces + Math.ceil(run / longest),
        }
        found.push({
          frame,
          kinds,
          prefix,
          score,
          fromNeed: fromNeed(request, frame),
          plan: null,
          orders: null,
          order: null,
        })
      }
    }
  }
  return found
}

function fixedOdd(request: LayoutRequest, first: EndSide, second: EndSide, prefix: readonly Sixteenths[]): number {
  const standard = request.system.panels.standard.map(({ inches }) => sixteenths(inches))
  const adapters = [first.adapter, second.adapter].filter((adapter) => adapter !== null)
  return [...adapters, ...prefix].filter((panel) => !standard.includes(panel)).length
}

const fixedPieces = (first: EndSide, second: EndSide, prefix: readonly Sixteenths[]): number =>
  [first, second].reduce((sum, side) => sum + side.own.length + (side.adapter === null ? 0 : 1), prefix.length)

function fromNeed({ need }: LayoutRequest, { first, origin }: Frame): Sixteenths {
  return need === null || first.countsFrom === null ? 0 : sixteenths(need.fromInches) - first.countsFrom - origin
}

/** The candidate with each lawful way to stand its posts; of frames that differ only by sliding the first alone. */
function planPosts(
  request: LayoutRequest,
  candidate: Candidate,
  seen: Set<string>,
  refuse: (refusal: Refusal) => void,
): Candidate[] {
  const { plans, refused } = postPlans(request, candidate.frame)
  refused.forEach(refuse)
  return plans
    .map((plan) => ({ ...candidate, plan, score: { ...candidate.score, changedPosts: changedPosts(plan) } }))
    .filter(({ plan }) => {
      const wrong = wronglyHung(request, candidate, plan)
      if (wrong !== null) refuse(wrong)
      return wrong === null
    })
    .filter(({ frame, plan }) => {
      const key = planKey(frame, plan)
      return !seen.has(key) && seen.add(key)
    })
}

function planKey({ first, second, length }: Frame, plan: PostPlan): string {
  const posts = [plan.omitted, plan.special].map((list) => list.map(({ at }) => at).join()).join('|')
  const moved = plan.moved.map(({ from }) => from).join()
  const divided = plan.divided.map(({ from, to, into }) => `${from}-${to}/${into}`).join()
  return [first.joint, second.joint, length, posts, moved, divided].join(';')
}

function isBetter(a: Candidate, b: Candidate): boolean {
  const [one, other] = [a.score, b.score]
  const difference =
    one.changedPosts - other.changedPosts ||
    one.oddPanels - other.oddPanels ||
    one.railInches - other.railInches ||
    one.pieces - other.pieces
  return difference !== 0 ? difference < 0 : a.fromNeed < b.fromNeed
}

/** Whether a splice of the run may lie at a distance from the first origin. */
function spliceRule(request: LayoutRequest, frame: Frame, plan: PostPlan): (at: Sixteenths) => boolean {
  const forbidden = new Set(plan.noSpliceAt.map(({ at }) => at))
  const lattice = postLattice(frame, request.system)
  const wanted = request.system.splice.position === 'post' ? 0 : lattice.full / 2
  return (at) => {
    if (forbidden.has(at)) return false
    if (isDividedPost(plan.divided, lattice, at)) return true
    return (((at - lattice.from) % lattice.full) + lattice.full) % lattice.full === wanted
  }
}

/** Why the run's panels that hang cannot stay; null when they can. Panels are counted from the first end. */
function wronglyHung(request: LayoutRequest, { frame, prefix }: Candidate, plan: PostPlan): Refusal | null {
  const before = fixedPieces(frame.first, frame.first, []) / 2
  const end = frame.length - frame.second.joint
  const misplaced = misplacedLength(request, prefix, end - frame.first.joint)
  if (misplaced !== null) {
    const { index, endOnly } = misplaced
    return { kind: 'hung length', panel: before + index + 1, hung: inchesOf(prefix[index]!), endOnly }
  }
  const allowed = spliceRule(request, frame, plan)
  let at = frame.first.joint
  const index = prefix.findIndex((panel) => {
    at += panel
    return at !== end && !allowed(at)
  })
  return index < 0 ? null : { kind: 'hung splice', panel: before + index + 1 }
}

function ordersRequest(request: LayoutRequest, { frame, kinds, prefix }: Candidate, plan: PostPlan, step: Sixteenths) {
  const start = frame.first.joint + prefix.reduce((sum, panel) => sum + panel, 0)
  const allowed = spliceRule(request, frame, plan)
  return {
    length: frame.length - frame.second.joint - start,
    step,
    kinds,
    isRunStart: prefix.length === 0,
    spliceAllowed: (at: Sixteenths) => allowed(start + at),
  }
}

function withNextOrder(candidate: Candidate, orders: Iterator<PanelOrder>): Candidate | null {
  const next = orders.next()
  if (next.done) return null
  const order = next.value
  const { frame, prefix, score } = candidate
  return {
    ...candidate,
    orders,
    order,
    score: {
      ...score,
      oddPanels: score.oddPanels - (candidate.order?.oddPanels ?? 0) + order.oddPanels,
      pieces: fixedPieces(frame.first, frame.second, prefix) + order.panels.length,
    },
  }
}

function refuseOrders({ frame, kinds }: Candidate, plan: PostPlan, refuse: (refusal: Refusal) => void): void {
  const between = inchesOf(frame.length - frame.first.joint - frame.second.joint)
  const blocked = plan.noSpliceAt[0]
  refuse(
    blocked === undefined
      ? { kind: 'no panels fit', between, lengths: kinds.map(({ length }) => inchesOf(length)) }
      : { kind: 'splice on omitted post', obstructions: blocked.obstructions },
  )
}
