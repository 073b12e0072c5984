import { describe, expect, it } from 'vitest'
import { shippedSheets } from '../../sheets/shipped-sheets.ts'
import type { EndSheet, LongitudinalSheet, OmissionRule } from '../hardware/hardware-sheet.ts'
import { nameOf } from '../hardware/sheet-text.ts'
import type { Layout, LayoutRequest, Obstruction, RunEnd } from './layout.ts'
import type { Refusal } from './refusal.ts'
import { solveLayout } from './solve-layout.ts'

const sheetOf = <T>(id: string): T => shippedSheets.find((one) => one.id === id) as T
const system = sheetOf<LongitudinalSheet>('w-beam-post-splice-27-3-4')
const splice = (atInches: number): RunEnd => ({ kind: 'standing splice', atInches, position: 'post' })
const stuck = (name: string, fromInches: number, toInches = fromInches): Obstruction => ({ name, fromInches, toInches })
/** Something 10 in wide about a place. */
const pipe = (name: string, at: number): Obstruction => stuck(name, at - 5, at + 5)

/** A system that only knows to leave posts out, at most two in a row, with gaps at least 600 in apart. */
const leavingOut = (changes: Partial<OmissionRule> = {}): LongitudinalSheet => ({
  ...system,
  movedPost: 'notStated',
  omissions: [
    {
      ...system.omissions[0]!,
      ...{ kind: 'single', most: 2, specialPostsEachSide: 0, specialPostKind: null, nestedInches: 0 },
      ...{ leastToEndUnit: 'notStated', spliceOnOmittedPost: true, ...changes },
    },
  ],
})

/** Posts every 75 in from 0 to 3,000 in, post 1 at 0: post 21 stands at 1,500. */
function solve(of: LongitudinalSheet, obstructions: readonly Obstruction[], changes: Partial<LayoutRequest> = {}) {
  const solved = solveLayout({
    ...{ system: of, first: splice(0), second: splice(3000), need: null, stock: null, obstructions, reduced: [] },
    ...{ standing: null, mayExtendInches: 0, ...changes },
  })
  if (!solved.ok) throw new Error(solved.error.kind)
  const [layout] = solved.value.runs
  return { layout: layout as Layout | undefined, refused: solved.value.refused() }
}
const omitted = (...of: Parameters<typeof solve>) =>
  solve(...of).layout?.omitted.map(({ alongInches, obstructions }) => [alongInches, ...obstructions])
const refusals = (kind: Refusal['kind'], ...of: Parameters<typeof solve>) =>
  solve(...of).refused.filter((one) => one.kind === kind)

describe('posts that are left out', () => {
  it('are those strictly inside an obstruction, named by all that are in the way of one gap', () => {
    expect(omitted(leavingOut(), [pipe('a', 1500)])).toEqual([[1500, 'a']])
    expect(omitted(leavingOut(), [stuck('a', 1500, 1510), stuck('b', 1490, 1500)])).toEqual([])
    expect(omitted(leavingOut(), [pipe('a', 1500), stuck('b', 1490, 1510)])).toEqual([[1500, 'a', 'b']])
    expect(omitted(leavingOut(), [pipe('a', 1500), pipe('b', 1575)])).toEqual([
      [1500, 'a', 'b'],
      [1575, 'a', 'b'],
    ])
    expect(omitted(leavingOut(), [pipe('b', 2400), pipe('a', 1500)])).toEqual([
      [1500, 'a'],
      [2400, 'b'],
    ])
  })

  it('are at most as many in a row as a rule allows; the first of them is told by its number', () => {
    expect(refusals('too many posts obstructed', leavingOut(), [stuck('a', 1490, 1600)])).toEqual([])
    expect(refusals('too many posts obstructed', leavingOut(), [stuck('a', 1490, 1660)])).toEqual([
      { kind: 'too many posts obstructed', obstructions: ['a'], posts: 3, most: 2, firstPost: 21 },
    ])
  })

  it('are in gaps far enough apart, from the post after one to the post before the next', () => {
    const near = (at: number, leastToNextGap: OmissionRule['leastToNextGap'] = system.omissions[0]!.leastToNextGap) =>
      refusals('gaps too near', leavingOut({ leastToNextGap }), [pipe('a', 600), pipe('b', at)])
    // From 675 to the post before the next gap.
    expect(near(1350)).toEqual([])
    expect(near(1275)).toEqual([{ kind: 'gaps too near', first: ['a'], second: ['b'], have: 525, least: 600 }])
    expect(near(1200, 450)).toEqual([])
    expect(near(1200, 451)).toMatchObject([{ have: 450, least: 451 }])
    expect(near(750, 'notStated')).toEqual([])
  })
})

