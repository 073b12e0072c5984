import { describe, expect, it } from 'vitest'
import { shippedSheets } from '../../sheets/shipped-sheets.ts'
import type { EndSheet, LongitudinalSheet } from '../hardware/hardware-sheet.ts'
import { endSides } from './end-side.ts'
import { frames } from './frames.ts'
import type { Layout, LayoutRequest, ReducedPart, RunEnd } from './layout.ts'
import type { Refusal } from './refusal.ts'
import { inchesOf, sixteenths } from './sixteenths.ts'
import { solveLayout } from './solve-layout.ts'

const sheetOf = <T>(id: string): T => shippedSheets.find((one) => one.id === id) as T
const system = sheetOf<LongitudinalSheet>('w-beam-midspan-31')
const unit = (id: string, atInches: number | null): RunEnd => ({ kind: 'unit', sheet: sheetOf<EndSheet>(id), atInches })
const splice = (atInches: number): RunEnd => ({ kind: 'standing splice', atInches, position: 'midspan' })

/** Worked by hand: posts every 75 in, every panel a multiple of 37 1/2 in; a midspan splice has a post 37 1/2 in behind. */
function solve(first: RunEnd, second: RunEnd, changes: Partial<LayoutRequest> = {}) {
  const solved = solveLayout({
    ...{ system, first, second, need: null, stock: null, obstructions: [], reduced: [], standing: null },
    ...{ mayExtendInches: 0, ...changes },
  })
  if (!solved.ok) throw new Error(solved.error.kind)
  const [layout] = solved.value.runs
  return { layout: layout as Layout | undefined, refused: solved.value.refused() }
}
const refusals = (kind: Refusal['kind'], ...of: Parameters<typeof solve>) =>
  solve(...of).refused.filter((one) => one.kind === kind)

