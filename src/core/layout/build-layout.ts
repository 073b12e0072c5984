import type { LongitudinalSheet } from '../hardware/hardware-sheet.ts'
import type { EndSide } from './end-side.ts'
import type { Layout, LayoutPanel, LayoutPost, LayoutScore, LayoutSplice, Unit } from './layout.ts'
import { withFirstIds } from './place-ids.ts'
import { type Frame, type PostLattice, postLattice } from './post-lattice.ts'
import type { PostPlan } from './post-plan.ts'
import { inchesOf, type Sixteenths, sixteenths } from './sixteenths.ts'

/** A frame with its posts and its panels chosen, in the order in which they hang. */
export interface ChosenPieces {
  readonly frame: Frame
  readonly plan: PostPlan
  readonly runPanels: readonly Sixteenths[]
  readonly score: LayoutScore
  /** How many panels, from the first end on, already hang. */
  readonly hung: number
}

/** The run piece by piece, measured from the centre of post 1. */
export function buildLayout(system: LongitudinalSheet, pieces: ChosenPieces): Layout {
  const { frame, plan, score } = pieces
  const posts = placePosts(system, pieces)
  const zero = posts[0]!.at
  const panels = placePanels(system, pieces, zero)
  const counts = (side: EndSide, at: (from: Sixteenths) => Sixteenths) =>
    side.countsFrom === null ? null : inchesOf(at(side.countsFrom) - zero)
  return withFirstIds({
    posts: posts.map(({ at, ...post }, i) => ({ ...post, number: i + 1, alongInches: inchesOf(at - zero) })),
    panels,
    splices: placeSplices(
      panels,
      posts.map(({ at }) => at - zero),
      system,
    ),
    omitted: plan.omitted.map(({ at, ...post }) => ({ alongInches: inchesOf(at - zero), ...post })),
    postOneAtInches: inchesOf(frame.origin + zero),
    countsFromInches: counts(frame.first, (from) => from),
    countsToInches: counts(frame.second, (from) => frame.length - from),
    score,
  })
}

type PlacedPost = Omit<LayoutPost, 'id' | 'number' | 'alongInches'> & { readonly at: Sixteenths }

function placePosts(system: LongitudinalSheet, { frame, plan }: ChosenPieces): PlacedPost[] {
  const lattice = postLattice(frame, system)
  return [
    ...unitPosts(frame.first, 'first', (at) => at),
    ...runPosts(system, plan, lattice),
    ...unitPosts(frame.second, 'second', (at) => frame.length - at),
  ].sort((a, b) => a.at - b.at)
}

function unitPosts(side: EndSide, unit: Unit, place: (at: Sixteenths) => Sixteenths): PlacedPost[] {
  const { end } = side
  if (end.kind !== 'unit') {
    return side.posts.map((at) => ({
      at: place(at),
      kind: 'standing post',
      block: true,
      unit,
      ownNumber: null,
      state: 'standing',
    }))
  }
  return end.sheet.posts.map((post) => ({
    at: place(sixteenths(post.along)),
    kind: post.kind,
    block: post.block,
    unit,
    ownNumber: post.number,
    state: 'regular',
  }))
}

function runPosts(system: LongitudinalSheet, plan: PostPlan, lattice: PostLattice): PlacedPost[] {
  const posts: PlacedPost[] = []
  const omitted = new Set(plan.omitted.map(({ at }) => at))
  const moved = new Map(plan.moved.map(({ from, to }) => [from, to]))
  const special = new Map(plan.special.map(({ at, kind }) => [at, kind]))
  const regular = {
    kind: system.post.kind,
    block: system.post.block,
    unit: 'run',
    ownNumber: null,
    state: 'regular',
  } as const
  for (let at = lattice.from; at < lattice.to; at += lattice.full) {
    if (at > lattice.from && !omitted.has(at)) {
      const movedTo = moved.get(at)
      const kind = special.get(at)
      if (movedTo !== undefined) posts.push({ ...regular, at: movedTo, state: 'moved' })
      else if (kind !== undefined) posts.push({ ...regular, at, kind, state: 'special' })
      else posts.push({ ...regular, at })
    }
    const stretch = plan.divided.find(({ from, to }) => at >= from && at < to)
    for (let i = 1; stretch !== undefined && i < stretch.into; i++) {
      posts.push({ ...regular, at: at + (i * lattice.full) / stretch.into })
    }
  }
  return posts
}

/** What a panel of this length is in a run of `system`. */
export function runPanelRole(system: LongitudinalSheet, inches: number): 'standard' | 'converting' | 'end only' {
  const { standard, converting } = system.panels
  return has(standard, sixteenths(inches))
    ? 'standard'
    : has(converting, sixteenths(inches))
      ? 'converting'
      : 'end only'
}

function placePanels(system: LongitudinalSheet, pieces: ChosenPieces, zero: Sixteenths): Omit<LayoutPanel, 'id'>[] {
  const { frame, plan, runPanels, hung } = pieces
  const first = unitPanels(frame.first, 'first')
  const second = unitPanels(frame.second, 'second').reverse()
  const run = runPanels.map((length) => ({
    length,
    unit: 'run' as const,
    role: runPanelRole(system, inchesOf(length)),
    ownNumber: null,
  }))
  let at = 0
  return [...first, ...run, ...second].map(({ length, ...panel }, i) => {
    const from = at
    at += length
    const nested = plan.nested.some((part) => part.from < at && part.to > from)
    const role = i < hung && panel.unit === 'run' ? 'hung' : panel.role
    return {
      ...panel,
      role,
      nested,
      number: i + 1,
      inches: inchesOf(length),
      fromInches: inchesOf(from - zero),
      toInches: inchesOf(at - zero),
    }
  })
}

const has = (panels: readonly { readonly inches: number }[], length: Sixteenths): boolean =>
  panels.some((panel) => sixteenths(panel.inches) === length)

function unitPanels(side: EndSide, unit: Unit) {
  const own = side.own.map((length, i) => ({
    length,
    unit,
    role: 'own' as LayoutPanel['role'],
    ownNumber: (i + 1) as number | null,
  }))
  if (side.adapter === null) return own
  return [...own, { length: side.adapter, unit, role: 'adapter' as const, ownNumber: side.own.length + 1 }]
}

function placeSplices(
  panels: readonly Omit<LayoutPanel, 'id'>[],
  posts: readonly Sixteenths[],
  system: LongitudinalSheet,
): Omit<LayoutSplice, 'id'>[] {
  const standing = new Set(posts)
  return panels.slice(1).map((panel, i) => {
    const unit: Unit = panel.unit === 'first' ? 'first' : panels[i]!.unit === 'second' ? 'second' : 'run'
    const at = sixteenths(panel.fromInches)
    const position = standing.has(at)
      ? 'post'
      : system.splice.position === 'post' && unit === 'run'
        ? 'post'
        : 'midspan'
    return { number: i + 1, alongInches: panel.fromInches, position, unit }
  })
}