describe('a post of an end unit', () => {
  // Posts of the terminal at 0 to 450 in; the anchor's at 2,850 and 3,000.
  const first: RunEnd = { kind: 'unit', sheet: sheetOf<EndSheet>('flared-terminal-27-3-4'), atInches: 0 }
  const second: RunEnd = { kind: 'unit', sheet: sheetOf<EndSheet>('trailing-anchor-27-3-4'), atInches: 3000 }
  const inTheWay = (fromInches: number, toInches: number) =>
    refusals('unit post obstructed', leavingOut(), [stuck('a', fromInches, toInches)], { first, second }).map((one) =>
      'post' in one ? [one.unit, one.post] : [],
    )
  const [terminal, anchor] = [first, second].map((end) => end.kind === 'unit' && nameOf(end.sheet))

  it('can be neither left out nor moved, and is told by its number; it may stand on an edge', () => {
    expect(inTheWay(150, 225)).toEqual([])
    expect(inTheWay(140, 160)).toEqual([[terminal, 3]])
    expect(inTheWay(-10, 10)).toEqual([[terminal, 1]])
    expect(inTheWay(2990, 3010)).toEqual([[anchor, 1]])
    expect(inTheWay(3000, 3010)).toEqual([])
    expect(inTheWay(2990, 3000)).toEqual([])
  })
})

describe('special posts beside a gap', () => {
  const two = leavingOut({ specialPostsEachSide: 2, specialPostKind: 'special post', leastToNextGap: 'notStated' })
  const places = (...of: Parameters<typeof solve>) =>
    solve(...of).layout?.posts.flatMap(({ alongInches, state }) => (state === 'special' ? [alongInches] : []))
  const unfit = (...of: Parameters<typeof solve>) => refusals('special posts do not fit', ...of)

  it('stand in the places of the nearest two on each side, inside the run', () => {
    expect(places(two, [pipe('a', 600)])).toEqual([450, 525, 675, 750])
    expect(places(two, [pipe('a', 225)])).toEqual([75, 150, 300, 375])
    expect(unfit(two, [pipe('a', 150)])).toEqual([
      { kind: 'special posts do not fit', obstructions: ['a'], rule: 'single', each: 2 },
    ])
    expect(places(two, [pipe('a', 2775)])).toEqual([2625, 2700, 2850, 2925])
    expect(unfit(two, [pipe('a', 2850)])).toHaveLength(1)
  })

  it('may stand on the edge of something else, and not in it', () => {
    expect(unfit(two, [pipe('a', 600), stuck('b', 675, 700)])).toEqual([])
    expect(unfit(two, [pipe('a', 600), stuck('b', 500, 525)])).toEqual([])
    expect(places(two, [pipe('a', 600), stuck('b', 675, 700)])).toEqual([450, 525, 675, 750])
  })

  it('that do not fit are the reason, and not that too many posts are in the way', () => {
    expect(refusals('too many posts obstructed', two, [pipe('a', 150)])).toEqual([])
    expect(refusals('too many posts obstructed', two, [stuck('a', 145, 230)])).toEqual([])
  })

  it('of two gaps are never the same one', () => {
    expect(places(two, [pipe('a', 600), pipe('b', 975)])).toEqual([450, 525, 675, 750, 825, 900, 1050, 1125])
    expect(unfit(two, [pipe('a', 600), pipe('b', 900)])).toEqual([
      { kind: 'special posts do not fit', obstructions: ['b'], rule: 'single', each: 2 },
    ])
  })

  it('stand where spaces are full: a divided part may begin at the outermost of them', () => {
    const divided = (fromInches: number, toInches: number) =>
      unfit(two, [pipe('a', 600)], { reduced: [{ fromInches, toInches, spacing: 'half', nested: false }] })
    expect(divided(750, 900)).toEqual([])
    expect(divided(300, 450)).toEqual([])
    expect(divided(675, 900)).toHaveLength(1)
    expect(divided(300, 525)).toHaveLength(1)
  })
})

