import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { shippedSheets } from '../../sheets/shipped-sheets.ts'
import type { EndSheet, LongitudinalSheet } from '../hardware/hardware-sheet.ts'
import { nameOf } from '../hardware/sheet-text.ts'
import type { Layout, LayoutRequest, Obstruction, RunEnd } from './layout.ts'
import type { Refusal } from './refusal.ts'
import { solveLayout } from './solve-layout.ts'

const sheet = (id: string) => shippedSheets.find((one) => one.id === id)!
const unit = (id: string, atInches: number | null = null): RunEnd => ({
  kind: 'unit',
  sheet: sheet(id) as EndSheet,
  atInches,
})

const at31 = { system: 'w-beam-midspan-31', first: 'flared-terminal-31', second: 'trailing-anchor-31' }
const at27 = { system: 'w-beam-post-splice-27-3-4', first: 'flared-terminal-27-3-4', second: 'trailing-anchor-27-3-4' }

function request(
  ids: typeof at31,
  need: readonly [number, number],
  changes: Partial<LayoutRequest> = {},
): LayoutRequest {
  return {
    system: sheet(ids.system) as LongitudinalSheet,
    first: unit(ids.first),
    second: unit(ids.second),
    need: { fromInches: need[0], toInches: need[1] },
    stock: null,
    obstructions: [],
    reduced: [],
    standing: null,
    mayExtendInches: 600,
    ...changes,
  }
}

function solve(asked: LayoutRequest, most = 1): { layouts: Layout[]; refused: readonly Refusal[] } {
  const solved = solveLayout(asked)
  if (!solved.ok) throw new Error(solved.error.kind)
  const layouts: Layout[] = []
  for (const layout of solved.value.runs) if (layouts.push(layout) === most) break
  return { layouts, refused: solved.value.refused() }
}

const best = (asked: LayoutRequest): Layout => solve(asked).layouts[0]!
const culvert = (fromInches: number, toInches: number): Obstruction => ({ name: 'the culvert', fromInches, toInches })

describe('what cannot be searched at all', () => {
  const problem = (changes: Partial<LayoutRequest>, ids = at31) => {
    const solved = solveLayout(request(ids, [0, 1000], changes))
    return solved.ok ? null : solved.error
  }
  const splice = (atInches: number): RunEnd => ({ kind: 'standing splice', atInches, position: 'midspan' })

  it('is a unit of another system, at either end', () => {
    const other = { ...at31, system: at27.system }
    expect(problem({ second: unit(at27.second) }, other)).toMatchObject({
      kind: 'unit does not join',
      joins: [at31.system],
    })
    expect(problem({ first: unit(at27.first) }, other)).toMatchObject({ kind: 'unit does not join' })
    expect(problem({ first: unit(at27.first), second: unit(at27.second) }, other)).toBeNull()
  })

  it('is a bridge end of which nobody says where it is', () => {
    expect(problem({ first: unit('bridge-end-31') })).toEqual({ kind: 'bridge position missing', end: 'first' })
    expect(problem({ second: unit('bridge-end-31') })).toEqual({ kind: 'bridge position missing', end: 'second' })
    expect(problem({ second: unit('bridge-end-31', 1500) })).toBeNull()
  })

  it('is a run of which one end can move, and nobody says what it has to shield', () => {
    const missing = { kind: 'need missing' }
    expect(problem({ need: null })).toEqual(missing)
    expect(problem({ need: null, first: splice(0) })).toEqual(missing)
    expect(problem({ need: null, second: splice(1500) })).toEqual(missing)
    expect(problem({ need: null, first: splice(0), second: splice(1500) })).toBeNull()
  })

  it('is a need that ends before it begins', () => {
    const need = { fromInches: 100, toInches: 99.9375 }
    expect(problem({ need })).toEqual({ kind: 'need reversed', ...need })
    expect(problem({ need: { fromInches: 100, toInches: 100 } })).toBeNull()
  })
})

