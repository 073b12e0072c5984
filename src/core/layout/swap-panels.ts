import type { LongitudinalSheet } from '../hardware/hardware-sheet.ts'
import { endSides } from './end-side.ts'
import type { Layout, RunEnd } from './layout.ts'
import { greatestCommonDivisor, inchesOf, type Sixteenths, sixteenths } from './sixteenths.ts'

/** One thing to do to the panels that hang, counted as they hang from the first end. */
export type PanelSwap =
  | { readonly kind: 'exchange'; readonly panel: number; readonly from: number; readonly to: number }
  | { readonly kind: 'take out'; readonly panel: number; readonly from: number }
  | { readonly kind: 'put in'; readonly after: number; readonly to: number }

interface Step {
  readonly cost: number
  readonly swap: PanelSwap | null
  readonly before: Step | null
}

/**
 * The fewest panels to exchange, take out or put in so that what hangs becomes lawful on the posts as they stand: every
 * splice where the system wants it, the ends closed as their sheets say. Null when no order of panels does it.
 *
 * @param hanging lengths of the panels as they hang, inches, from the first end
 */
export function swapPanels(
  layout: Layout,
  system: LongitudinalSheet,
  first: RunEnd,
  second: RunEnd,
  hanging: readonly number[],
): readonly PanelSwap[] | null {
  const start = sixteenths(layout.panels[0]!.fromInches)
  const end = sixteenths(layout.panels[layout.panels.length - 1]!.toInches)
  const lengths = usableLengths(layout, system)
  const step = [...lengths, ...hanging.map(sixteenths)].reduce(greatestCommonDivisor)
  const places = Math.round((end - start) / step)
  const allowed = allowedSplices(layout, system, first, second, start, end)
  const have = hanging.map(sixteenths)

  let row: (Step | null)[] = new Array(places + 1).fill(null)
  row[0] = { cost: 0, swap: null, before: null }
  putIn(row, 0)
  for (const [i, panel] of have.entries()) {
    const next: (Step | null)[] = new Array(places + 1).fill(null)
    for (let at = 0; at <= places; at++) {
      const before = row[at] ?? null
      if (before === null) continue
      better(next, at, before, { kind: 'take out', panel: i + 1, from: inchesOf(panel) })
      better(next, at + panel / step, before, null)
      for (const length of lengths) {
        if (length !== panel)
          better(next, at + length / step, before, {
            kind: 'exchange',
            panel: i + 1,
            from: inchesOf(panel),
            to: inchesOf(length),
          })
      }
    }
    putIn(next, i + 1)
    row = next
  }
  const done = row[places]
  if (!done) return null
  const swaps: PanelSwap[] = []
  for (let one: Step | null = done; one !== null; one = one.before) if (one.swap !== null) swaps.push(one.swap)
  return swaps.reverse()

  function better(target: (Step | null)[], at: number, before: Step, swap: PanelSwap | null): void {
    if (at > places || (at > 0 && at < places && !allowed(start + at * step))) return
    const cost = before.cost + (swap === null ? 0 : 1)
    const there = target[at] ?? null
    if (there === null || cost < there.cost) target[at] = { cost, swap, before }
  }

  function putIn(target: (Step | null)[], after: number): void {
    for (let at = 0; at < places; at++) {
      const before = target[at] ?? null
      if (before === null) continue
      for (const length of lengths)
        better(target, at + length / step, before, { kind: 'put in', after, to: inchesOf(length) })
    }
  }
}

function usableLengths(layout: Layout, system: LongitudinalSheet): Sixteenths[] {
  const { standard, converting, endOnly } = system.panels
  return [
    ...new Set(
      [...standard, ...converting, ...endOnly]
        .map(({ inches }) => inches)
        .concat(layout.panels.map(({ inches }) => inches)),
    ),
  ].map(sixteenths)
}

/** Where a splice may lie, from post 1: in an end unit where the unit has one, in the run by the system's rule. */
function allowedSplices(
  layout: Layout,
  system: LongitudinalSheet,
  first: RunEnd,
  second: RunEnd,
  start: Sixteenths,
  end: Sixteenths,
): (at: Sixteenths) => boolean {
  const posts = layout.posts.map(({ alongInches }) => sixteenths(alongInches))
  const full = sixteenths(system.spacings.full.inches)
  const one = unitSplices(first, system)
  const other = unitSplices(second, system)
  return (at) => {
    if (at - start < one.reach) return one.at.has(at - start)
    if (end - at < other.reach) return other.at.has(end - at)
    const after = posts.findIndex((post) => post > at)
    const before = posts[after - 1]
    if (before === undefined || after < 0) return system.splice.position === 'post'
    const gap = posts[after]! - before
    if (gap < full) return true
    return system.splice.position === 'post'
      ? before === at
      : at - before === full / 2 || posts[after]! - at === full / 2
  }
}

function unitSplices(end: RunEnd, system: LongitudinalSheet): { reach: Sixteenths; at: ReadonlySet<Sixteenths> } {
  const { sides } = endSides(end, system)
  const at = new Set<Sixteenths>()
  for (const side of sides) {
    let from = 0
    for (const panel of side.own) {
      from += panel
      at.add(from)
    }
    at.add(side.joint)
  }
  return { reach: Math.min(...sides.map(({ joint }) => joint)), at }
}