describe('a gap near an end unit', () => {
  // The flared terminal's last post stands at 450 in, the anchor's innermost 150 in before its end.
  const first: RunEnd = { kind: 'unit', sheet: sheetOf<EndSheet>('flared-terminal-27-3-4'), atInches: 0 }
  const second: RunEnd = { kind: 'unit', sheet: sheetOf<EndSheet>('trailing-anchor-27-3-4'), atInches: 3000 }
  const ends = { first, second }

  it('has at least what its rule asks for between the unit and the first or last post that is changed', () => {
    const least = (leastToEndUnit: number, at: number, changes: Partial<OmissionRule> = {}) =>
      refusals('too near the end unit', leavingOut({ leastToEndUnit, ...changes }), [pipe('a', at)], ends)
    // 1050 - 450 = 600 before it, 2250 + 600 = 2850 after it.
    expect(least(600, 1050)).toEqual([])
    expect(least(600, 975)).toEqual([
      { kind: 'too near the end unit', obstructions: ['a'], rule: 'single', have: 525, least: 600 },
    ])
    expect(least(600, 2250)).toEqual([])
    expect(least(600, 2325)).toMatchObject([{ have: 525, least: 600 }])
    // Two special posts each side: the outermost is 150 in from the post left out.
    const two = { specialPostsEachSide: 2, specialPostKind: 'special post' }
    expect(least(450, 1050, two)).toEqual([])
    expect(least(451, 1050, two)).toMatchObject([{ have: 450, least: 451 }])
  })

  it('has no rule to keep where a standing run goes on', () => {
    expect(refusals('too near the end unit', leavingOut({ leastToEndUnit: 600 }), [pipe('a', 150)])).toEqual([])
    const far = [pipe('a', 2850)]
    expect(refusals('too near the end unit', leavingOut({ leastToEndUnit: 600 }), far, { first })).toEqual([])
    const near = [pipe('a', 150)]
    expect(refusals('too near the end unit', leavingOut({ leastToEndUnit: 600 }), near, { second })).toEqual([])
  })

  it('has no rail doubled into the unit', () => {
    const doubled = (at: number) =>
      refusals('nested rail in unit', leavingOut({ nestedInches: 600 }), [pipe('a', at)], ends)
    // The terminal's own panels end at 450 in: 300 in on each side of 750 reach to there.
    expect(doubled(750)).toEqual([])
    expect(doubled(675)).toMatchObject([{ kind: 'nested rail in unit', obstructions: ['a'], nested: 600 }])
  })
})

/** Public answer 1028: a post may be moved by up to 12 in; at most two of a run, from memory. */
describe('a post that is moved', () => {
  const moved = (...obstructions: readonly Obstruction[]) =>
    solve(system, obstructions).layout?.posts.flatMap(({ alongInches, state }) =>
      state === 'moved' ? [alongInches] : [],
    )

  it('goes to the nearer edge of what is in its way, by no more than the sheet allows', () => {
    expect(moved(stuck('a', 1492, 1505))).toEqual([1505])
    expect(moved(stuck('a', 1495, 1508))).toEqual([1495])
    expect(moved(stuck('a', 1488, 1520))).toEqual([1488])
    expect(moved(stuck('a', 1487, 1513))).toEqual([])
  })

  it('does not go where something else is, but may stand on the edge of it', () => {
    expect(moved(stuck('a', 1494, 1508), stuck('b', 1480, 1495))).toEqual([1508])
    expect(moved(stuck('a', 1494, 1508), stuck('b', 1480, 1494))).toEqual([1494])
    expect(moved(stuck('a', 1492, 1505), stuck('b', 1505, 1520))).toEqual([1505])
    expect(moved(stuck('a', 1494, 1508), stuck('b', 1480, 1495), stuck('c', 1507, 1530))).toEqual([])
  })

  it('is one alone: of two in the way of one thing neither is moved', () => {
    expect(moved(stuck('a', 1495, 1580))).toEqual([])
    expect(omitted(system, [stuck('a', 1495, 1580)])).toEqual([
      [1500, 'a'],
      [1575, 'a'],
    ])
  })

  it('counts beside those that are left out and the special ones, and two may be moved beside a gap', () => {
    // 2025 in is left out, three posts on each side of it are special, two more are moved: nine are changed.
    const { layout } = solve(system, [pipe('a', 600), pipe('b', 900), stuck('c', 1951, 2099)])
    const states = ['moved', 'special'].map((is) => layout!.posts.filter(({ state }) => state === is).length)
    expect([layout!.omitted.length, ...states, layout!.score.changedPosts]).toEqual([1, 2, 6, 9])
  })

  it('is one of at most two in a run', () => {
    const many = (...places: readonly number[]) =>
      refusals(
        'too many posts moved',
        system,
        places.map((at, i) => pipe(['a', 'b', 'c'][i]!, at)),
      )
    expect(many(600, 1500)).toEqual([])
    expect(many(600, 1500, 2400)).toContainEqual({ kind: 'too many posts moved', obstructions: ['c'], most: 2 })
    expect(moved(pipe('a', 600), pipe('b', 1500))).toEqual([595, 1495])
  })
})

it('a splice where a post was left out is one at a post, as the others of its system', () => {
  const stock = [{ inches: 150, count: null }]
  const { layout } = solve(leavingOut(), [pipe('a', 1500)], { stock })
  expect(layout!.omitted.map(({ alongInches }) => alongInches)).toEqual([1500])
  const at = layout!.splices.find(({ alongInches }) => alongInches === 1500)
  expect([at?.position, at?.unit]).toEqual(['post', 'run'])
})
