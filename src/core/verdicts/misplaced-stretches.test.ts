import { describe, expect, it } from 'vitest'
import { misplacedStretches, type SpaceRead } from './misplaced-stretches.ts'

/**
 * Ten posts, nine spaces; worked by hand in thousandths of an inch. Space 3 lies between posts 4 and 5. A space may be
 * 1 in off, and is proven within 1/2 in.
 */
interface Space {
  readonly excess: number
  /** Either way; or from and to. */
  readonly room?: number | readonly [number, number]
  readonly limit?: number
}

function stretches(
  wrong: Readonly<Record<number, Space | number | null>>,
  { fixed = [], setOut = [125] }: { readonly fixed?: readonly number[]; readonly setOut?: readonly number[] } = {},
) {
  const spaces = Array.from({ length: 9 }, (_, i): SpaceRead | null => {
    const given = wrong[i] === undefined ? 0 : wrong[i]
    if (given === null) return null
    const { excess, room = 500, limit = 1000 } = typeof given === 'number' ? { excess: given } : given
    const isFailing = Math.abs(excess) > limit
    const [low, high] = typeof room === 'number' ? [-room, room] : room
    return { excess, room: { low, high }, limits: { low: -limit, high: limit }, setOut, isFailing }
  })
  return misplacedStretches(
    spaces,
    Array.from({ length: 10 }, (_, i) => fixed.includes(i + 1)),
  )
}

const moved = (...of: Parameters<typeof stretches>) =>
  stretches(...of)?.map(({ from, to, by, reaches }) => [from, to, by, reaches])

