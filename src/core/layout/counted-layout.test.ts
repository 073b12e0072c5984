import { describe, expect, it } from 'vitest'
import { shippedSheets } from '../../sheets/shipped-sheets.ts'
import type { EndSheet, LongitudinalSheet } from '../hardware/hardware-sheet.ts'
import { countedLayout, panelsOfUnit } from './counted-layout.ts'
import type { LayoutPost, RunEnd } from './layout.ts'

const sheetOf = <T>(id: string): T => shippedSheets.find((one) => one.id === id) as T
const system = sheetOf<LongitudinalSheet>('w-beam-midspan-31')
const unit = (id: string, atInches: number | null = null): RunEnd => ({
  ...{ kind: 'unit', sheet: sheetOf<EndSheet>(id), atInches },
})
const unknown = (posts: number, panels: number): RunEnd => ({
  ...{ kind: 'unknown', because: 'not looked at', atInches: null, posts, panels },
})

const placeOf = ({ alongInches, unit, ownNumber, kind, state }: LayoutPost) => [
  alongInches,
  unit,
  ownNumber,
  kind,
  state,
]

/** Worked by hand from the pieces of the sheets: posts of the run every 75 in, the bridge end's first 18.75 in beyond its rail. */
describe('what stands between a bridge and a trailing anchor', () => {
  const hardware = { system, first: unit('bridge-end-31', 100), second: unit('trailing-anchor-31') }
  const panels = [150, 75, 75, 150, 187.5]
  const bridgePosts = [0, 18.75, 37.5, 56.25, 75, 93.75, 131.25, 168.75, 206.25, 243.75]
  const standing = [
    ...bridgePosts.map((at, i) => [at, 'first', i + 1, 'transition post', 'regular']),
    ...[318.75, 393.75, 468.75].map((at) => [at, 'run', null, 'standard post', 'regular']),
    [543.75, 'second', 2, 'breakaway wood post', 'regular'],
    [618.75, 'second', 1, 'breakaway wood post', 'regular'],
  ]

  it('stands at its spacings where its posts were counted and come out, measured from post 1', () => {
    const layout = countedLayout(hardware, { panels, posts: 15 })
    expect(layout.asCounted).toBe('posts placed')
    expect(layout.posts.map(placeOf)).toEqual(standing)
    expect(layout.postOneAtInches).toBe(118.75)
    expect([layout.countsFromInches, layout.countsToInches]).toEqual([-18.75, 168.75])
  })

  it('is numbered from 1 at the first end, each post as its sheet has it, and no rail of it is doubled', () => {
    const { posts, panels: hung } = countedLayout(hardware, { panels, posts: 15 })
    expect(posts.map(({ number }) => number)).toEqual(posts.map((_, i) => i + 1))
    expect(hung.map(({ number }) => number)).toEqual([1, 2, 3, 4, 5])
    expect(hung.some(({ nested }) => nested)).toBe(false)
    const terminal = sheetOf<EndSheet>('flared-terminal-31')
    const first = { kind: 'unit', sheet: terminal, atInches: null } as const
    const flared = countedLayout({ ...hardware, first }, { panels: [150, 150, 112.5, 150, 150, 112.5], posts: 12 })
    // Its posts 1 and 2 are hinged and carry no block.
    expect(flared.posts.slice(0, 7).map(({ kind, block }) => [kind, block])).toEqual([
      ...terminal.posts.map(({ kind, block }) => [kind, block]),
      [system.post.kind, system.post.block],
    ])
    expect(flared.posts.slice(0, 4).map(({ block }) => block)).toEqual([false, false, true, true])
  })

  it('stands where its posts were measured, each post of an end by the nearest within half a space', () => {
    // The second post of the run stands 2 in and the anchor's last but one 37 in further on than their sheets have them.
    const measured = [...bridgePosts, 318.75, 395.75, 468.75, 580.75, 618.75]
    const layout = countedLayout(hardware, { panels, posts: measured })
    expect(layout.asCounted).toBe('posts placed')
    const moved = standing.map(([at, ...rest]) => [at === 393.75 ? 395.75 : at === 543.75 ? 580.75 : at, ...rest])
    expect(layout.posts.map(placeOf)).toEqual(moved)
    expect([layout.postOneAtInches, layout.countsToInches]).toEqual([118.75, 168.75])
  })

  it('gives a measured post to no end from half a space on', () => {
    // Half a space is 37.5 in: the anchor's second post belongs at 543.75 in.
    for (const [at, unit] of [
      [543.75 + 37.4375, 'second'],
      [543.75 + 37.5, 'run'],
      [543.75 - 37.4375, 'second'],
      [543.75 - 37.5, 'run'],
    ] as const) {
      const layout = countedLayout(hardware, { panels, posts: [...bridgePosts, 318.75, 393.75, 468.75, at, 618.75] })
      expect(layout.posts[13]!.unit, `${at}`).toBe(unit)
    }
  })

  it('gives each post of an end the nearest that no other has, and what stands beside it to the run', () => {
    // Two stand near where the anchor's second post belongs, 20 in before it and 10 in beyond; and so the other way round.
    for (const [near, owner] of [
      [[523.75, 553.75], 1],
      [[533.75, 563.75], 0],
    ] as const) {
      const posts = [...bridgePosts, 318.75, 393.75, 468.75, ...near, 618.75]
      const units = countedLayout(hardware, { panels, posts }).posts.map(({ unit, ownNumber }) => [unit, ownNumber])
      expect(units[13 + owner]).toEqual(['second', 2])
      expect(units[13 + 1 - owner]).toEqual(['run', null])
    }
    // One post alone stands midway between the places of the bridge end's eighth and ninth: it is the eighth, the ninth is
    // missing (the tenth stands half a space from there, where it belongs).
    const posts = [0, 18.75, 37.5, 56.25, 75, 93.75, 131.25, 187.5, 243.75, 318.75, 393.75, 468.75, 543.75, 618.75]
    const layout = countedLayout(hardware, { panels, posts })
    expect(layout.posts[7]).toMatchObject({ unit: 'first', ownNumber: 8 })
    expect(layout.posts[8]).toMatchObject({ unit: 'first', ownNumber: 10 })
    expect(layout.posts[9]).toMatchObject({ unit: 'run', ownNumber: null })
  })

  it('hangs each panel where the one before it ends, with the part of the run that it belongs to', () => {
    const { panels: hanging, splices, score } = countedLayout(hardware, { panels, posts: 15 })
    expect(hanging.map((one) => [one.fromInches, one.toInches, one.inches, one.unit, one.role, one.ownNumber])).toEqual(
      [
        [-18.75, 131.25, 150, 'first', 'own', 1],
        [131.25, 206.25, 75, 'first', 'own', 2],
        [206.25, 281.25, 75, 'first', 'own', 3],
        [281.25, 431.25, 150, 'run', 'hung', null],
        [431.25, 618.75, 187.5, 'second', 'adapter', 1],
      ],
    )
    expect(splices.map((one) => [one.number, one.alongInches, one.position, one.unit])).toEqual([
      [1, 131.25, 'post', 'first'],
      [2, 206.25, 'post', 'first'],
      [3, 281.25, 'midspan', 'run'],
      [4, 431.25, 'midspan', 'run'],
    ])
    expect(score.railInches).toBe(637.5)
  })

  it('has no panel of the second end where all that hangs belongs to the first', () => {
    const { panels: hanging } = countedLayout(hardware, { panels: [150, 75], posts: 3 })
    expect(hanging.map(({ unit, ownNumber }) => [unit, ownNumber])).toEqual([
      ['first', 1],
      ['first', 2],
    ])
  })
})

