import { describe, expect, it } from 'vitest'
import { shippedSheets } from '../../sheets/shipped-sheets.ts'
import type { LongitudinalSheet } from '../hardware/hardware-sheet.ts'
import type { Layout, Obstruction, RunEnd, StandingPart } from './layout.ts'
import { solveLayout } from './solve-layout.ts'

const system = shippedSheets.find(({ id }) => id === 'w-beam-post-splice-27-3-4') as LongitudinalSheet
const splice = (atInches: number): RunEnd => ({ kind: 'standing splice', atInches, position: 'post' })
const stuck = (name: string, fromInches: number, toInches: number): Obstruction => ({ name, fromInches, toInches })

/** Where post 1 stands from the datum: not at 0, so that a place counted from the wrong one shows. */
const datum = -1234.0625
const fromDatum = (places: readonly number[] | undefined) => places?.map((at) => datum + at)

/** Posts every 75 in from 0 to 3,000 in, places counted from post 1: post 21 stands at 1,500. The sheet lets two posts be moved, each by 12 in. */
function solve(
  obstructions: readonly Obstruction[],
  postsDriven: number,
  { postOneAtInches = 0, leftOutAtInches, movedToInches, specialAtInches }: Omit<Partial<StandingPart>, 'panels'>,
  ends: { readonly first: RunEnd; readonly second: RunEnd } = { first: splice(datum), second: splice(datum + 3000) },
) {
  const solved = solveLayout({
    ...{ system, ...ends, need: null, stock: null, reduced: [] },
    obstructions: obstructions.map(({ name, fromInches, toInches }) =>
      stuck(name, datum + fromInches, datum + toInches),
    ),
    standing: {
      ...{
        postOneAtInches: datum + postOneAtInches,
        panels: [],
        postsDriven,
        leftOutAtInches: fromDatum(leftOutAtInches),
      },
      ...{ movedToInches: fromDatum(movedToInches), specialAtInches: fromDatum(specialAtInches) },
    },
    mayExtendInches: 0,
  })
  if (!solved.ok) throw new Error(solved.error.kind)
  const [layout] = solved.value.runs
  return { layout: layout as Layout | undefined, refused: solved.value.refused() }
}
const placesOf = ({ layout }: ReturnType<typeof solve>, state: 'moved' | 'special') =>
  layout?.posts.filter((post) => post.state === state).map(({ alongInches }) => alongInches)
const otherwise = (state: 'moved' | 'special', at: number) => ({
  ...{ kind: 'stands otherwise', state, atInches: datum + at },
})

const pipe = stuck('a pipe', 1495, 1505)

describe('a post that stands moved', () => {
  it('stays at the edge at which it was driven, though the search would take the other', () => {
    expect(placesOf(solve([pipe], 0, {}), 'moved')).toEqual([1495])
    const stands = solve([pipe], 25, { movedToInches: [1505] })
    expect(placesOf(stands, 'moved')).toEqual([1505])
    expect(stands.layout?.posts).toHaveLength(41)
    expect(stands.refused).toEqual([])
  })

  it('stays on either side of its place, wherever the posts of the run begin', () => {
    expect(placesOf(solve([pipe], 25, { movedToInches: [1495] }), 'moved')).toEqual([1495])
    // From a splice midway on the posts stand at 37 1/2 in less.
    const midway = { kind: 'standing splice', position: 'midspan' } as const
    const ends = { first: { ...midway, atInches: datum }, second: { ...midway, atInches: datum + 3000 } }
    const beside = stuck('a pipe', 1457.5, 1467.5)
    for (const at of [1457.5, 1467.5]) {
      const standing = { postOneAtInches: -37.5, movedToInches: [at] }
      const { layout } = solve([beside], 25, standing, ends)
      expect(layout?.posts.flatMap((post) => (post.state === 'moved' ? [post.alongInches - 37.5] : []))).toEqual([at])
    }
  })

  it('is one of those that the sheet lets a run have', () => {
    const obstructions = [stuck('a', 595, 605), pipe, stuck('c', 2395, 2405)]
    const driven = { movedToInches: [605, 1505] }
    expect(placesOf(solve(obstructions.slice(0, 2), 25, driven), 'moved')).toEqual([605, 1505])
    expect(solve(obstructions, 25, driven).refused).toContainEqual({
      ...{ kind: 'too many posts moved', obstructions: ['c'], most: 2 },
    })
  })

  it.each([
    ['no farther from its place than the sheet says', [pipe], 1512, true],
    ['not farther', [pipe], 1512 + 1 / 16, false],
    ['not inside of what is in the way', [pipe], 1504, false],
    ['not where nothing is in the way of its place', [], 1505, false],
    ['not beside another that is in the way', [pipe, stuck('b', 1570, 1580)], 1505, false],
  ] as const)('is lawful %s', (_, obstructions, at, isLawful) => {
    const { layout, refused } = solve(obstructions, 21, { movedToInches: [at] })
    expect(layout !== undefined).toBe(isLawful)
    if (!isLawful) expect(refused).toContainEqual(otherwise('moved', at))
  })
})

describe('special posts that stand', () => {
  // Post 28, at 2,025 in, is left out, with three special posts to either side.
  const headwall = stuck('a headwall', 1951, 2099)
  const before = [1800, 1875, 1950]

  it('are those before a gap that is still to come, or on both sides of one that is passed', () => {
    const all = [...before, 2100, 2175, 2250]
    expect(placesOf(solve([headwall], 27, { specialAtInches: before }), 'special')).toEqual(all)
    const passed = { leftOutAtInches: [2025], specialAtInches: [...before, 2100] }
    expect(placesOf(solve([headwall], 28, passed), 'special')).toEqual(all)
  })

  it('are not made of plain ones that are driven, nor plain ones of them', () => {
    expect(placesOf(solve([headwall], 27, {}), 'special')).not.toEqual(expect.arrayContaining(before))
    const { layout, refused } = solve([], 27, { specialAtInches: before })
    expect(layout).toBeUndefined()
    expect(refused).toContainEqual(otherwise('special', 1800))
  })

  it('are no more than the rule asks for: one beside them is lawful nowhere', () => {
    const { layout, refused } = solve([headwall], 27, { specialAtInches: [1725, ...before] })
    expect(layout).toBeUndefined()
    expect(refused).toContainEqual(otherwise('special', 1725))
  })
})