describe('ends that cannot move', () => {
  it('leave part of the need without rail that counts, at the end where it is', () => {
    // The terminal counts from 150 in after its post 1, the anchor to 450 in before its last post.
    const first = (from: number) =>
      refusals('does not cover', unit('flared-terminal-31', 0), unit('trailing-anchor-31', null), {
        need: { fromInches: from, toInches: 400 },
      })
    expect(first(150)).toEqual([])
    expect(first(149)).toEqual([{ kind: 'does not cover', end: 'first', shortBy: 1 }])
    expect(first(149.9375)).toEqual([{ kind: 'does not cover', end: 'first', shortBy: 0.0625 }])
    const second = (to: number) =>
      refusals('does not cover', unit('flared-terminal-31', null), unit('trailing-anchor-31', 975), {
        need: { fromInches: 300, toInches: to },
      })
    expect(second(525)).toEqual([])
    expect(second(526)).toEqual([{ kind: 'does not cover', end: 'second', shortBy: 1 }])
    expect(second(525.0625)).toEqual([{ kind: 'does not cover', end: 'second', shortBy: 0.0625 }])
    // Where a standing run goes on, its rail counts.
    const need = { fromInches: -100, toInches: 1600 }
    expect(refusals('does not cover', splice(0), splice(1500), { need })).toEqual([])
  })

  it('miss each other by what is no whole number of panels: the lengths just below and above are told', () => {
    const missed = (...ends: readonly [RunEnd, RunEnd]) => refusals('ends do not meet', ...ends)
    expect(missed(splice(0), splice(1010))).toEqual([
      { kind: 'ends do not meet', between: 1010, nearestShorter: 975, nearestLonger: 1012.5 },
    ])
    expect(missed(splice(0), splice(1500))).toEqual([])
    // Past a terminal joined at 412 1/2 in 87 1/2 in are left: 75 or 112 1/2; joined at 487 1/2 in 12 1/2: none or 37 1/2.
    const near = [{ kind: 'ends do not meet', between: 500, nearestShorter: 487.5, nearestLonger: 525 }]
    expect(missed(unit('flared-terminal-31', 0), splice(500))).toEqual(near)
    // No run is shorter than the terminal.
    expect(missed(unit('flared-terminal-31', 0), splice(400))[0]).toEqual({
      ...{ kind: 'ends do not meet', between: 400, nearestShorter: null, nearestLonger: 412.5 },
    })
    // Shorter than the terminal by a whole step it is too short all the same.
    expect(missed(unit('flared-terminal-31', 0), splice(375))[0]).toEqual({
      ...{ kind: 'ends do not meet', between: 375, nearestShorter: null, nearestLonger: 412.5 },
    })
  })

  it('miss each other where the two units alone are longer, the second as well as the first', () => {
    // Joined by 112 1/2 or 187 1/2 in, the terminal is 412 1/2 or 487 1/2 in long and the anchor 112 1/2 or 187 1/2.
    expect(refusals('ends do not meet', unit('flared-terminal-31', 0), unit('trailing-anchor-31', 400))).toEqual(
      [525, 600, 675].map((nearestLonger) => ({
        ...{ kind: 'ends do not meet', between: 400, nearestShorter: null, nearestLonger },
      })),
    )
  })

  it('leave room for a space at least: the last posts of two units are never one', () => {
    // At 27 3/4 in the terminal's last post stands at its joint, 450 in, the anchor's at 150 in from its end.
    const low = { system: sheetOf<LongitudinalSheet>('w-beam-post-splice-27-3-4') }
    const ends = (atInches: number) =>
      [unit('flared-terminal-27-3-4', 0), unit('trailing-anchor-27-3-4', atInches)] as const
    expect(solve(...ends(675), { ...low }).layout!.posts).toHaveLength(10)
    expect(solve(...ends(600), { ...low }).layout).toBeUndefined()
    expect(refusals('posts do not meet', ...ends(600), { ...low })).toEqual([
      { kind: 'posts do not meet', remainder: 0, spacing: 75 },
    ])
  })

  it('may be as near as the terminal is long: nothing of the run hangs between', () => {
    const { layout } = solve(unit('flared-terminal-31', 0), splice(412.5))
    expect(layout!.panels.map(({ inches, unit }) => [inches, unit])).toEqual([
      [150, 'first'],
      [150, 'first'],
      [112.5, 'first'],
    ])
    expect(layout!.posts.map(({ alongInches }) => alongInches)).toEqual([0, 75, 150, 225, 300, 375, 450])
  })

  it('leave posts that do not meet, by the part of a space that is left over', () => {
    // From the post at -37 1/2 to that at 1050: 14 spaces and half a one.
    expect(refusals('posts do not meet', splice(0), splice(1012.5))).toEqual([
      { kind: 'posts do not meet', remainder: 37.5, spacing: 75 },
    ])
    expect(refusals('posts do not meet', splice(0), splice(1050))).toEqual([])
  })

  it('have less between them than what hangs, or begin elsewhere than what stands', () => {
    const standing = (postOneAtInches: number, ...panels: readonly number[]) => ({
      standing: { postOneAtInches, panels, postsDriven: 0 },
    })
    const long = (...panels: readonly number[]) =>
      refusals('hung too long', splice(0), splice(600), standing(-37.5, ...panels))
    expect(long(300, 300)).toEqual([])
    expect(long(300, 300, 150)).toEqual([{ kind: 'hung too long', by: 150 }])
    // Beyond the terminal, which is 412 1/2 in long, there is room for nothing.
    const alone = standing(0, 150, 150, 112.5, 150)
    expect(refusals('hung too long', unit('flared-terminal-31', 0), splice(412.5), alone)).toEqual([
      { kind: 'hung too long', by: 150 },
    ])
    expect(refusals('stands elsewhere', splice(0), splice(600), standing(-32.5))).toEqual([
      { kind: 'stands elsewhere', by: 5 },
    ])
    // The same 1,000 in further on, before and behind where it should begin.
    for (const [postOne, by] of [
      [967.5, 5],
      [957.5, 5],
      [962.4375, 0.0625],
    ] as const)
      expect(refusals('stands elsewhere', splice(1000), splice(1600), standing(postOne)), `${postOne}`).toEqual([
        { kind: 'stands elsewhere', by },
      ])
    expect(refusals('stands elsewhere', splice(1000), splice(1600), standing(962.5))).toEqual([])
  })
})

