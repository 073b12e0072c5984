import { describe, expect, it } from 'vitest'
import { shippedSheets } from '../../sheets/shipped-sheets.ts'
import type { EndSheet, LongitudinalSheet, MovedPostRule, OmissionRule } from '../hardware/hardware-sheet.ts'
import { nameOf } from '../hardware/sheet-text.ts'
import { endSides } from './end-side.ts'
import type { CurbBefore, Layout, LayoutRequest, Obstruction, RunEnd } from './layout.ts'
import { leastChanged } from './post-plan.ts'
import type { Refusal } from './refusal.ts'
import { sixteenths } from './sixteenths.ts'
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

/** Where post 1 stands from the datum: not at 0, so that a place counted from the wrong one shows. */
const datum = 1234.0625
const fromDatum = <T extends { readonly fromInches: number; readonly toInches: number }>(part: T): T => ({
  ...part,
  fromInches: datum + part.fromInches,
  toInches: datum + part.toInches,
})
const endFromDatum = (end: RunEnd): RunEnd => ({ ...end, atInches: datum + end.atInches! }) as RunEnd

/** Posts every 75 in from 0 to 3,000 in, places counted from post 1: post 21 stands at 1,500. */
function requestOf(
  of: LongitudinalSheet,
  obstructions: readonly Obstruction[],
  { first = splice(0), second = splice(3000), reduced = [], standing = null, ...changes }: Partial<LayoutRequest> = {},
): LayoutRequest {
  return {
    ...{ system: of, need: null, stock: null, mayExtendInches: 0, ...changes },
    ...{ first: endFromDatum(first), second: endFromDatum(second) },
    ...{ obstructions: obstructions.map(fromDatum), reduced: reduced.map(fromDatum) },
    standing: standing && {
      ...standing,
      postOneAtInches: datum + standing.postOneAtInches,
      leftOutAtInches: standing.leftOutAtInches?.map((at) => datum + at),
    },
  }
}