describe('of runs that are as good', () => {
  // At 27 3/4 in 1,520 in have to be covered and counted, and posts come out at 1,575: 55 in to slide.
  const need = [1000, 1920] as const

  it('the first is the one that begins to count nearest to where the need begins', () => {
    const first = best(request(at27, need, { mayExtendInches: 75 }))
    expect([first.score.railInches, first.postOneAtInches + first.countsFromInches!]).toEqual([1575, 1000])
    // Post 1 would stand at 850: where something is, it begins as late before that as it can.
    for (let from = 796; from < 850; from += 3) {
      const obstructions = [culvert(from, 851)]
      expect(best(request(at27, need, { mayExtendInches: 75, obstructions })).postOneAtInches).toBe(from)
    }
  })

  it('those are given that leave out another post, though the rest is the same', () => {
    // Three panels of 300 in and one of 75, first or last. Post 1 lies from 795 to 850. The post at 750 from it is in the culvert where it lies beyond 839, that at 825 before 840.
    const low = sheet(at27.system) as LongitudinalSheet
    const omissions = [{ ...low.omissions[0]!, most: 1, specialPostsEachSide: 0, nestedInches: 0 }]
    const system = { ...low, omissions, movedPost: 'notStated' } as const
    const stock = [300, 75].map((inches) => ({ inches, count: null }))
    const { layouts } = solve(
      request(at27, need, { system, stock, mayExtendInches: 75, obstructions: [culvert(1589, 1665)] }),
      200,
    )
    const omitted = layouts.map((one) => one.omitted.map(({ alongInches }) => alongInches).join())
    expect(new Set(omitted)).toEqual(new Set(['750', '825']))
  })
})

describe('where a splice may lie', () => {
  const standing = (atInches: number, position: 'post' | 'midspan'): RunEnd => ({
    kind: 'standing splice',
    atInches,
    position,
  })
  const only = (...lengths: readonly number[]) => lengths.map((inches) => ({ inches, count: null }))

  it('is midway between two posts, and at each half space where spaces are divided', () => {
    const ends = { first: standing(0, 'midspan'), second: standing(1500, 'midspan'), need: null, stock: only(187.5) }
    expect(solve(request(at31, [0, 0], ends)).layouts).toEqual([])
    const reduced = [{ fromInches: 0, toInches: 1500, spacing: 'half', nested: false }] as const
    const [layout] = solve(request(at31, [0, 0], { ...ends, reduced })).layouts
    expect(layout!.panels.map(({ inches }) => inches)).toEqual(Array(8).fill(187.5))
  })

  it('is not at a post that was left out, where the rule says so; that is told', () => {
    const low = sheet(at27.system) as LongitudinalSheet
    const of = (spliceOnOmittedPost: boolean): LongitudinalSheet => ({
      ...{ ...low, movedPost: 'notStated' },
      omissions: [{ ...low.omissions[0]!, specialPostsEachSide: 0, nestedInches: 0, spliceOnOmittedPost }],
    })
    // Panels of 300 alone from a splice at 0, or from the terminal's at 450, so that one would lie at 1,500 or 1,650.
    for (const [first, second, at] of [
      [standing(0, 'post'), standing(3000, 'post'), 1500],
      [unit(at27.first, 0), standing(3150, 'post'), 1650],
    ] as const) {
      const asked = (system: LongitudinalSheet) =>
        solve(
          request(at27, [0, 0], {
            ...{ system, first, second, need: null, stock: only(300) },
            obstructions: [culvert(at - 5, at + 5)],
          }),
        )
      expect(asked(of(true)).layouts).toHaveLength(1)
      expect(asked(of(false))).toEqual({
        layouts: [],
        refused: [
          ...(first.kind === 'unit' ? asked(of(true)).refused : []),
          { kind: 'splice on omitted post', obstructions: ['the culvert'] },
        ],
      })
    }
  })

  it('is counted from the last post of a unit, wherever that stands', () => {
    const plain = sheet(at27.first) as EndSheet
    const odd: EndSheet = {
      ...plain,
      posts: plain.posts.map((post, i) => (i === 6 ? { ...post, along: 440 } : post)),
      panels: { ...plain.panels, own: plain.panels.own.map((own, i) => (i === 2 ? { ...own, inches: 140 } : own)) },
    }
    const ends = { first: { kind: 'unit', sheet: odd, atInches: 0 }, second: unit(at27.second, 1490) } as const
    const layout = best(request(at27, [0, 0], { ...ends, need: null }))
    expect(layout.panels.slice(3, -1).map(({ fromInches }) => fromInches)).toEqual([440, 740, 1040])
  })

  it('is told of a panel that hangs otherwise by its number, those of the terminal counted', () => {
    const hung = (first: RunEnd, postOneAtInches: number, second: number, ...panels: readonly number[]) =>
      solve(
        request(at31, [0, 0], {
          ...{ first, second: standing(second, 'midspan'), need: null },
          standing: { postOneAtInches, panels, postsDriven: 0 },
        }),
      ).refused.filter(({ kind }) => kind === 'hung splice')
    const from = standing(0, 'midspan')
    expect(hung(from, -37.5, 3000, 150, 150)).toEqual([])
    expect(hung(from, -37.5, 3000, 112.5)).toEqual([{ kind: 'hung splice', panel: 1 }])
    expect(hung(from, -37.5, 3000, 150, 112.5)).toEqual([{ kind: 'hung splice', panel: 2 }])
    expect(hung(unit(at31.first, 0), 0, 3037.5, 150, 150, 112.5, 150, 112.5)).toEqual([
      { kind: 'hung splice', panel: 5 },
    ])
  })
})