describe('spaces that are divided', () => {
  const part = (fromInches: number, toInches: number, spacing: ReducedPart['spacing']) => ({
    reduced: [{ fromInches, toInches, spacing, nested: false }],
  })
  const spaces = (changes: Partial<LayoutRequest>) => {
    const { posts } = solve(splice(0), splice(1500), changes).layout!
    return posts.slice(1).map(({ alongInches }, i) => alongInches - posts[i]!.alongInches)
  }
  const times = (count: number, space: number) => Array<number>(count).fill(space)

  // Posts at 37 1/2 + 75 k, so that 712 1/2 to 787 1/2 is the one space in the middle, ten before it and ten after.
  it('are those that a part lies in, even with a corner, and no others', () => {
    expect(spaces(part(712.5, 787.5, 'half'))).toEqual([...times(10, 75), ...times(2, 37.5), ...times(10, 75)])
    expect(spaces(part(712.5, 787.5625, 'half'))).toEqual([...times(10, 75), ...times(4, 37.5), ...times(9, 75)])
    expect(spaces(part(712.4375, 787.5, 'half'))).toEqual([...times(9, 75), ...times(4, 37.5), ...times(10, 75)])
  })

  it('have whole spaces of half spacing beside quarter spacing, as many as what the sheet asks for takes', () => {
    const middle = [...times(8, 75), ...times(4, 37.5), ...times(4, 18.75), ...times(4, 37.5), ...times(8, 75)]
    for (const inches of [150, 112.5, 75.0625]) {
      const { halfBeforeQuarter, ...others } = system.spacings
      const asking = { ...system, spacings: { ...others, halfBeforeQuarter: { ...halfBeforeQuarter, inches } } }
      expect(spaces({ ...part(712.5, 787.5, 'quarter'), system: asking })).toEqual(middle)
    }
  })

  it('are refused where one of their posts would stand in an obstruction, and not where it stands on its edge', () => {
    // The post in the middle of the divided space is at 750 in.
    const obstructed = (fromInches: number, toInches: number) =>
      refusals('post at reduced spacing obstructed', splice(0), splice(1500), {
        ...part(712.5, 787.5, 'half'),
        obstructions: [{ name: 'a pipe', fromInches, toInches }],
      })
    expect(obstructed(740, 750)).toEqual([])
    expect(obstructed(750, 760)).toEqual([])
    for (const [from, to] of [
      [740, 750.0625],
      [749.9375, 760],
    ] as const)
      expect(obstructed(from, to)).toEqual([
        { kind: 'post at reduced spacing obstructed', obstructions: ['a pipe'], spacing: 'half' },
      ])
  })
})

/** Where the datum is not: a place counted from it and not from the end shows. */
const datum = -777.0625
const low = sheetOf<LongitudinalSheet>('w-beam-post-splice-27-3-4')
const from = (end: RunEnd) => (end.atInches === null ? end : { ...end, atInches: datum + end.atInches }) as RunEnd
const moved = <T extends { readonly fromInches: number; readonly toInches: number }>(part: T): T => ({
  ...part,
  fromInches: datum + part.fromInches,
  toInches: datum + part.toInches,
})