describe('posts that were only counted', () => {
  const hardware = { system, first: unknown(0, 0), second: unknown(0, 0) }

  it('are spread over the rail, to the nearest sixteenth of an inch, where they do not come out at the spacing', () => {
    // 150 in between eight posts: 21 3/7 in, in sixteenths 342 6/7, 685 5/7, 1028 4/7, 1371 3/7, 1714 2/7, 2057 1/7.
    const { first, second } = { first: unit('trailing-anchor-31'), second: unit('trailing-anchor-31') }
    const layout = countedLayout({ system, first, second }, { panels: [150], posts: 8 })
    expect(layout.asCounted).toBe('posts only counted')
    const inSixteenths = [0, 343, 686, 1029, 1371, 1714, 2057, 2400]
    expect(layout.posts.map(({ alongInches }) => alongInches * 16)).toEqual(inSixteenths)
    expect(layout.posts.map(({ unit, ownNumber }) => [unit, ownNumber])).toEqual([
      ['first', 1],
      ['first', 2],
      ...Array.from({ length: 4 }, () => ['run', null]),
      ['second', 2],
      ['second', 1],
    ])
  })

  it('are given to the first end first, where there are fewer than both ends have', () => {
    const ends = { first: unit('trailing-anchor-31'), second: unit('flared-terminal-31') }
    const unitsOf = (posts: number) =>
      countedLayout({ system, ...ends }, { panels: [150, 150], posts }).posts.map(({ unit, ownNumber }) => [
        unit,
        ownNumber,
      ])
    // The terminal has six: of three the outermost one is left to it, the number of which counts from its own end.
    expect(unitsOf(3)).toEqual([
      ['first', 1],
      ['first', 2],
      ['second', 1],
    ])
    expect(unitsOf(2)).toEqual([
      ['first', 1],
      ['first', 2],
    ])
  })

  it('go on at the spacing beyond an end where nobody looked, as far as the rail or as they were counted', () => {
    const places = (panels: readonly number[], posts: number) => {
      const { posts: standing, asCounted } = countedLayout(
        { ...hardware, first: unit('trailing-anchor-31') },
        { panels, posts },
      )
      return [asCounted, standing.map(({ alongInches }) => alongInches)]
    }
    // Rail of 187.5 in: posts at 0 and 75 in of the anchor, and at 150 in; a post beyond the rail stands where another panel begins.
    expect(places([187.5], 3)).toEqual(['posts placed', [0, 75, 150]])
    expect(places([187.5], 2)).toEqual(['posts only counted', [0, 187.5]])
    expect(places([187.5], 4)).toEqual(['posts placed', [0, 75, 150, 225]])
    expect(places([187.5, 150], 3)).toEqual(['posts only counted', [0, 168.75, 337.5]])
  })

  it('stand before a second end in the same way, the first of them where the count puts it', () => {
    // The anchor's posts at 262.5 and 337.5 in of the rail; 75 in apart before them.
    const { posts, asCounted, postOneAtInches } = countedLayout(
      { ...hardware, second: unit('trailing-anchor-31') },
      { panels: [150, 187.5], posts: 5 },
    )
    expect(asCounted).toBe('posts placed')
    expect(posts.map(placeOf)).toEqual([
      ...[0, 75, 150].map((at) => [at, 'run', null, 'standard post', 'regular']),
      [225, 'second', 2, 'breakaway wood post', 'regular'],
      [300, 'second', 1, 'breakaway wood post', 'regular'],
    ])
    expect(postOneAtInches).toBe(37.5)
    // With one post less the rail before the anchor has a place where one is wanted: which of them is there nobody knows.
    const fewer = countedLayout({ ...hardware, second: unit('trailing-anchor-31') }, { panels: [150, 187.5], posts: 3 })
    expect(fewer.asCounted).toBe('posts only counted')
  })

  it('belong to an end that no sheet fits as far as it was said, and to the run between', () => {
    const ends = { first: unknown(2, 1), second: unknown(1, 1) }
    const { posts, panels, asCounted } = countedLayout({ system, ...ends }, { panels: [150, 150, 75], posts: 6 })
    expect(asCounted).toBe('posts placed')
    expect(posts.every(({ block }) => block)).toBe(true)
    expect(posts.map(placeOf)).toEqual([
      ...[0, 75].map((at) => [at, 'first', null, 'standing post', 'standing']),
      ...[150, 225, 300].map((at) => [at, 'run', null, 'standard post', 'regular']),
      [375, 'second', null, 'standing post', 'standing'],
    ])
    expect(panels.map(({ unit, role, ownNumber }) => [unit, role, ownNumber])).toEqual([
      ['first', 'hung', null],
      ['run', 'hung', null],
      ['second', 'hung', null],
    ])
  })
})

it('what was measured begins at post 1 where nothing is known of the first end', () => {
  const first: RunEnd = { ...unknown(0, 0), atInches: 100 }
  const layout = countedLayout(
    { system, first, second: unit('trailing-anchor-31') },
    { panels: [150], posts: [0, 75, 150] },
  )
  expect(layout.postOneAtInches).toBe(100)
  expect(layout.posts.map(({ alongInches, unit }) => [alongInches, unit])).toEqual([
    [0, 'run'],
    [75, 'second'],
    [150, 'second'],
  ])
  expect(layout.panels.map(({ fromInches, toInches }) => [fromInches, toInches])).toEqual([[0, 150]])
})

it('a unit hangs its own panels, and one adapter where it takes one', () => {
  const hung = ['bridge-end-31', 'trailing-anchor-31', 'flared-terminal-31', 'buried-end-31'].map((id) =>
    panelsOfUnit(sheetOf<EndSheet>(id)),
  )
  expect(hung).toEqual([3, 1, 3, 3])
})
