import type { EndSheet, LongitudinalSheet, SplicePosition } from '../hardware/hardware-sheet.ts'
import { nameOf, type SheetText } from '../hardware/sheet-text.ts'
import type { RunEnd } from './layout.ts'
import type { Refusal } from './refusal.ts'
import { type Sixteenths, sixteenths } from './sixteenths.ts'

/**
 * One way to close one end, measured from the end's own origin inward: post 1, the connection to the bridge, or the
 * standing splice.
 */
export interface EndSide {
  readonly end: RunEnd
  /** Of the sheet; null for a run that stands. */
  readonly name: SheetText | null
  /** The unit's own panels from the origin on, and the adapter after them. */
  readonly own: readonly Sixteenths[]
  readonly adapter: Sixteenths | null
  /** From the origin to the splice where the run's own panels begin. */
  readonly joint: Sixteenths
  /** Posts of the unit, from the origin; for a standing splice the one post that stands nearest to it. */
  readonly posts: readonly Sixteenths[]
  /** From the origin to the point from which the rail counts; null where a standing run goes on. */
  readonly countsFrom: Sixteenths | null
}

export interface EndSides {
  readonly sides: readonly EndSide[]
  readonly refused: readonly Refusal[]
}

/** Every way in which `end` can be joined to a run of `system`, none where it is not known, and why the other panel lengths are refused. */
export function endSides(end: RunEnd, system: LongitudinalSheet): EndSides {
  switch (end.kind) {
    case 'unit':
      return unitSides(end, end.sheet, system)
    case 'standing splice':
      return { sides: [standingSide(end, system)], refused: [] }
    case 'unknown':
      return { sides: [], refused: [] }
  }
}

function standingSide(end: Extract<RunEnd, { kind: 'standing splice' }>, system: LongitudinalSheet): EndSide {
  const back = end.position === 'post' ? 0 : sixteenths(system.spacings.full.inches) / 2
  return { end, name: null, own: [], adapter: null, joint: 0, posts: [-back], countsFrom: null }
}

function unitSides(end: RunEnd, sheet: EndSheet, system: LongitudinalSheet): EndSides {
  const own = sheet.panels.own.map((panel) => sixteenths(panel.inches))
  const posts = sheet.posts.map((post) => sixteenths(post.along))
  const ownLength = own.reduce((sum, panel) => sum + panel, 0)
  const adapters = sheet.panels.adapters.map((panel) => sixteenths(panel.inches))
  const known = [...system.panels.standard, ...system.panels.converting].map((panel) => sixteenths(panel.inches))
  const alternatives: readonly (Sixteenths | null)[] =
    adapters.length > 0 ? [...new Set([...adapters, ...known])].sort((a, b) => a - b) : [null, ...known]

  const sides: EndSide[] = []
  const refused: Refusal[] = []
  for (const adapter of alternatives) {
    const joint = ownLength + (adapter ?? 0)
    const splice = splicePlace(joint, posts, sixteenths(system.spacings.full.inches))
    if (splice.position !== system.splice.position) {
      refused.push({
        kind: 'splice position',
        panel: adapter === null ? null : adapter / 16,
        unit: nameOf(sheet),
        at: splice.position ?? 'midspan',
        post: splice.post,
        wanted: system.splice.position,
      })
    } else if (adapter === null ? adapters.length === 0 : adapters.includes(adapter)) {
      sides.push({
        end,
        name: nameOf(sheet),
        own,
        adapter,
        joint,
        posts,
        countsFrom: sixteenths(sheet.lengthOfNeedFrom.inches),
      })
    } else if (!system.panels.standard.some((panel) => sixteenths(panel.inches) === adapter)) {
      refused.push({ kind: 'panel not of this unit', panel: adapter! / 16, unit: nameOf(sheet) })
    }
  }
  return { sides, refused }
}

/** What lies at `at`, counted in the posts of an end unit carried on at full spacing: the post there or before it. */
function splicePlace(
  at: Sixteenths,
  posts: readonly Sixteenths[],
  full: Sixteenths,
): { position: SplicePosition | null; post: number } {
  const last = posts[posts.length - 1]!
  if (at >= last) {
    const beyond = at - last
    const post = posts.length + Math.floor(beyond / full)
    return { position: beyond % full === 0 ? 'post' : beyond % full === full / 2 ? 'midspan' : null, post }
  }
  const after = posts.findIndex((post) => post > at)
  const before = posts[after - 1] ?? 0
  return {
    position: before === at ? 'post' : at - before === posts[after]! - at ? 'midspan' : null,
    post: Math.max(after, 1),
  }
}