/** Where the first end may lie, by the length of the run; every panel is a multiple of 37 1/2 in. */
function framesOf(
  first: RunEnd,
  second: RunEnd,
  { need, obstructions = [], reduced = [], mayExtendInches = 0, system: of = low }: Partial<LayoutRequest>,
): Readonly<Record<number, readonly number[]>> {
  const request = {
    ...{ system: of, first: from(first), second: from(second), need: moved(need!), stock: null, standing: null },
    ...{ obstructions: obstructions.map(moved), reduced: reduced.map(moved), mayExtendInches },
  }
  const side = (end: RunEnd) => endSides(end, of).sides[0]!
  const found: Record<number, number[]> = {}
  for (const { origin, length } of frames(
    ...([request, side(request.first), side(request.second), sixteenths(37.5), 0] as const),
    (refusal) => {
      throw new Error(refusal.kind)
    },
  )) {
    found[inchesOf(length)] ??= []
    found[inchesOf(length)]!.push(inchesOf(origin) - datum)
  }
  for (const origins of Object.values(found)) origins.sort((a, b) => a - b)
  return found
}

/** At 27 3/4 in: seven posts of the terminal to 450 in, which counts from 150 on; three of the anchor, which counts to 450 before its end. */
const [terminal, anchor] = ['flared-terminal-27-3-4', 'trailing-anchor-27-3-4'] as const

describe('a run of which one end cannot move', () => {
  it('goes on from there until it covers the need, and on as far as it may', () => {
    // 1,000 in has to be counted, and the rail counts to 450 before its end: 1,450 or more, 1,500 where posts are.
    const need = { fromInches: 300, toInches: 1000 }
    const lengths = (mayExtendInches: number) =>
      framesOf(unit(terminal, 0), unit(anchor, null), { need, mayExtendInches })
    expect(lengths(37.5)).toEqual({ 1500: [0] })
    // Covering it takes 1,462 1/2 in of panels; from there on it is counted how much longer it may be.
    expect(lengths(112.4375)).toEqual({ 1500: [0] })
    expect(lengths(112.5)).toEqual({ 1500: [0], 1575: [0] })
  })

  it('is as long as they lie apart where neither can', () => {
    expect(framesOf(unit(terminal, 0), unit(anchor, 1500), { need: { fromInches: 200, toInches: 1000 } })).toEqual({
      1500: [0],
    })
  })

  it('begins before it so far that the need is covered', () => {
    // It has to count from 100 in on, so to begin 150 before: 1,550 to the end at 1,500, 1,575 where posts are.
    const need = { fromInches: 100, toInches: 900 }
    const lengths = (mayExtendInches: number) =>
      framesOf(unit(terminal, null), unit(anchor, 1500), { need, mayExtendInches })
    expect(lengths(0)).toEqual({ 1575: [-75] })
    expect(lengths(75)).toEqual({ 1575: [-75], 1650: [-150] })
  })

  it('has posts a whole number of spaces apart wherever the last one of a unit stands', () => {
    const plain = sheetOf<EndSheet>(terminal)
    const sheet: EndSheet = {
      ...plain,
      posts: plain.posts.map((post, i) => (i === 6 ? { ...post, along: 440 } : post)),
      panels: { ...plain.panels, own: plain.panels.own.map((own, i) => (i === 2 ? { ...own, inches: 140 } : own)) },
    }
    const first: RunEnd = { kind: 'unit', sheet, atInches: 0 }
    const need = { fromInches: 300, toInches: 1000 }
    // From the post at 440 to the anchor's, 150 before its end.
    expect(framesOf(first, unit(anchor, null), { need, mayExtendInches: 37.5 })).toEqual({ 1490: [0] })
    const asked = { system: low, need: null }
    expect(refusals('posts do not meet', first, unit(anchor, 1490), asked)).toEqual([])
    expect(refusals('posts do not meet', first, unit(anchor, 1490 + 37.5), asked)).toEqual([
      { kind: 'posts do not meet', remainder: 37.5, spacing: 75 },
    ])
  })
})

