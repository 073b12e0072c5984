import { err, ok, type Result } from '../result.ts'
import { buildLayout } from './build-layout.ts'
import { type EndSide, endSides } from './end-side.ts'
import type { Layout, LayoutRequest, LayoutScore, StockPanel } from './layout.ts'
import { type PanelKind, type PanelOrder, panelOrders } from './panel-orders.ts'
import { changedPosts, type Frame, type PostPlan, postLattice, postPlans } from './post-plan.ts'
import { describeRefusal, type Refusal } from './refusal.ts'
import { greatestCommonDivisor, inchesOf, type Sixteenths, sixteenths } from './sixteenths.ts'

/** What makes a request impossible to search at all. */
export type LayoutProblem =
  | { readonly kind: 'need missing' }
  | {
      readonly kind: 'unit does not join'
      readonly unit: string
      readonly system: string
      readonly joins: readonly string[]
    }
  | { readonly kind: 'need reversed'; readonly fromInches: number; readonly toInches: number }
  | { readonly kind: 'bridge position missing'; readonly end: 'first' | 'second' }

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
 * obstructions or is left out, moved or replaced as a rule of the sheet allows, and the rail that counts covers the
 * need. Among the lawful the order is: fewest posts left out, moved or replaced; fewest panels of other than standard
 * length; least rail; fewest pieces; nearest to where the need begins.
 */
export function solveLayout(request: LayoutRequest): Result<LayoutSearch, LayoutProblem> {
  const problem = problemOf(request)
  if (problem !== null) return err(problem)
  const reasons = new Map<string, Refusal>()
  const refuse = (refusal: Refusal): void => {
    const text = describeRefusal(refusal)
    if (!reasons.has(text)) reasons.set(text, refusal)
  }
  return ok({ runs: { [Symbol.iterator]: () => search(request, refuse) }, refused: () => [...reasons.values()] })
}

function problemOf(request: LayoutRequest): LayoutProblem | null {
  const { need, system } = request
  for (const [end, which] of [
    [request.first, 'first'],
    [request.second, 'second'],
  ] as const) {
    if (end.kind !== 'unit') continue
    if (!end.sheet.joins.includes(system.id)) {
      return { kind: 'unit does not join', unit: end.sheet.name, system: system.name, joins: end.sheet.joins }
    }
    if (end.sheet.kind === 'bridge end' && end.atInches === null) return { kind: 'bridge position missing', end: which }
  }
  if (need === null)
    return fixedAt(request.first) !== null && fixedAt(request.second) !== null ? null : { kind: 'need missing' }
  return need.toInches < need.fromInches ? { kind: 'need reversed', ...need } : null
}

const fixedAt = (end: LayoutRequest['first']): Sixteenths | null =>
  end.atInches === null ? null : sixteenths(end.atInches)

/** A frame with its posts; the panels are still to be ordered. */
interface Candidate {
  readonly frame: Frame
  readonly plan: PostPlan
  readonly kinds: readonly PanelKind[]
  readonly prefix: readonly Sixteenths[]
  readonly score: LayoutScore
  readonly fromNeed: Sixteenths
  readonly orders: Iterator<PanelOrder> | null
  readonly order: PanelOrder | null
}

function* search(request: LayoutRequest, refuse: (refusal: Refusal) => void): Generator<Layout> {
  const step = latticeStep(request)
  const open = candidates(request, step, refuse)
  while (open.length > 0) {
    const best = takeBest(open)
    if (best.orders === null) {
      const next = withNextOrder(best, panelOrders(ordersRequest(request, best, step)))
      if (next !== null) open.push(next)
      else refuseOrders(best, request, refuse)
      continue
    }
    yield buildLayout(request.system, {
      frame: best.frame,
      plan: best.plan,
      runPanels: [...best.prefix, ...best.order!.panels],
      score: best.score,
      hung: request.standing?.panels.length ?? 0,
    })
    const next = withNextOrder(best, best.orders)
    if (next !== null) open.push(next)
  }
}