describe('panels that are in stock', () => {
  it('have to be those that join a unit: joined by another it is laid out, and without any not at all', () => {
    const stock = (...lengths: readonly number[]) => lengths.map((inches) => ({ inches, count: null }))
    const { layouts, refused } = solve(request(at31, [0, 1000], { stock: stock(150, 187.5, 300) }))
    expect(layouts[0]!.panels[2]!.inches).toBe(187.5)
    expect(refused).toContainEqual({ kind: 'not in stock', panel: 112.5 })
    expect(solve(request(at31, [0, 1000], { stock: stock(150, 300) })).layouts).toEqual([])
  })

  it('have to do for both adapters where two units are joined by the same', () => {
    const asked = (count: number) => {
      const stock = [...[150, 300].map((inches) => ({ inches, count: null })), { inches: 112.5, count }]
      const first = unit('trailing-anchor-31')
      return solve(request(at31, [0, 1000], { first, second: first, stock })).layouts.length
    }
    expect([asked(0), asked(1), asked(2)]).toEqual([0, 0, 1])
  })

  it('are told where they do not suffice, also where both ends can move, or the second alone stands', () => {
    const fits = (changes: Partial<LayoutRequest>, ids = at27, need: readonly [number, number] = [0, 1000]) =>
      solve(request(ids, need, { mayExtendInches: 37.5, ...changes })).refused.filter(
        ({ kind }) => kind === 'no panels fit',
      )
    expect(fits({})).toEqual([])
    // 1,000 in and what does not count at both ends are 1,600, posts come out at 1,650; the terminal has 450 of it, the
    // anchor 150.
    expect(fits({ stock: [{ inches: 300, count: 1 }] })).toEqual([
      { kind: 'no panels fit', between: 1050, lengths: [300] },
    ])
    // The tangent terminal's panels end 37 1/2 in before the splice.
    const second: RunEnd = { kind: 'standing splice', atInches: 600, position: 'post' }
    expect(fits({ first: unit('tangent-terminal-31'), second }, at31, [150, 500])).toMatchObject([{ between: 37.5 }])
  })

  it('tell nothing of where splices may lie by lengths that the system does not have', () => {
    const first: RunEnd = { kind: 'standing splice', atInches: 0, position: 'post' }
    const ends = { first, second: { ...first, atInches: 1010 }, need: null }
    const stock = [150, 300, 130].map((inches) => ({ inches, count: null }))
    expect(solve(request(at27, [0, 0], { ...ends, stock })).refused).toContainEqual({
      ...{ kind: 'ends do not meet', between: 1010, nearestShorter: 975, nearestLonger: 1012.5 },
    })
  })
})