describe('posts that are out of place', () => {
  it('are none where every space is right, or off by no more than it may be', () => {
    expect(stretches({})).toEqual([])
    expect(stretches({ 3: 1000, 6: -1000 })).toEqual([])
  })

  it('are moved by a coarse step only where the space is then in its room, which may lie to one side', () => {
    // 1.8 in too wide: 2 in would leave it 0.2 in too narrow, and it may be 0.1 in; 2.2 in too wide likewise for 2 in.
    const coarse = { setOut: [500] }
    expect(moved({ 7: { excess: 1800, room: [-100, 500] } }, coarse)).toEqual([[9, 10, -1800, 'second end']])
    expect(moved({ 1: { excess: 1800, room: [-100, 500] } }, coarse)).toEqual([[1, 2, 1800, 'first end']])
    expect(moved({ 7: { excess: 2200, room: [-500, 100] } }, coarse)).toEqual([[9, 10, -2200, 'second end']])
    expect(moved({ 1: { excess: 2200, room: [-500, 100] } }, coarse)).toEqual([[1, 2, 2200, 'first end']])
    expect(moved({ 7: { excess: 2040, room: [-100, 500] } }, coarse)).toEqual([[9, 10, -2000, 'second end']])
  })

  it('is one post that stands too far downstream: it is moved upstream, and named by the space before it', () => {
    expect(stretches({ 3: 2000, 4: -2000 })).toEqual([
      { from: 5, to: 5, by: -2000, boundaries: [3, 4], idFrom: 3, reaches: null, with: [], unread: [] },
    ])
  })

  it('is one post that stands too far upstream: it is moved downstream', () => {
    expect(moved({ 3: -2000, 4: 2000 })).toEqual([[5, 5, 2000, null]])
  })

  it('are all between two wrong spaces', () => {
    expect(moved({ 3: 3000, 7: -3000 })).toEqual([[5, 8, -3000, null]])
  })

  it('are those up to the nearer end, which close a wide space and open a narrow one', () => {
    expect(stretches({ 7: 2000 })).toEqual([
      { from: 9, to: 10, by: -2000, boundaries: [7], idFrom: 7, reaches: 'second end', with: [], unread: [] },
    ])
    expect(stretches({ 1: 2000 })).toEqual([
      { from: 1, to: 2, by: 2000, boundaries: [1], idFrom: 1, reaches: 'first end', with: [], unread: [] },
    ])
    expect(moved({ 7: -2000 })).toEqual([[9, 10, 2000, 'second end']])
    expect(moved({ 1: -2000 })).toEqual([[1, 2, -2000, 'first end']])
  })

  it('are two neighbours where three spaces in a row are wrong, each named by the space before it', () => {
    expect(stretches({ 3: 1500, 4: 1500, 5: -3000 })).toEqual([
      { from: 5, to: 5, by: -1500, boundaries: [3, 4], idFrom: 3, reaches: null, with: [6], unread: [] },
      { from: 6, to: 6, by: -3000, boundaries: [4, 5], idFrom: 4, reaches: null, with: [5], unread: [] },
    ])
  })

  it('share what three spaces have in excess together, each as much as is left for it', () => {
    // 600 over three: 200, to the eighth nearest to 1500 - 200; then 350 over two: 175, nearest to 2750 - 175.
    expect(moved({ 3: 1500, 4: 1500, 5: -2400 })).toEqual([
      [5, 5, -1250, null],
      [6, 6, -2625, null],
    ])
    expect(moved({ 3: -1500, 4: -1500, 5: 2400 })).toEqual([
      [5, 5, 1250, null],
      [6, 6, 2625, null],
    ])
    // In fortieths: 200 for the first, 400 over two for the second.
    expect(moved({ 3: 1500, 4: 1500, 5: -2400 }, { setOut: [25] })).toEqual([
      [5, 5, -1300, null],
      [6, 6, -2600, null],
    ])
    // 1450 over three that bear 500 each: none may take less than 450, so half inches are too coarse for the first.
    const wide = (excess: number): Space => ({ excess, limit: 2300 })
    for (const turn of [1, -1]) {
      const all = { 3: wide(turn * 2400), 4: wide(turn * 2500), 5: wide(turn * -3450) }
      expect(moved(all, { setOut: [500] })![0]).toEqual([5, 5, turn * -1917, null])
    }
  })

  it('are two by themselves where two pairs of spaces are wrong', () => {
    // The second pair is 400 too wide together: 200 for each, and 3000 - 2750 = 250 is the nearest eighth.
    expect(moved({ 1: 2000, 2: -2000, 6: 3000, 7: -2600 })).toEqual([
      [3, 3, -2000, null],
      [8, 8, -2750, null],
    ])
    // 400 too wide in the first pair as well: 14 eighths are nearest to 2000 - 200. The second pair knows nothing of it.
    expect(moved({ 1: 2000, 2: -1600, 6: 3000, 7: -2600 })).toEqual([
      [3, 3, -1750, null],
      [8, 8, -2750, null],
    ])
  })
})

describe('which posts may be moved', () => {
  it('not those of a run that stands, however few they are', () => {
    expect(moved({ 1: 2000 }, { fixed: [1] })).toEqual([[3, 10, -2000, 'second end']])
    expect(moved({ 7: 2000 }, { fixed: [10] })).toEqual([[1, 8, 2000, 'first end']])
  })

  it('where the post between two wrong spaces is one of them, those on both sides', () => {
    expect(moved({ 3: 2000, 4: -2000 }, { fixed: [5] })).toEqual([
      [1, 4, 2000, 'first end'],
      [6, 10, 2000, 'second end'],
    ])
  })

  it('none where both ends stand and one space is wrong: there is no way', () => {
    expect(stretches({ 4: 2000 }, { fixed: [1, 10] })).toBeNull()
    expect(moved({ 3: 2000, 4: -2000 }, { fixed: [1, 10] })).toEqual([[5, 5, -2000, null]])
    expect(stretches({ 3: 2000, 4: -2000 }, { fixed: [1, 5, 10] })).toBeNull()
  })
})