/** Every length of the search is a whole multiple of it. */
function latticeStep(request: LayoutRequest): Sixteenths {
  const { panels, spacings } = request.system
  const lengths = [...panels.standard, ...panels.converting, ...panels.endOnly, spacings.full].map(({ inches }) =>
    sixteenths(inches),
  )
  return [...lengths, ...(request.stock ?? []).map(({ inches }) => sixteenths(inches))].reduce(greatestCommonDivisor)
}

function candidates(request: LayoutRequest, step: Sixteenths, refuse: (refusal: Refusal) => void): Candidate[] {
  const first = endSides(request.first, request.system)
  const second = endSides(request.second, request.system)
  for (const refusal of [...first.refused, ...second.refused]) refuse(refusal)
  const found: Candidate[] = []
  for (const one of first.sides) {
    for (const other of second.sides) {
      const kinds = panelKinds(request, [one.adapter, other.adapter], refuse)
      const prefix = kinds === null ? null : hungPrefix(request, one, refuse)
      if (kinds === null || prefix === null) continue
      const hung = prefix.reduce((sum, panel) => sum + panel, 0)
      for (const frame of frames(request, one, other, step, hung, refuse)) {
        const posts = postPlans(request, frame)
        posts.refused.forEach(refuse)
        for (const plan of posts.plans) found.push(candidateOf(request, frame, plan, kinds, prefix))
      }
    }
  }
  return nearestOfEachPlan(found)
}

/** The panel lengths of the run; null when the adapters needed are not in stock. */
function panelKinds(
  request: LayoutRequest,
  adapters: readonly (Sixteenths | null)[],
  refuse: (refusal: Refusal) => void,
): PanelKind[] | null {
  const { panels } = request.system
  const left = (length: Sixteenths): number | null => {
    if (request.stock === null) return null
    const have: StockPanel | undefined = request.stock.find((panel) => sixteenths(panel.inches) === length)
    if (have === undefined) return 0
    return have.count === null ? null : have.count - adapters.filter((adapter) => adapter === length).length
  }
  for (const adapter of adapters) {
    if (adapter === null) continue
    const have = left(adapter)
    const listed = request.stock === null || request.stock.some((panel) => sixteenths(panel.inches) === adapter)
    if (!listed || (have !== null && have < 0)) {
      refuse({ kind: 'not in stock', panel: inchesOf(adapter) })
      return null
    }
  }
  const kindsOf = (list: readonly { readonly inches: number }[], odd: boolean, endOnly: boolean): PanelKind[] =>
    list.map(({ inches }) => ({ length: sixteenths(inches), odd, endOnly, count: left(sixteenths(inches)) }))
  return [
    ...kindsOf(panels.standard, false, false),
    ...kindsOf(panels.converting, true, false),
    ...kindsOf(panels.endOnly, true, true),
  ]
    .filter((kind) => kind.count !== 0)
    .sort((a, b) => b.length - a.length)
}

/** The run's panels that already hang beyond the first end unit; null when what hangs is not this unit. */
function hungPrefix(request: LayoutRequest, side: EndSide, refuse: (refusal: Refusal) => void): Sixteenths[] | null {
  const hung = (request.standing?.panels ?? []).map(sixteenths)
  const unit = [...side.own, ...(side.adapter === null ? [] : [side.adapter])]
  const differs = unit.findIndex((panel, i) => i < hung.length && hung[i] !== panel)
  if (differs >= 0) {
    refuse({
      kind: 'hung panel differs',
      panel: differs + 1,
      hung: inchesOf(hung[differs]!),
      expected: inchesOf(unit[differs]!),
      unit: side.name,
    })
    return null
  }
  return hung.slice(unit.length)
}