describe('solveLayout at 31 in, splices midway between posts', () => {
  it('joins the flared terminal by a 9 ft 4 1/2 in or a 15 ft 7 1/2 in panel, and by no other (facts 6 and 7)', () => {
    const joining = new Set(solve(request(at31, [0, 1000]), 200).layouts.map((layout) => layout.panels[2]!.inches))
    expect([...joining].sort((a, b) => a - b)).toEqual([112.5, 187.5])
  })

  it('says on which post the splice would fall when the run is joined by a standard panel', () => {
    expect(solve(request(at31, [0, 1000])).refused).toContainEqual(
      expect.objectContaining({ kind: 'splice position', panel: 150, at: 'post', post: 7, wanted: 'midspan' }),
    )
  })

  it('puts every splice of the run midway between two posts', () => {
    const { splices, posts } = best(request(at31, [0, 1000]))
    const own = splices.filter(({ unit }) => unit === 'run')
    expect(own.length).toBeGreaterThan(2)
    for (const splice of own) {
      const after = posts.find(({ alongInches }) => alongInches > splice.alongInches)!
      expect(after.alongInches - splice.alongInches).toBe(37.5)
      expect(splice.position).toBe('midspan')
    }
  })

  it('leaves out the one post that cannot stand in a narrow culvert, with ordinary posts beside it', () => {
    const layout = best(request(at31, [0, 1000], { obstructions: [culvert(500, 585)] }))
    expect(layout.omitted.map(({ rule }) => rule)).toEqual(['single'])
    expect(layout.posts.every(({ state }) => state === 'regular')).toBe(true)
  })

  // report results 357 and 395: 37 ft 6 in doubled at a curb
  it('doubles 37 ft 6 in of rail over an omitted post at a curb, and says nothing of a long span there', () => {
    const first: RunEnd = { kind: 'standing splice', atInches: 0, position: 'midspan' }
    const second: RunEnd = { kind: 'standing splice', atInches: 1500, position: 'midspan' }
    const gap = (posts: number, curb: 'present' | 'none') =>
      solve(
        request(at31, [0, 0], {
          first,
          second,
          need: null,
          curb,
          obstructions: [culvert(700, 725 + 75 * (posts - 1))],
        }),
      )
    const [atCurb] = gap(1, 'present').layouts
    const out = atCurb!.omitted[0]!.alongInches
    const doubled = atCurb!.panels.filter(({ nested }) => nested)
    expect(doubled[0]!.fromInches).toBeLessThanOrEqual(out - 225)
    expect(doubled.at(-1)!.toInches).toBeGreaterThanOrEqual(out + 225)
    expect(atCurb!.panels.filter(({ toInches }) => toInches <= out - 225).every(({ nested }) => !nested)).toBe(true)
    expect(gap(1, 'none').layouts[0]!.panels.some(({ nested }) => nested)).toBe(false)
    expect(gap(2, 'none').layouts).toHaveLength(1)
    expect(gap(2, 'present').layouts).toEqual([])
    expect(gap(2, 'present').refused).toContainEqual(
      expect.objectContaining({ kind: 'not stated at a curb', rule: 'long span' }),
    )
  })

  it('spans a culvert that takes two posts with three special posts on each side', () => {
    const layout = best(request(at31, [0, 1500], { obstructions: [culvert(700, 860)] }))
    expect(layout.omitted).toHaveLength(2)
    expect(layout.posts.filter(({ state }) => state === 'special')).toHaveLength(6)
    expect(layout.score.changedPosts).toBe(8)
  })

  it('refuses a gap wider than the sheet spans and says how many posts it would take', () => {
    const { layouts, refused } = solve(request(at31, [0, 1500], { obstructions: [culvert(600, 1000)] }))
    expect(layouts).toEqual([])
    expect(refused).toContainEqual(
      expect.objectContaining({ kind: 'too many posts obstructed', obstructions: ['the culvert'], posts: 5, most: 3 }),
    )
  })

  it('divides the spaces where half spacing rules, and says so of the posts', () => {
    const layout = best(
      request(at31, [0, 1000], { reduced: [{ fromInches: 400, toInches: 700, spacing: 'half', nested: false }] }),
    )
    const spaces = layout.posts.slice(1).map((post, i) => post.alongInches - layout.posts[i]!.alongInches)
    expect(spaces.filter((space) => space === 37.5).length * 37.5).toBeGreaterThanOrEqual(300)
    expect(new Set(spaces)).toEqual(new Set([75, 37.5]))
  })

  it('puts 12 ft 6 in of half spacing between full and quarter spacing', () => {
    const layout = best(
      request(at31, [0, 2000], { reduced: [{ fromInches: 900, toInches: 1050, spacing: 'quarter', nested: false }] }),
    )
    const spaces = layout.posts.slice(1).map((post, i) => post.alongInches - layout.posts[i]!.alongInches)
    const firstHalf = spaces.indexOf(37.5)
    expect(spaces.slice(firstHalf, firstHalf + 5)).toEqual([37.5, 37.5, 37.5, 37.5, 18.75])
  })

  it('uses no more panels of a length than are in stock', () => {
    const stock = [150, 112.5, 187.5].map((inches) => ({ inches, count: null as number | null }))
    const layout = best(request(at31, [0, 1500], { stock: [...stock, { inches: 300, count: 1 }] }))
    expect(layout.panels.filter(({ inches }) => inches === 300)).toHaveLength(1)
  })

  it('goes on from what hangs and from the posts driven when a pipe is met', () => {
    const free = best(request(at31, [0, 1500]))
    const hung = free.panels.slice(0, 4).map(({ inches }) => inches)
    const pipe = {
      name: 'a pipe',
      fromInches: free.postOneAtInches + 900 - 20,
      toInches: free.postOneAtInches + 900 + 20,
    }
    const again = best(
      request(at31, [0, 1500], {
        obstructions: [pipe],
        standing: { postOneAtInches: free.postOneAtInches, panels: hung, postsDriven: 9 },
      }),
    )
    expect(again.postOneAtInches).toBe(free.postOneAtInches)
    expect(again.panels.slice(0, 4).map(({ inches }) => inches)).toEqual(hung)
    expect(again.panels.map(({ role }) => role === 'hung')).toEqual(again.panels.map((_, i) => i === 3))
    expect(again.omitted).toEqual([expect.objectContaining({ alongInches: 900, obstructions: ['a pipe'] })])
  })

  it('says of the terminal the first panel that hangs wrong, be it the very first', () => {
    const wrong = (...panels: readonly number[]) =>
      solve(request(at31, [0, 1000], { standing: { postOneAtInches: -150, panels, postsDriven: 0 } })).refused.flatMap(
        (one) => (one.kind === 'hung panel differs' ? [[one.panel, one.hung, one.expected]] : []),
      )
    // Of both ways to join it.
    expect(wrong(187.5)).toEqual([[1, 187.5, 150]])
    expect(wrong(187.5, 300)).toEqual([[1, 187.5, 150]])
    expect(wrong(150, 300, 75)).toEqual([[2, 300, 150]])
  })

  it('says which panel hangs wrong when the terminal was begun with another', () => {
    const standing = { postOneAtInches: -150, panels: [150, 150, 150], postsDriven: 0 }
    expect(solve(request(at31, [0, 1000], { standing })).refused).toContainEqual({
      kind: 'hung panel differs',
      ...{ panel: 3, hung: 150, expected: 112.5, unit: nameOf(sheet('flared-terminal-31')) },
    })
  })

  it('says which panel of the run hangs with its splice on a post', () => {
    const standing = { postOneAtInches: -150, panels: [150, 150, 112.5, 112.5], postsDriven: 0 }
    expect(solve(request(at31, [0, 1000], { standing })).refused).toContainEqual({ kind: 'hung splice', panel: 4 })
  })

  it('converts a standing post splice to midspan by one odd panel', () => {
    const layout = best(
      request(at31, [300, 1500], { first: { kind: 'standing splice', atInches: 0, position: 'post' } }),
    )
    expect(layout.panels.slice(0, -1).filter(({ role }) => role === 'converting')).toHaveLength(1)
    expect(layout.splices.at(-1)?.position).toBe('midspan')
  })

  it('says by how much two fixed ends miss each other', () => {
    const first: RunEnd = { kind: 'standing splice', atInches: 0, position: 'midspan' }
    const { layouts, refused } = solve(
      request(at31, [0, 1000], { first, second: { kind: 'standing splice', atInches: 1010, position: 'midspan' } }),
    )
    expect(layouts).toEqual([])
    expect(refused).toContainEqual(expect.objectContaining({ kind: 'ends do not meet', between: 1010 }))
  })

  const between = (toInches: number, position: 'midspan' | 'post', stock: LayoutRequest['stock'] = null) =>
    solve(
      request(at31, [0, 0], {
        need: null,
        first: { kind: 'standing splice', atInches: 0, position: 'midspan' },
        second: { kind: 'standing splice', atInches: toInches, position },
        stock,
      }),
      1000,
    )

  it('lays 25 ft between two standing splices in its three orders, and tells nothing refused of it', () => {
    // Panels of 25 ft, 12 ft 6 in and, at an end alone, 6 ft 3 in.
    const { layouts, refused } = between(300, 'midspan')
    expect(layouts.map(({ panels }) => panels.map(({ inches }) => inches))).toEqual([[300], [150, 150], [75, 150, 75]])
    expect(refused).toEqual([])
  })

  it('says which panels there are where none fits between two ends, or not enough are in stock', () => {
    // Shorter than the shortest panel.
    expect(between(37.5, 'post')).toEqual({
      layouts: [],
      refused: [{ kind: 'no panels fit', between: 37.5, lengths: [300, 187.5, 150, 112.5, 75] }],
    })
    expect(between(600, 'midspan', [{ inches: 300, count: 1 }])).toEqual({
      layouts: [],
      refused: [{ kind: 'no panels fit', between: 600, lengths: [300] }],
    })
    expect(between(600, 'midspan', [{ inches: 300, count: 2 }]).refused).toEqual([])
  })

  it('counts from the panels of an end unit what is left for panels, whichever end it is', () => {
    // Two panels of 12 ft 6 in and one of 9 ft 4 1/2 in, 412 1/2 in, leave 37 1/2 in of 450.
    const terminal = (atInches: number) => unit('flared-terminal-31', atInches)
    const splice = (atInches: number): RunEnd => ({ kind: 'standing splice', atInches, position: 'post' })
    for (const [first, second] of [
      [terminal(0), splice(450)],
      [splice(0), terminal(450)],
    ] as const)
      expect(solve(request(at31, [0, 0], { need: null, first, second })).refused).toContainEqual(
        expect.objectContaining({ kind: 'no panels fit', between: 37.5 }),
      )
  })
})

