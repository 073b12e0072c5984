import { describe, expect, it } from 'vitest'
import { shippedSheets } from '../../sheets/shipped-sheets.ts'
import type { EndSheet, LongitudinalSheet } from '../hardware/hardware-sheet.ts'
import type { LayoutRequest, RunEnd } from './layout.ts'
import { noPostParts, postClearance } from './post-clearance.ts'
import { solveLayout } from './solve-layout.ts'

const sheetOf = <T>(id: string): T => shippedSheets.find((one) => one.id === id) as T
const system = sheetOf<LongitudinalSheet>('w-beam-post-splice-27-3-4')
const splice = (atInches: number): RunEnd => ({ kind: 'standing splice', atInches, position: 'post' })

/** A system that only knows to leave one post out. */
const leavingOut: LongitudinalSheet = {
  ...system,
  movedPost: 'notStated',
  omissions: [
    {
      ...system.omissions[0]!,
      ...{ kind: 'single', most: 1, specialPostsEachSide: 0, specialPostKind: null, nestedInches: 0 },
      ...{ leastToEndUnit: 'notStated', spliceOnOmittedPost: true },
    },
  ],
}

/** Posts every 75 in from 0 to 3,000 in. */
function solve(changes: Partial<LayoutRequest>, of = leavingOut) {
  const solved = solveLayout({
    ...{ system: of, first: splice(0), second: splice(3000), need: null, stock: null, obstructions: [], reduced: [] },
    ...{ standing: null, mayExtendInches: 0, ...changes },
  })
  if (!solved.ok) throw new Error(solved.error.kind)
  const [layout] = solved.value.runs
  return { layout, refused: solved.value.refused() }
}

const least = 1 / 16

/** Where posts are left out for a pipe from one place to another. */
const omitted = (fromInches: number, toInches: number, stated: number | null | undefined): readonly number[] =>
  solve({
    obstructions: [{ name: 'pipe', fromInches, toInches }],
    ...(stated === undefined ? {} : { postClearance: postClearance(stated) }),
  }).layout!.omitted.map(({ alongInches }) => alongInches)

describe('a post beside an obstruction', () => {
  // The post at 1,500: its side lies at 1,503, and 6 in of clearance reach to 1,509.
  it('is clear where its clearance touches the near edge, and in the way a sixteenth nearer', () => {
    expect(omitted(1509, 1530, null)).toEqual([])
    expect(omitted(1509 - least, 1530, null)).toEqual([1500])
    expect(omitted(1470, 1491, null)).toEqual([])
    expect(omitted(1470, 1491 + least, null)).toEqual([1500])
  })

  it('keeps half its width where the run states no clearance is needed, and more where it states more', () => {
    expect([omitted(1503, 1530, 0), omitted(1503 - least, 1530, 0)]).toEqual([[], [1500]])
    expect([omitted(1470, 1497, 0), omitted(1470, 1497 + least, 0)]).toEqual([[], [1500]])
    expect([omitted(1515, 1530, 12), omitted(1515 - least, 1530, 12)]).toEqual([[], [1500]])
  })

  it('counts as a line where nothing is asked, as in runs of before', () => {
    expect([omitted(1500, 1530, undefined), omitted(1500 - least, 1530, undefined)]).toEqual([[], [1500]])
    expect([omitted(1470, 1500, undefined), omitted(1470, 1500 + least, undefined)]).toEqual([[], [1500]])
  })

  it('is in the way of what has no width at all', () => {
    expect(omitted(1500, 1500, undefined)).toEqual([])
    expect(omitted(1500, 1500, null)).toEqual([1500])
  })

  it('is moved as far as the clearance asks, and no farther', () => {
    const rule = system.movedPost === 'notStated' ? null : system.movedPost
    const moving = { ...leavingOut, movedPost: { ...rule!, most: { ...rule!.most, inches: 12 }, atSplice: true } }
    const obstructions = [{ name: 'pipe', fromInches: 1495, toInches: 1499 }]
    const postsOf = (clearance: LayoutRequest['postClearance']) =>
      solve({ obstructions, postClearance: clearance }, moving).layout!.posts.find(({ state }) => state === 'moved')
    // The pipe's far edge at 1,499, 9 in on.
    expect(postsOf(postClearance(null))!.alongInches).toBe(1508)
    expect(postsOf(undefined)).toBeUndefined()
  })

  it('lets a run slide until every post is clear of it, at both ends', () => {
    const end = (id: string): RunEnd => ({ kind: 'unit', sheet: sheetOf<EndSheet>(id), atInches: null })
    for (const fromInches of [-200, -131, 0, 37, 300]) {
      const toInches = fromInches + 20
      const { layout } = solve(
        {
          ...{ first: end('flared-terminal-27-3-4'), second: end('trailing-anchor-27-3-4') },
          ...{ need: { fromInches: 0, toInches: 600 }, mayExtendInches: 600 },
          ...{ obstructions: [{ name: 'pipe', fromInches, toInches }], postClearance: postClearance(null) },
        },
        { ...system, omissions: [], movedPost: 'notStated' },
      )
      const centres = layout!.posts.map(({ alongInches }) => alongInches + layout!.postOneAtInches)
      for (const at of centres) expect(at <= fromInches - 9 || at >= toInches + 9, `${at} at ${fromInches}`).toBe(true)
    }
  })

  it('tells half width and clearance where it is a reason, and whether the run states the clearance', () => {
    // 1,491 less a sixteenth to 1,509 and a sixteenth: one post; two of them with 75 in more.
    const obstructions = [{ name: 'vault', fromInches: 1500, toInches: 1575 }]
    const kept = (stated: number | null) =>
      solve({ obstructions, postClearance: postClearance(stated) }).refused.filter(
        ({ kind }) => kind === 'posts keep clear',
      )
    expect(kept(null)).toEqual([{ kind: 'posts keep clear', halfPostInches: 3, clearanceInches: 6, isStated: false }])
    expect(kept(12)).toEqual([{ kind: 'posts keep clear', halfPostInches: 3, clearanceInches: 12, isStated: true }])
    expect(solve({ obstructions }).refused).toEqual([])
    expect(solve({ postClearance: postClearance(null) }).refused).toEqual([])
  })

  it('tells them where two gaps come too near each other for it, and not of what has nothing to do with posts', () => {
    // Gaps have to be 600 in apart; from 675 to 1,200 are 525.
    const obstructions = [600, 1275].map((at) => ({ name: 'pipe', fromInches: at - 1, toInches: at + 1 }))
    const kinds = (changes: Partial<LayoutRequest>) =>
      solve({ postClearance: postClearance(null), ...changes }).refused.map(({ kind }) => kind)
    expect(kinds({ obstructions })).toEqual(['gaps too near', 'posts keep clear'])
    expect(kinds({ second: splice(3010) })).toEqual(['ends do not meet'])
  })
})

it('no post parts are longer at both ends alike, also upstream of the datum', () => {
  const obstructions = [{ name: 'pipe', fromInches: -30, toInches: -10 }]
  expect(noPostParts({ obstructions, postClearance: postClearance(4) })).toEqual([
    { name: 'pipe', fromInches: -37, toInches: -3 },
  ])
  expect(noPostParts({ obstructions })).toEqual(obstructions)
})
