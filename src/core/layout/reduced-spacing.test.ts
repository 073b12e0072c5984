import { describe, expect, it } from 'vitest'
import { shippedSheets } from '../../sheets/shipped-sheets.ts'
import type { EndSheet, LongitudinalSheet } from '../hardware/hardware-sheet.ts'
import { nameOf } from '../hardware/sheet-text.ts'
import type { Layout, LayoutRequest, ReducedPart, RunEnd } from './layout.ts'
import type { Refusal } from './refusal.ts'
import { solveLayout } from './solve-layout.ts'

const sheetOf = <T>(id: string): T => shippedSheets.find((one) => one.id === id) as T
const tangent: RunEnd = { kind: 'unit', sheet: sheetOf<EndSheet>('tangent-terminal-31'), atInches: null }
const standingAt = (atInches: number): RunEnd => ({ kind: 'standing splice', atInches, position: 'midspan' })
const part = (fromInches: number, toInches: number, spacing: ReducedPart['spacing'], nested = false): ReducedPart => ({
  fromInches,
  toInches,
  spacing,
  nested,
})

/** Between two standing splices the posts of the full lattice stand at 37.5 + 75 k, the nearest standing one at -37.5. */
function asked(changes: Partial<LayoutRequest>): LayoutRequest {
  return {
    system: sheetOf<LongitudinalSheet>('w-beam-midspan-31'),
    first: standingAt(0),
    second: standingAt(1500),
    need: null,
    stock: null,
    obstructions: [],
    reduced: [],
    standing: null,
    mayExtendInches: 0,
    ...changes,
  }
}

function solve(request: LayoutRequest): { layout: Layout | undefined; refused: readonly Refusal[] } {
  const solved = solveLayout(request)
  if (!solved.ok) throw new Error(solved.error.kind)
  const [layout] = solved.value.runs
  return { layout, refused: solved.value.refused() }
}

/** Places of the posts from the datum on. */
const postsOf = (layout: Layout | undefined): readonly number[] =>
  layout!.posts.map(({ alongInches }) => layout!.postOneAtInches + alongInches)

const spacesBetween = (layout: Layout | undefined, from: number, to: number): readonly number[] => {
  const posts = postsOf(layout).filter((at) => at >= from && at <= to)
  return posts.slice(1).map((at, i) => at - posts[i]!)
}

describe('a run with both ends free slides to where the part at half spacing lies between the terminals', () => {
  const free = { first: tangent, second: tangent, need: { fromInches: 0, toInches: 132 } }

  it('when only one space lies between the last posts of the two', () => {
    const { layout } = solve(asked({ ...free, reduced: [part(80, 100, 'half')] }))
    // Joint to joint the two terminals are 1125 in; their last posts stand 525 in from their first, so one space of 75 in is
    // left. It has to hold 80 to 100 in: post 1 at -500 to -445.
    expect(layout!.score).toEqual({ changedPosts: 0, oddPanels: 0, railInches: 1125, pieces: 8 })
    expect(layout!.postOneAtInches).toBeGreaterThanOrEqual(-500)
    expect(layout!.postOneAtInches).toBeLessThanOrEqual(-445)
    expect(spacesBetween(layout, layout!.postOneAtInches + 525, layout!.postOneAtInches + 600)).toEqual([37.5, 37.5])
  })

  it.each([
    // As wide as the space: post 1 has one place. A sixteenth wider it takes two spaces; 75 in more rail would be an odd
    // panel, which weighs more than the 150 in of a standard one.
    { toInches: 155, railInches: 1125 },
    { toInches: 155 + 1 / 16, railInches: 1275 },
  ])('up to $toInches in', ({ toInches, railInches }) => {
    const { layout } = solve(asked({ ...free, mayExtendInches: 600, reduced: [part(80, toInches, 'half')] }))
    expect(layout!.score.railInches).toBe(railInches)
    if (railInches === 1125) expect(layout!.postOneAtInches).toBe(80 - 525)
  })

  it('and to where a post midway stands clear', () => {
    const obstructions = [{ name: 'a pipe', fromInches: 50, toInches: 85 }]
    const { layout } = solve(asked({ ...free, obstructions, reduced: [part(80, 100, 'half')] }))
    // The posts stand at 525, 562.5 and 600 in from post 1. With post 1 from -500 to -445 the first of them stands clear at
    // 50 in or before, the second at 85 in or after: post 1 at -477.5 to -475.
    expect(layout!.score.railInches).toBe(1125)
    expect(layout!.postOneAtInches).toBeGreaterThanOrEqual(85 - 562.5)
    expect(layout!.postOneAtInches).toBeLessThanOrEqual(50 - 525)
  })
})