function solve(...of: Parameters<typeof requestOf>) {
  const solved = solveLayout(requestOf(...of))
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

  it('are posts of the run alone, from its first to its last: those that stand beyond a splice are in no way', () => {
    expect(omitted(leavingOut(), [pipe('a', 75)])).toEqual([[75, 'a']])
    expect(omitted(leavingOut(), [stuck('a', -100, 80)])).toEqual([[75, 'a']])
    expect(omitted(leavingOut(), [stuck('a', 2920, 3100)])).toEqual([[2925, 'a']])
    expect(omitted(leavingOut(), [pipe('a', 0), pipe('b', 3000)])).toEqual([])
  })

  it('leave the rail single where the rule asks for nothing, and doubled as far as it asks', () => {
    const doubled = (nestedInches: number, at: number) =>
      solve(leavingOut({ nestedInches }), [pipe('a', at)], { stock: [{ inches: 150, count: null }] })
        .layout!.panels.filter(({ nested }) => nested)
        .map(({ fromInches }) => fromInches)
    // 1,575 is the middle of a panel, so that nothing doubled there would be a panel all the same.
    expect(doubled(0, 1575)).toEqual([])
    expect(doubled(600, 1500)).toEqual([1200, 1350, 1500, 1650])
    // The half of it may lie beyond a standing splice, whose rail can be doubled as well.
    expect(doubled(600, 150)).toEqual([0, 150, 300])
    expect(doubled(600, 2850)).toEqual([2550, 2700, 2850])
  })

  it('are none at a curb of which the sheet says nothing', () => {
    const atCurb = (curb: CurbBefore | undefined) => {
      const { layout, refused } = solve(leavingOut({ nestedAtCurb: 'notStated' }), [pipe('a', 1500)], { curb })
      return [layout?.omitted.length, refused.map(({ kind }) => kind)]
    }
    expect([undefined, 'none'].map((curb) => atCurb(curb as CurbBefore))).toEqual([
      [1, []],
      [1, []],
    ])
    expect(atCurb('present')).toEqual([undefined, ['not stated at a curb']])
  })

  it('are at most as many in a row as a rule allows; the first of them is told by its number', () => {
    expect(refusals('too many posts obstructed', leavingOut(), [stuck('a', 1490, 1600)])).toEqual([])
    expect(refusals('too many posts obstructed', leavingOut(), [stuck('a', 1490, 1660)])).toEqual([
      { kind: 'too many posts obstructed', obstructions: ['a'], posts: 3, most: 2, firstPost: 21 },
    ])
    // Post 7 is the terminal's last, at 450.
    const first: RunEnd = { kind: 'unit', sheet: sheetOf<EndSheet>('flared-terminal-27-3-4'), atInches: 0 }
    expect(refusals('too many posts obstructed', leavingOut(), [stuck('a', 890, 1060)], { first })).toMatchObject([
      { posts: 3, firstPost: 13 },
    ])
  })

  it('are none where no rule allows it: the post is moved or in the way', () => {
    const tooMany = (movedPost: LongitudinalSheet['movedPost']) =>
      refusals('too many posts obstructed', { ...system, movedPost, omissions: [] }, [pipe('a', 1500)])
    expect(tooMany('notStated')).toMatchObject([{ posts: 1, most: 0 }])
    expect(tooMany(system.movedPost)).toEqual([])
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

  it('are as far apart as the stricter of their two rules asks for', () => {
    const plain = leavingOut().omissions[0]!
    const of = (...least: readonly number[]) => ({
      ...leavingOut(),
      omissions: least.map((leastToNextGap, i) => ({ ...plain, most: i + 1, leastToNextGap })) as OmissionRule[],
    })
    // Two posts at 600 and 675 take the second rule, the one at 1,200 either: from 750 to 1,125 are 375.
    const gaps = [stuck('a', 595, 680), pipe('b', 1200)]
    const told = (...least: readonly number[]) =>
      refusals('gaps too near', of(...least), gaps).map((one) => 'least' in one && one.least)
    expect(told(450, 300)).toEqual([450])
    expect(told(375, 300)).toEqual([])
    const [before, after] = [stuck('b', 595, 605), stuck('a', 970, 1055)]
    // The other way about: the one at 600, the two at 975 and 1,050; from 675 to 900 are 225.
    expect(refusals('gaps too near', of(300, 225), [before, after]).map((one) => 'least' in one && one.least)).toEqual([
      300,
    ])
  })
})

describe('posts that are driven', () => {
  const left = (at: number, postsDriven: number, changes: Partial<LayoutRequest> = {}, ...leftOut: readonly number[]) =>
    omitted(leavingOut({ leastToNextGap: 'notStated' }), [...leftOut.map((one) => pipe('a', one)), pipe('b', at)], {
      standing: { postOneAtInches: 0, panels: [], postsDriven, leftOutAtInches: leftOut },
      ...changes,
    })?.flatMap(([place]) => (place === at ? [place] : []))

  it('are in no way, the last of them counted from post 1, without those that were left out', () => {
    // Post 12 stands at 825; where that at 600 was left out, at 900.
    expect([left(825, 12), left(900, 12)]).toEqual([[], [900]])
    expect([left(900, 12, {}, 600), left(975, 12, {}, 600)]).toEqual([[], [975]])
  })

  it('are counted at the spacing at which they stand', () => {
    // Half spacing from 300 to 600: post 5 stands at 300, post 13 at 600, post 15 at 750.
    const reduced = [{ fromInches: 300, toInches: 600, spacing: 'half', nested: false }] as const
    expect([left(750, 14, { reduced }), left(750, 15, { reduced })]).toEqual([[750], []])
    expect([left(225, 3, { reduced }), left(225, 4, { reduced })]).toEqual([[225], []])
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
    expect(inTheWay(2915, 2935)).toEqual([[anchor, 2]])
    expect(inTheWay(3000, 3010)).toEqual([])
    expect(inTheWay(2990, 3000)).toEqual([])
  })

  it('is the outermost of those in the way, and what is in its way is named', () => {
    expect(inTheWay(140, 240)).toEqual([[terminal, 3]])
    expect(inTheWay(2840, 2940)).toEqual([[anchor, 2]])
    expect(refusals('unit post obstructed', leavingOut(), [stuck('a', 140, 160)], { first, second })).toMatchObject([
      { obstructions: ['a'] },
    ])
  })

  it('is in no way once it is driven', () => {
    const driven = (postsDriven: number, fromInches: number, toInches: number) =>
      refusals('unit post obstructed', leavingOut(), [stuck('a', fromInches, toInches)], {
        ...{ first, second, standing: { postOneAtInches: 0, panels: [], postsDriven } },
      }).map((one) => 'post' in one && one.post)
    expect(driven(3, 140, 160)).toEqual([])
    expect(driven(3, 140, 240)).toEqual([4])
    expect(driven(2, 140, 160)).toEqual([3])
    // Of the anchor the inner ones come first: seven posts of the terminal, 31 of the run, then 2,850, 2,925 and 3,000.
    expect(driven(39, 2840, 2860)).toEqual([])
    expect(driven(39, 2840, 2940)).toEqual([2])
    expect(driven(40, 2840, 2940)).toEqual([])
    expect(driven(40, 2840, 3010)).toEqual([1])
    expect(driven(41, 2840, 3010)).toEqual([])
    expect(driven(50, 2840, 3010)).toEqual([])
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

  it('stand in nothing else that is in the way', () => {
    // Each of the two would have a special post where the other is.
    expect(
      unfit(two, [pipe('a', 600), pipe('b', 750)]).map((one) => 'obstructions' in one && one.obstructions),
    ).toEqual([['a'], ['b']])
  })

  it('are none of those that are driven as plain ones', () => {
    const driven = (postsDriven: number) =>
      unfit(two, [pipe('a', 600)], { standing: { postOneAtInches: 0, panels: [], postsDriven } })
    // Post 6 stands at 375, post 7 at 450, where the outermost special one has to stand.
    expect(driven(6)).toEqual([])
    expect(driven(7)).toHaveLength(1)
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

  it('stand so as many as the rule says: three a space farther, none at the gap itself', () => {
    const divided = (each: number, fromInches: number, toInches: number) =>
      unfit(leavingOut({ specialPostsEachSide: each, specialPostKind: 'special post' }), [pipe('a', 600)], {
        reduced: [{ fromInches, toInches, spacing: 'half', nested: false }],
      }).length
    expect([divided(3, 225, 375), divided(3, 300, 450), divided(3, 825, 975), divided(3, 750, 900)]).toEqual([
      0, 1, 0, 1,
    ])
    expect([divided(0, 450, 525), divided(0, 675, 750)]).toEqual([0, 0])
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
    // One on each side, right at the gap.
    const one = { specialPostsEachSide: 1, specialPostKind: 'special post' }
    expect(least(525, 1050, one)).toEqual([])
    expect(least(526, 1050, one)).toMatchObject([{ have: 525, least: 526 }])
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
    const [terminal, anchor] = [first, second].map((end) => end.kind === 'unit' && nameOf(end.sheet))
    const refused = { kind: 'nested rail in unit', obstructions: ['a'], nested: 600 }
    expect(doubled(675)).toEqual([{ ...refused, unit: terminal }])
    // Those of the anchor begin at 2,850.
    expect(doubled(2550)).toEqual([])
    expect(doubled(2625)).toEqual([{ ...refused, unit: anchor }])
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
    // Whatever else is named before it.
    expect(moved(stuck('a', 1499, 1507), stuck('b', 1492, 1503))).toEqual([1507])
    expect(moved(stuck('b', 1492, 1503), stuck('a', 1499, 1507))).toEqual([1507])
    expect(moved(stuck('a', 1493, 1501), stuck('b', 1497, 1508))).toEqual([1493])
  })

  it('is none that was left out among those that are driven', () => {
    // Splices at every fourth post alone, so that the one at 1,575 may be left out as well as moved.
    const of = { ...system, omissions: leavingOut().omissions }
    const stock = [{ inches: 300, count: null }]
    const states = (leftOutAtInches: readonly number[]) => {
      const standing = { postOneAtInches: 0, panels: [], postsDriven: 25, leftOutAtInches }
      const solved = solveLayout(requestOf(of, [pipe('a', 1575)], { stock, standing }))
      if (!solved.ok) throw new Error(solved.error.kind)
      return [...solved.value.runs].map(({ omitted, posts }) => [
        omitted.length,
        posts.filter(({ state }) => state === 'moved').length,
      ])
    }
    expect(states([1575])).toEqual([[1, 0]])
    // Driven there after all, it is in no way.
    expect(states([])).toEqual([[0, 0]])
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
    // Of a sheet that does not say how many, any number.
    const movedPost = { ...(system.movedPost as MovedPostRule), mostInRun: 'notStated' } as const
    const { layout } = solve({ ...system, movedPost }, [pipe('a', 600), pipe('b', 1500), pipe('c', 2400)])
    expect(layout!.posts.filter(({ state }) => state === 'moved')).toHaveLength(3)
  })
})

/** What every plan of a frame changes at least, so that the best of many is looked for first. */
describe('how many posts are changed at least', () => {
  const least = (
    obstructions: readonly Obstruction[],
    changes: { first?: RunEnd; second?: RunEnd; postsDriven?: number } = {},
  ) => {
    const { first = splice(0), second = splice(3000), postsDriven = 0 } = changes
    const standing = { postOneAtInches: 0, panels: [], postsDriven }
    const request = requestOf(system, obstructions, { first, second, standing })
    const side = (end: RunEnd) => endSides(end, system).sides[0]!
    return leastChanged(request, {
      ...{ first: side(first), second: side(second), origin: sixteenths(datum), length: sixteenths(3000) },
    })
  }
  const first: RunEnd = { kind: 'unit', sheet: sheetOf<EndSheet>('flared-terminal-27-3-4'), atInches: 0 }
  const second: RunEnd = { kind: 'unit', sheet: sheetOf<EndSheet>('trailing-anchor-27-3-4'), atInches: 3000 }

  it('are those that are in the way, and none on an edge', () => {
    expect(least([])).toBe(0)
    expect(least([pipe('a', 1500)])).toBe(1)
    expect(least([stuck('a', 1500, 1575)])).toBe(0)
    expect(least([stuck('a', 1499, 1576)])).toBe(2)
    expect(least([pipe('a', 1460)])).toBe(0)
    expect(least([pipe('a', 600), pipe('b', 1500), stuck('c', 2380, 2500)])).toBe(4)
  })

  it('are each counted once, in whatever order things are named', () => {
    expect(least([stuck('a', 1490, 1580), pipe('b', 1500)])).toBe(2)
    expect(least([pipe('b', 1500), stuck('a', 1490, 1580)])).toBe(2)
    expect(least([stuck('a', 1490, 1530), stuck('b', 1520, 1580)])).toBe(2)
  })

  it('are posts of the run: none of a unit, none beyond its ends, none that is driven', () => {
    expect(least([stuck('a', 300, 530)], { first })).toBe(1)
    expect(least([stuck('a', 2770, 3100)], { second })).toBe(1)
    expect(least([stuck('a', 0, 440)], { first })).toBe(0)
    expect(least([stuck('a', -500, -10), stuck('b', 3100, 3500)])).toBe(0)
    // Post 21 stands at 1,500.
    expect(least([stuck('a', 1490, 1580)], { postsDriven: 21 })).toBe(1)
    expect(least([stuck('a', 1490, 1580)], { postsDriven: 20 })).toBe(2)
    expect(least([stuck('a', 140, 240)], { first, postsDriven: 3 })).toBe(0)
  })
})

it('a splice where a post was left out is one at a post, as the others of its system', () => {
  const stock = [{ inches: 150, count: null }]
  const { layout } = solve(leavingOut(), [pipe('a', 1500)], { stock })
  expect(layout!.omitted.map(({ alongInches }) => alongInches)).toEqual([1500])
  const at = layout!.splices.find(({ alongInches }) => alongInches === 1500)
  expect([at?.position, at?.unit]).toEqual(['post', 'run'])
})
