import { Heap } from './heap.ts'
import type { Sixteenths } from './sixteenths.ts'

/** A panel length that may be used, and what it costs. */
export interface PanelKind {
  readonly length: Sixteenths
  readonly odd: boolean
  /** Only as the first or the last panel. */
  readonly endOnly: boolean
  /** How many there are; null for as many as wanted. */
  readonly count: number | null
}

export interface PanelOrder {
  readonly panels: readonly Sixteenths[]
  readonly oddPanels: number
}

interface OrdersRequest {
  readonly length: Sixteenths
  /** Every panel length and `length` are whole multiples of it. */
  readonly step: Sixteenths
  readonly kinds: readonly PanelKind[]
  /** False where panels of the run hang before. */
  readonly isRunStart: boolean
  /** Whether a splice may lie at this distance from the start (not asked at the two ends). */
  readonly spliceAllowed: (at: Sixteenths) => boolean
}

/** One odd panel outweighs any number of pieces. */
const ODD_WEIGHT = 2 ** 24

/**
 * Every order of panels that fills `length`, fewest odd panels first, then fewest pieces; lazily, each exactly once.
 *
 * A backward pass gives the exact cost from every splice to the end (state: place and what is used of the panels
 * that are counted); a best-first walk then meets the orders in order of cost without ever turning back.
 */
export function* panelOrders(request: OrdersRequest): Generator<PanelOrder> {
  const { length, step, kinds } = request
  const places = length / step
  const counted = countedStates(kinds, places)
  const toEnd = costsToEnd(request, counted)

  const open = new Heap<Node>(isBefore)
  open.push({ total: toEnd[0]!, at: 0, used: 0, spent: 0, panel: 0, before: null })
  for (let node = open.pop(); node !== null; node = open.pop()) {
    if (node.at === places) {
      yield { panels: panelsOf(node), oddPanels: Math.floor(node.spent / ODD_WEIGHT) }
      continue
    }
    for (const [k, kind] of kinds.entries()) {
      const next = stepOf(request, counted, node.at, node.used, k)
      if (next === null) continue
      const rest = toEnd[next.at * counted.states + next.used]!
      if (rest === Number.POSITIVE_INFINITY) continue
      const spent = node.spent + costOf(kind)
      open.push({ total: spent + rest, at: next.at, used: next.used, spent, panel: kind.length, before: node })
    }
  }
}

interface Counted {
  readonly states: number
  /** Per kind: how far one more of it moves the state index, and how many values its digit takes; null when not counted. */
  readonly digits: readonly ({ readonly weight: number; readonly radix: number } | null)[]
}

function countedStates(kinds: readonly PanelKind[], places: number): Counted {
  let states = 1
  const digits = kinds.map((kind) => {
    if (kind.count === null || kind.count >= places) return null
    const digit = { weight: states, radix: kind.count + 1 }
    states *= digit.radix
    return digit
  })
  return { states, digits }
}

const costOf = (kind: PanelKind): number => (kind.odd ? ODD_WEIGHT : 0) + 1

/** The state after one more panel of kind `k`, or null where that panel may not lie. */
function stepOf(
  request: OrdersRequest,
  counted: Counted,
  at: number,
  used: number,
  k: number,
): { at: number; used: number } | null {
  const kind = request.kinds[k]!
  const next = at + kind.length / request.step
  const places = request.length / request.step
  if (next > places) return null
  const isEnd = (at === 0 && request.isRunStart) || next === places
  if (kind.endOnly && !isEnd) return null
  const digit = counted.digits[k]!
  if (digit === null) return { at: next, used }
  if (Math.floor(used / digit.weight) % digit.radix === digit.radix - 1) return null
  return { at: next, used: used + digit.weight }
}

function costsToEnd(request: OrdersRequest, counted: Counted): Float64Array {
  const places = request.length / request.step
  const { states } = counted
  const costs = new Float64Array((places + 1) * states).fill(Number.POSITIVE_INFINITY)
  costs.fill(0, places * states)
  for (let at = places - 1; at >= 0; at--) {
    // Where no splice may lie the rest costs more than anything, so that no order leads there.
    if (at > 0 && !request.spliceAllowed(at * request.step)) continue
    for (let used = 0; used < states; used++) {
      let best = Number.POSITIVE_INFINITY
      for (const [k, kind] of request.kinds.entries()) {
        const next = stepOf(request, counted, at, used, k)
        if (next === null) continue
        const cost = costs[next.at * states + next.used]! + costOf(kind)
        if (cost < best) best = cost
      }
      costs[at * states + used] = best
    }
  }
  return costs
}

interface Node {
  readonly total: number
  readonly at: number
  readonly used: number
  readonly spent: number
  readonly panel: Sixteenths
  readonly before: Node | null
}

function panelsOf(node: Node): Sixteenths[] {
  const panels: Sixteenths[] = []
  for (let one: Node | null = node; one !== null && one.before !== null; one = one.before) panels.push(one.panel)
  return panels.reverse()
}

/** Least total first; among equals the one that has come furthest, then the longer panel. */
function isBefore(a: Node, b: Node): boolean {
  return a.total !== b.total ? a.total < b.total : a.at !== b.at ? a.at > b.at : a.panel > b.panel
}