describe('which spaces are divided', () => {
  it('all that lie in the part, even with a sixteenth, and no other', () => {
    const inside = solve(asked({ reduced: [part(412.5, 487.5, 'half')] })).layout
    expect(postsOf(inside).filter((at) => at > 300 && at < 600)).toEqual([337.5, 412.5, 450, 487.5, 562.5])
    const beyond = solve(asked({ reduced: [part(412.5 - 1 / 16, 487.5 + 1 / 16, 'half')] })).layout
    expect(postsOf(beyond).filter((at) => at > 300 && at < 600)).toEqual([337.5, 375, 412.5, 450, 487.5, 525, 562.5])
  })

  it.each([
    [part(300, 1200, 'half'), part(700, 710, 'quarter')],
    [part(700, 710, 'quarter'), part(300, 1200, 'half')],
  ])('by the finest spacing asked for, in whatever order the parts are named', (...reduced) => {
    const { layout } = solve(asked({ reduced }))
    expect(spacesBetween(layout, 637.5, 787.5)).toEqual([18.75, 18.75, 18.75, 18.75, 37.5, 37.5])
    expect(spacesBetween(layout, 262.5, 637.5)).toEqual(Array.from({ length: 10 }, () => 37.5))
  })

  it('by quarter spacing, also where half spacing of another such part would lie', () => {
    const { layout } = solve(asked({ reduced: [part(490, 500, 'quarter'), part(640, 650, 'quarter')] }))
    const quarters = [18.75, 18.75, 18.75, 18.75]
    expect(spacesBetween(layout, 487.5, 712.5)).toEqual([...quarters, 37.5, 37.5, ...quarters])
  })

  it.each([
    { from: -200, to: -100 },
    { from: 1600, to: 1700 },
  ])('none beyond the ends: $from to $to in is refused', ({ from, to }) => {
    const { layout, refused } = solve(asked({ reduced: [part(from, to, 'half')] }))
    expect(layout).toBeUndefined()
    expect(refused).toContainEqual({ kind: 'reduced part in unit', unit: null, spacing: 'half' })
  })
})

describe('doubled rail that was asked for', () => {
  const terminal: RunEnd = { ...tangent, atInches: 0 } as RunEnd

  it('may begin at the joint of an end unit, not a sixteenth within it', () => {
    // The tangent terminal's own panels reach 562.5 in from post 1.
    const { layout } = solve(
      asked({ first: terminal, second: standingAt(1762.5), reduced: [part(562.5, 600, 'full', true)] }),
    )
    expect(layout!.panels.filter(({ nested }) => nested).map(({ fromInches }) => fromInches)).toEqual([562.5])
    const within = solve(
      asked({ first: terminal, second: standingAt(1762.5), reduced: [part(562.5 - 1 / 16, 600, 'full', true)] }),
    )
    expect(within.layout).toBeUndefined()
    expect(within.refused).toContainEqual({
      kind: 'doubled part in unit',
      unit: nameOf(sheetOf<EndSheet>('tangent-terminal-31')),
    })
  })
})

describe('posts that are driven', () => {
  it('are counted as they stand, so half spacing takes twice as many', () => {
    const standing = { postOneAtInches: -37.5, panels: [], postsDriven: 9 }
    const run = { standing, reduced: [part(0, 600, 'half')] }
    // From -37.5 on in steps of 37.5 in the ninth post stands at 262.5.
    const pipe = (at: number) => [{ name: 'a pipe', fromInches: at - 1, toInches: at + 1 }]
    expect(solve(asked({ ...run, obstructions: pipe(262.5) })).layout).toBeDefined()
    const next = solve(asked({ ...run, obstructions: pipe(300) }))
    expect(next.layout).toBeUndefined()
    expect(next.refused).toContainEqual({
      kind: 'post at reduced spacing obstructed',
      ...{ obstructions: ['a pipe'], spacing: 'half' },
    })
  })
})