describe('solveLayout at 27 3/4 in, splices at posts', () => {
  const standing = (atInches: number): RunEnd => ({ kind: 'standing splice', atInches, position: 'post' })
  const fixed = { first: standing(0), second: standing(3000), need: null }

  it('joins the flared terminal without an adapter panel and uses standard panels throughout (fact 7)', () => {
    const { layouts, refused } = solve(request(at27, [0, 1000]), 50)
    for (const layout of layouts) {
      expect(layout.panels.every(({ role }) => role === 'own' || role === 'standard')).toBe(true)
      expect(layout.splices.every(({ position }) => position === 'post')).toBe(true)
    }
    expect(refused).toContainEqual(
      expect.objectContaining({ kind: 'splice position', panel: 112.5, at: 'midspan', post: 8, wanted: 'post' }),
    )
  })

  // public answer 241: three 6 x 8 in by 6 ft breakaway wood posts beside the tested span, at this height as at 31 in
  it('spans a culvert with three breakaway wood posts on each side and 100 ft of doubled rail', () => {
    for (const posts of [1, 2, 3]) {
      // posts at multiples of 75, too deep in the culvert to be moved out of it
      const layout = best(request(at27, [0, 0], { ...fixed, obstructions: [culvert(1485, 1440 + 75 * posts)] }))
      expect(layout.omitted.map(({ rule }) => rule)).toEqual(Array(posts).fill('nested span'))
      const [first, last] = [layout.omitted[0]!.alongInches, layout.omitted.at(-1)!.alongInches]
      const special = layout.posts.filter(({ state }) => state === 'special')
      expect(special.map(({ alongInches }) => alongInches)).toEqual([
        ...[first - 225, first - 150, first - 75],
        ...[last + 75, last + 150, last + 225],
      ])
      expect(new Set(special.map(({ kind }) => kind))).toEqual(
        new Set(['breakaway wood post with holes for a {27 3/4 in} rail']),
      )
      const doubled = layout.panels.filter(({ nested }) => nested)
      const middle = (first + last) / 2
      expect(doubled[0]!.fromInches).toBeLessThanOrEqual(middle - 600)
      expect(doubled.at(-1)!.toInches).toBeGreaterThanOrEqual(middle + 600)
    }
  })

  it('does not stand a special post where another obstruction is', () => {
    // 1500 and 1575 are in the culvert; 1425, 1350 and 1275 would be special
    const pipeAt = (at: number) => ({ name: 'a pipe', fromInches: at - 5, toInches: at + 5 })
    const asked = (at: number) => request(at27, [0, 0], { ...fixed, obstructions: [culvert(1430, 1580), pipeAt(at)] })
    expect(best(asked(1230)).omitted).toHaveLength(2)
    expect(best(asked(1200)).posts.filter(({ state }) => state === 'moved')).toHaveLength(1)
    expect(solve(asked(1275)).layouts).toEqual([])
  })

  it('moves one post by up to 1 ft rather than leave it out', () => {
    const second: RunEnd = { kind: 'standing splice', atInches: 1500, position: 'post' }
    const layout = best(
      request(at27, [600, 1400], { second, obstructions: [{ name: 'a pipe', fromInches: 1045, toInches: 1056 }] }),
    )
    expect(layout.posts.filter(({ state }) => state === 'moved')).toHaveLength(1)
    expect(layout.omitted).toEqual([])
  })
})