function frames(
  request: LayoutRequest,
  first: EndSide,
  second: EndSide,
  step: Sixteenths,
  hung: Sixteenths,
  refuse: (refusal: Refusal) => void,
): Frame[] {
  const start = standingOrigin(request, first) ?? fixedAt(request.first)
  const finish = fixedAt(request.second)
  const joints = first.joint + second.joint
  if (start !== null && finish !== null)
    return fixedFrame({ first, second, origin: start, length: finish - start }, request, step, refuse)

  const { fromInches, toInches } = request.need!
  const [from, to] = [sixteenths(fromInches), sixteenths(toInches)]
  const [before, after] = [first.countsFrom ?? 0, second.countsFrom ?? 0]
  const least =
    start !== null ? to + after - start : finish !== null ? finish - from + before : before + after + to - from
  if (start !== null && first.countsFrom !== null && start + before > from) {
    refuse({ kind: 'does not cover', end: 'first', shortBy: inchesOf(start + before - from) })
    return []
  }
  if (finish !== null && second.countsFrom !== null && finish - after < to) {
    refuse({ kind: 'does not cover', end: 'second', shortBy: inchesOf(to - finish + after) })
    return []
  }
  const found: Frame[] = []
  const steps = Math.max(hung / step, Math.ceil((least - joints) / step), 0)
  const most = Math.max(steps * step + joints, least) + sixteenths(request.mayExtendInches)
  for (let length = joints + steps * step; length <= most; length += step) {
    for (const origin of origins(request, { first, second, length, start, finish, from, to })) {
      const frame = { first, second, origin, length }
      if (postsMeet(frame, request)) found.push(frame)
    }
  }
  return found
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
  refuse: (refusal: Refusal) => void,
): Frame[] {
  const { from, to, full } = postLattice(frame, request.system)
  const between = frame.length - frame.first.joint - frame.second.joint
  if (between < 0 || between % step !== 0) {
    const shorter = Math.floor(between / step) * step
    const whole = (run: Sixteenths): number | null => (run < 0 ? null : inchesOf(run + frame.length - between))
    refuse({
      kind: 'ends do not meet',
      between: inchesOf(frame.length),
      nearestShorter: whole(shorter),
      nearestLonger: whole(shorter + step),
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
 * Where the first origin can lie. With both ends free the run can slide as long as it covers the need; which posts are
 * obstructed changes only where a post passes an edge of an obstruction, so those places and the two ends of the
 * slide are all that has to be tried.
 */
function origins(request: LayoutRequest, question: OriginQuestion): Sixteenths[] {
  const { first, second, length, start, finish, from, to } = question
  if (start !== null) return [start]
  if (finish !== null) return [finish - length]
  const last = from - first.countsFrom!
  const earliest = to + second.countsFrom! - length
  const found = new Set<Sixteenths>([last, earliest])
  const { full } = postLattice({ first, second, origin: 0, length }, request.system)
  const lastFirst = Math.max(...first.posts)
  const posts = [...first.posts, ...second.posts.map((at) => length - at)]
  for (const obstruction of request.obstructions) {
    for (const edge of [sixteenths(obstruction.fromInches), sixteenths(obstruction.toInches)]) {
      for (const at of posts) if (edge - at >= earliest && edge - at <= last) found.add(edge - at)
      const nearest = Math.max(1, Math.ceil((edge - last - lastFirst) / full))
      for (let at = lastFirst + nearest * full; edge - at >= earliest && at < length; at += full) found.add(edge - at)
    }
  }
  return [...found]
}

function candidateOf(
  request: LayoutRequest,
  frame: Frame,
  plan: PostPlan,
  kinds: readonly PanelKind[],
  prefix: readonly Sixteenths[],
): Candidate {
  const run = frame.length - frame.first.joint - frame.second.joint - prefix.reduce((sum, panel) => sum + panel, 0)
  const longest = Math.max(...kinds.map(({ length }) => length))
  const score = {
    changedPosts: changedPosts(plan),
    oddPanels: fixedOdd(request, frame, prefix),
    railInches: inchesOf(frame.length),
    pieces: fixedPieces(frame, prefix) + Math.ceil(run / longest),
  }
  const begin =
    request.need === null || frame.first.countsFrom === null
      ? 0
      : sixteenths(request.need.fromInches) - frame.first.countsFrom - frame.origin
  return { frame, plan, kinds, prefix, score, fromNeed: Math.abs(begin), orders: null, order: null }
}

function fixedOdd(request: LayoutRequest, frame: Frame, prefix: readonly Sixteenths[]): number {
  const standard = request.system.panels.standard.map(({ inches }) => sixteenths(inches))
  const adapters = [frame.first.adapter, frame.second.adapter].filter((adapter) => adapter !== null)
  return [...adapters, ...prefix].filter((panel) => !standard.includes(panel)).length
}

const fixedPieces = (frame: Frame, prefix: readonly Sixteenths[]): number =>
  [frame.first, frame.second].reduce(
    (sum, side) => sum + side.own.length + (side.adapter === null ? 0 : 1),
    prefix.length,
  )

/** Of frames that differ only by sliding, with the same posts changed, the one nearest to where the need begins. */
function nearestOfEachPlan(found: readonly Candidate[]): Candidate[] {
  const best = new Map<string, Candidate>()
  for (const candidate of found) {
    const { frame, plan } = candidate
    const posts = [plan.omitted, plan.special].map((list) => list.map(({ at }) => at).join()).join('|')
    const moved = plan.moved.map(({ from }) => from).join()
    const divided = plan.divided.map(({ from, to, into }) => `${from}-${to}/${into}`).join()
    const key = [frame.first.joint, frame.second.joint, frame.length, posts, moved, divided].join(';')
    const before = best.get(key)
    if (before === undefined || candidate.fromNeed < before.fromNeed) best.set(key, candidate)
  }
  return [...best.values()]
}

function takeBest(open: Candidate[]): Candidate {
  let at = 0
  for (let i = 1; i < open.length; i++) if (isBetter(open[i]!, open[at]!)) at = i
  const [best] = open.splice(at, 1)
  return best!
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

function ordersRequest(request: LayoutRequest, candidate: Candidate, step: Sixteenths) {
  const { frame, plan, kinds, prefix } = candidate
  const start = frame.first.joint + prefix.reduce((sum, panel) => sum + panel, 0)
  const forbidden = new Set(plan.noSpliceAt.map(({ at }) => at))
  const lattice = postLattice(frame, request.system)
  const wanted = request.system.splice.position === 'post' ? 0 : lattice.full / 2
  const spliceAllowed = (from: Sixteenths): boolean => {
    const at = start + from
    if (forbidden.has(at)) return false
    if (plan.divided.some((part) => at > part.from && at < part.to)) return true
    return (((at - lattice.from) % lattice.full) + lattice.full) % lattice.full === wanted
  }
  return { length: frame.length - frame.second.joint - start, step, kinds, spliceAllowed }
}

function withNextOrder(candidate: Candidate, orders: Iterator<PanelOrder>): Candidate | null {
  const next = orders.next()
  if (next.done) return null
  const order = next.value
  const before = candidate.order
  const base = before === null ? candidate.score.oddPanels : candidate.score.oddPanels - before.oddPanels
  const score = {
    ...candidate.score,
    oddPanels: base + order.oddPanels,
    pieces: fixedPieces(candidate.frame, candidate.prefix) + order.panels.length,
  }
  return { ...candidate, orders, order, score }
}

function refuseOrders(candidate: Candidate, request: LayoutRequest, refuse: (refusal: Refusal) => void): void {
  const { frame, plan } = candidate
  const between = inchesOf(frame.length - frame.first.joint - frame.second.joint)
  const blocked = plan.noSpliceAt[0]
  if (blocked !== undefined) refuse({ kind: 'splice on omitted post', obstruction: blocked.obstruction })
  else if (request.stock !== null || fixedAt(request.first) !== null || fixedAt(request.second) !== null) {
    refuse({ kind: 'no panels fit', between, lengths: candidate.kinds.map(({ length }) => inchesOf(length)) })
  }
}
