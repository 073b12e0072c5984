import { describe, expect, it } from 'vitest'
import { shippedSheets } from '../../sheets/shipped-sheets.ts'
import type { EndSheet, LongitudinalSheet } from '../hardware/hardware-sheet.ts'
import type { Layout, LayoutRequest, ReducedPart, RunEnd } from './layout.ts'
import type { Refusal } from './refusal.ts'
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