describe('posts that stay on both sides', () => {
  const apart = [
    [1, 4, 2000, 'first end'],
    [5, 5, -2000, null],
  ]

  it('are no farther off than either space may be, so that the fewer of them are moved too', () => {
    // Together 2000 too wide, which wide limits and rooms bear, 1000 for each space, and narrow ones do not.
    const [narrow, wide] = [
      { room: 500, limit: 1000 },
      { room: 1500, limit: 3000 },
    ]
    const pair = (one: Omit<Space, 'excess'>, other: Omit<Space, 'excess'>) =>
      stretches({ 3: { excess: 4000, ...one }, 4: { excess: -2000, ...other } })!
    const places = (...of: Parameters<typeof pair>) =>
      pair(...of).map(({ from, to, by, reaches }) => [from, to, by, reaches])
    expect(places(wide, wide)).toEqual([[5, 5, -3000, null]])
    expect(places(narrow, wide)).toEqual(apart)
    expect(places(wide, narrow)).toEqual(apart)
    expect(pair(narrow, narrow).map((one) => one.with)).toEqual([[5], [4]])
  })

  it('are the more of them: fewer posts are moved', () => {
    expect(moved({ 5: 4000, 6: -2000 })).toEqual([
      [7, 7, -4000, null],
      [8, 10, -2000, 'second end'],
    ])
    expect(stretches({ 5: 4000, 6: -2000 })!.map((one) => one.with)).toEqual([[8], [7]])
  })

  it('leave no more between them than the rooms of both spaces bear together', () => {
    const within = (excess: number): Space => ({ excess, room: 200 })
    // 400 is all that two rooms of 200 bear; 401 is more.
    expect(moved({ 3: within(2000), 4: within(-1600) })).toEqual([[5, 5, -1800, null]])
    expect(moved({ 3: within(-2000), 4: within(1600) })).toEqual([[5, 5, 1800, null]])
    for (const turn of [1, -1]) {
      const second = { 6: within(turn * 2001), 7: within(turn * -1600) }
      expect(moved({ 1: turn * 2000, 2: turn * -2000, ...second })!.map(([from, to]) => [from, to])).toEqual([
        [3, 3],
        [8, 8],
        [9, 10],
      ])
      expect(moved({ 3: within(turn * 2001), 4: within(turn * -1600) })!.map(([from, to]) => [from, to])).toEqual([
        [1, 4],
        [5, 5],
      ])
    }
  })
})

describe('a space off by less than it may be', () => {
  it('is set right with the failing one beside it, since what is moved has to be proven on both sides', () => {
    // 800 too wide together: 400 for each; -1125 is the eighth nearest to 1500 - 400.
    expect(moved({ 3: 1500, 4: -700, 7: -700 })).toEqual([[5, 5, -1125, null]])
  })
})

describe('how far posts are moved', () => {
  it('is in the coarsest step that a person can set out and that lies in the room', () => {
    expect(moved({ 3: 2100, 4: -2100 }, { setOut: [500, 125] })).toEqual([[5, 5, -2000, null]])
    expect(moved({ 7: 2100 }, { setOut: [500, 125] })).toEqual([[9, 10, -2000, 'second end']])
    expect(moved({ 7: { excess: 2100, room: 50 } }, { setOut: [500, 125] })).toEqual([[9, 10, -2125, 'second end']])
    expect(moved({ 7: { excess: 2100, room: 10 } }, { setOut: [500, 125] })).toEqual([[9, 10, -2100, 'second end']])
  })
})

describe('spaces that nobody read', () => {
  it('are named where they lie beside or one beyond what is moved, and no farther', () => {
    const [one] = stretches({ 1: null, 2: null, 3: 2000, 4: -2000, 5: null, 6: null })!
    expect(one).toMatchObject({ from: 5, to: 5, unread: [2, 5] })
    const [last] = stretches({ 5: null, 6: null, 7: 2000, 8: null })!
    expect(last).toMatchObject({ from: 9, to: 10, unread: [6, 8] })
    const [first] = stretches({ 0: null, 1: 2000, 2: null, 3: null })!
    expect(first).toMatchObject({ from: 1, to: 2, unread: [0, 2] })
  })
})