describe('laws of the layout', () => {
  const ids = fc.constantFrom(at31, at27)
  const need = fc
    .tuple(fc.integer({ min: -200, max: 200 }), fc.integer({ min: 300, max: 4000 }))
    .map(([from, length]) => [from, from + length] as const)

  it('sums to its panels, covers the need and keeps the order of the objective, for any need', () => {
    fc.assert(
      fc.property(ids, need, (which, stretch) => {
        const { layouts } = solve(request(which, stretch), 4)
        expect(layouts.length).toBeGreaterThan(0)
        for (const layout of layouts) {
          const rail = layout.panels.reduce((sum, { inches }) => sum + inches, 0)
          expect(rail).toBe(layout.score.railInches)
          expect(layout.postOneAtInches + layout.countsFromInches!).toBeLessThanOrEqual(stretch[0])
          expect(layout.postOneAtInches + layout.countsToInches!).toBeGreaterThanOrEqual(stretch[1])
        }
        const scores = layouts.map(({ score }) => [score.changedPosts, score.oddPanels, score.railInches, score.pieces])
        for (let i = 1; i < scores.length; i++) expect(compare(scores[i - 1]!, scores[i]!)).toBeLessThanOrEqual(0)
        expect(new Set(layouts.map((layout) => JSON.stringify([layout.postOneAtInches, layout.panels]))).size).toBe(
          layouts.length,
        )
      }),
      { seed: 31, numRuns: 60 },
    )
  })

  it('gives the mirrored run for a mirrored road, when both ends are alike', () => {
    fc.assert(
      fc.property(need, fc.integer({ min: 0, max: 100 }), (stretch, share) => {
        const at = stretch[0] + Math.round(((stretch[1] - stretch[0]) * share) / 100)
        const alike = { ...at31, second: 'flared-terminal-31' }
        const one = best(request(alike, stretch, { obstructions: [culvert(at, at + 30)] }))
        const other = best(request(alike, [-stretch[1], -stretch[0]], { obstructions: [culvert(-at - 30, -at)] }))
        expect(other.score).toEqual(one.score)
      }),
      { seed: 32, numRuns: 40 },
    )
  })
})

function compare(a: readonly number[], b: readonly number[]): number {
  for (const [i, value] of a.entries()) if (value !== b[i]) return value - b[i]!
  return 0
}