describe('where a run with both ends free may begin', () => {
  const ends = [unit(terminal, null), unit(anchor, null)] as const
  // The shortest that covers 0 to 900 in: 150 before and 450 after it, 1,500. One of 1,575 slides by 75.
  const need = { fromInches: 0, toInches: 900 }
  const origins = (changes: Partial<LayoutRequest>) => framesOf(...ends, { need, mayExtendInches: 75, ...changes })
  const something = (fromInches: number, toInches: number) => ({
    obstructions: [{ name: 'a wall', fromInches, toInches }],
  })

  it('is at both ends of its slide, from where the need is just covered at its end to where it is at its begin', () => {
    expect(origins({})).toEqual({ 1500: [-150], 1575: [-225, -150] })
  })

  it('is nowhere where the last posts of the two would be one', () => {
    // 600 in would cover a need of nothing.
    const nothing = { fromInches: 0, toInches: 0 }
    expect(Object.keys(origins({ need: nothing }))).toEqual(['675'])
  })

  /** Posts stand every 75 in from the first to the last of both units: x + 75 i. A post may be moved by 12 in. */
  it('and where a post passes an edge of something or can just be moved out of it', () => {
    // 300, 340, 312 and 328 less 525, the second post of the run; 300 less 450 and 525 are the ends of the slide.
    expect(origins(something(300, 340))[1575]).toEqual([-225, -213, -197, -185, -150])
    // The same of the terminal's post at 225, and of the anchor's at 1,500.
    expect(origins(something(0, 40))[1575]).toEqual([-225, -213, -197, -185, -150])
    expect(origins(something(1300, 1340))[1575]).toEqual([-225, -200, -188, -172, -160, -150])
    // No post stands beyond the anchor's last, at 1,575, nor before the terminal's first.
    expect(origins(something(1500, 1540))[1575]).toEqual([-225, -150])
    expect(origins(something(-300, -260))[1575]).toEqual([-225, -150])
    // A sheet that lets no post be moved.
    const system = { ...low, movedPost: 'notStated' } as const
    expect(origins({ ...something(300, 340), system })[1575]).toEqual([-225, -185, -150])
  })

  it('and where a post of a divided space does, and where such a space begins or ends', () => {
    const part = (spacing: ReducedPart['spacing']) => ({
      reduced: [{ fromInches: 500, toInches: 560, spacing, nested: false }],
    })
    // 500 and 560 less 675 and 750, posts of the full spacing.
    expect(origins(part('half'))[1575]).toEqual([-225, -190, -175, -150])
    expect(origins(part('full'))[1575]).toEqual([-225, -150])
    // The edges of before, less 487 1/2, 525 and 562 1/2, and those of the part.
    const half = [-225, -222.5, -213, -197, -190, -187.5, -185, -175.5, -175, -159.5, -150]
    expect(origins({ ...part('half'), ...something(300, 340) })[1575]).toEqual(half)
    // Less 468 3/4, 506 1/4 and 543 3/4 besides.
    const quarter = [
      -168.75,
      -206.25,
      340 - 506.25,
      340 - 543.75,
      312 - 468.75,
      312 - 506.25,
      328 - 506.25,
      328 - 543.75,
    ]
    expect(origins({ ...part('quarter'), ...something(300, 340) })[1575]).toEqual(
      [...half, ...quarter].sort((a, b) => a - b),
    )
    // A part at half spacing beside one at quarter spacing, and one at full spacing beside that.
    const both = [...part('half').reduced, ...part('quarter').reduced]
    expect(origins({ reduced: both, ...something(300, 340) })[1575]).toHaveLength(19)
    const halfAndFull = [...part('half').reduced, ...part('full').reduced]
    expect(origins({ reduced: halfAndFull, ...something(300, 340) })[1575]).toEqual(half)
  })

  it('and where doubled rail begins or ends at the joint of a unit', () => {
    const part = (nested: boolean) => ({
      reduced: [{ fromInches: 280, toInches: 1250, spacing: 'full', nested }] as const,
    })
    // The terminal's joint is at 450, the anchor's at 1,575 less 150.
    expect(origins(part(true))[1575]).toEqual([-225, -175, -170, -150])
    expect(origins(part(false))[1575]).toEqual([-225, -150])
  })
})
