import { describe, expect, it } from 'vitest'
import { shippedSheets } from '../../sheets/shipped-sheets.ts'
import type { EndSheet, LongitudinalSheet } from '../hardware/hardware-sheet.ts'
import { countedLayout } from '../layout/counted-layout.ts'
import type { CountedPieces, Layout, LayoutRequest, RunEnd } from '../layout/layout.ts'
import { solveLayout } from '../layout/solve-layout.ts'
import { wantedLength, wantedPosition, wantedSpace } from './as-counted.ts'
import { deriveRequirements } from './derive-requirements.ts'
import type { RunModel } from './run-model.ts'

const sheet = (id: string) => shippedSheets.find((one) => one.id === id)!
const system = (id: string) => sheet(id) as LongitudinalSheet
const unit = (id: string): RunEnd => ({ kind: 'unit', sheet: sheet(id) as EndSheet, atInches: null })

const midspan = system('w-beam-midspan-31')
const atPosts = system('w-beam-post-splice-27-3-4')
const pairs = [
  [midspan, 'flared-terminal-31', 'trailing-anchor-31'],
  [midspan, 'tangent-terminal-31', 'flared-terminal-31'],
  [midspan, 'buried-end-31', 'trailing-anchor-31'],
  [atPosts, 'flared-terminal-27-3-4', 'trailing-anchor-27-3-4'],
] as const

/** The first lawful runs of some lengths between two ends. */
const lawful = pairs.flatMap(([system, first, second]) =>
  [600, 1500].flatMap((toInches) => {
    const ends = { first: unit(first), second: unit(second) }
    const request: LayoutRequest = {
      ...{ system, ...ends, need: { fromInches: 0, toInches }, stock: null, obstructions: [], reduced: [] },
      ...{ standing: null, mayExtendInches: 600 },
    }
    const solved = solveLayout(request)
    if (!solved.ok) throw new Error(solved.error.kind)
    // Not all of them: the search looks for the next one only when it is asked.
    const [one, two, three, four] = solved.value.runs
    return [one, two, three, four]
      .filter((layout) => layout !== undefined)
      .map((layout) => ({ hardware: { system, ...ends }, layout }))
  }),
)

const lengthsOf = ({ panels }: Layout) => panels.map(({ inches }) => inches)
const placesOf = ({ posts }: Layout) => posts.map(({ alongInches }) => alongInches)

describe('a lawful run that is counted', () => {
  it('has every piece where the search has it, whether its posts are counted or measured', () => {
    expect(lawful.length).toBeGreaterThan(20)
    for (const { hardware, layout } of lawful) {
      for (const posts of [layout.posts.length, placesOf(layout)]) {
        const counted = countedLayout(hardware, { panels: lengthsOf(layout), posts })
        expect(counted.asCounted).toBe('posts placed')
        expect(counted.posts).toEqual(layout.posts)
        expect(counted.splices).toEqual(layout.splices)
        expect(counted.panels.map(({ role: _, ...panel }) => panel)).toEqual(
          layout.panels.map(({ role: _, ...panel }) => panel),
        )
        expect([counted.countsFromInches, counted.countsToInches]).toEqual([
          layout.countsFromInches,
          layout.countsToInches,
        ])
      }
    }
  })

  it('is asked what it is asked as it was laid out, and its count shows no fault', () => {
    for (const { hardware, layout } of lawful) {
      const pieces = { panels: lengthsOf(layout), posts: placesOf(layout) }
      const asked = (layout: Layout, counted: RunModel['counted']) =>
        deriveRequirements({
          ...{ ...hardware, layout, counted, flare: null, work: 'standing', letting: null, speed: null },
          ...{ opposingReaches: null },
        })
      const laidOut = asked(layout, undefined)
      for (const { look } of laidOut) expect(look).not.toHaveProperty('counted')
      const counted = asked(countedLayout(hardware, pieces), { ...pieces, need: null, isLocated: true })
      expect(counted.filter(({ id }) => id !== 'run/need').map(({ id, must }) => [id, must])).toEqual(
        laidOut.map(({ id, must }) => [id, must]),
      )
      for (const { id, look } of counted) {
        if (look.kind === 'choose' && look.counted !== undefined)
          expect([id, look.choices.find((one) => one.id === look.counted)?.right]).toEqual([id, true])
        if (look.kind === 'measure' && look.counted !== undefined)
          expect([id, look.counted]).toEqual([id, look.limits.nominal])
      }
    }
  })
})

const ends = { system: midspan, first: unit('flared-terminal-31'), second: unit('trailing-anchor-31') }
const terminal = sheet('flared-terminal-31') as EndSheet
const rail = [150, 150, 112.5, 150, 150, 112.5]

describe('posts that do not come out', () => {
  it('stand nowhere in particular while they were only counted', () => {
    const counted = countedLayout(ends, { panels: rail, posts: 11 })
    expect(counted.asCounted).toBe('posts only counted')
    expect(counted.posts).toHaveLength(11)
    expect(counted.posts.map(({ unit, ownNumber }) => `${unit} ${ownNumber}`)).toContain('first 6')
  })

  it('are known one by one once they are measured: the missing one leaves its number', () => {
    const places = Array.from({ length: 12 }, (_, i) => i * 75).filter((_, i) => i !== 3)
    const { posts, asCounted } = countedLayout(ends, { panels: rail, posts: places })
    expect(asCounted).toBe('posts placed')
    expect(posts.filter(({ unit }) => unit === 'first').map(({ ownNumber }) => ownNumber)).toEqual([1, 2, 3, 5, 6])
    expect(posts.filter(({ unit }) => unit === 'second').map(({ ownNumber }) => ownNumber)).toEqual([2, 1])
  })

  it('among those of a unit, one too many is a post of the run', () => {
    const places = [0, 75, 110, 150, 225, 300, 375, 450, 525, 600, 675, 750, 825]
    const { posts } = countedLayout(ends, { panels: rail, posts: places })
    expect(posts[2]).toMatchObject({ alongInches: 110, unit: 'run', ownNumber: null })
    expect(posts[3]).toMatchObject({ alongInches: 150, unit: 'first', ownNumber: 3 })
  })
})

describe('what the sheets ask for of a piece that is not as it has to be', () => {
  const modelOf = (panels: readonly number[], posts: CountedPieces['posts']): RunModel => ({
    ...{
      ...ends,
      layout: countedLayout(ends, { panels, posts }),
      counted: { panels, posts, need: null, isLocated: true },
    },
    ...{ flare: null, work: 'standing', letting: null, speed: null, opposingReaches: null },
  })
  const measured = modelOf(
    rail,
    Array.from({ length: 12 }, (_, i) => i * 75),
  )

  it('is the spacing that two posts of the run come nearest to: 75 in, half of it or a quarter', () => {
    const run = measured.layout.posts.find(({ unit }) => unit === 'run')!
    const space = (apart: number) => wantedSpace(measured, run, { ...run, alongInches: run.alongInches + apart })
    // Half way between 75 and 37.5 lies 56.25, between 37.5 and 18.75 lies 28.125: there the closer one is asked for.
    expect([130, 75, 57, 56.25, 56, 37.5, 29, 28.125, 28, 10].map((apart) => space(apart).wanted)).toEqual([
      ...[75, 75, 75, 37.5, 37.5, 37.5, 37.5, 18.75, 18.75, 18.75],
    ])
    expect(space(40).counted).toBe(40)
    expect(wantedSpace(modelOf(rail, 12), run, { ...run, alongInches: run.alongInches + 40 }).counted).toBeNull()
  })

  it('is of a unit the space of its sheet, whatever is between its posts', () => {
    const [one, two] = measured.layout.posts
    expect(wantedSpace(measured, one!, { ...two!, alongInches: 60 })).toEqual({ wanted: 75, counted: 60 })
    // Nearest to 40 is half the spacing of the run, which is nothing to the unit.
    expect(wantedSpace(measured, one!, { ...two!, alongInches: 40 })).toEqual({ wanted: 75, counted: 40 })
  })

  it('is of a unit the space between these two of its posts, at either end, and of the run beyond its last one', () => {
    const posts = [0, 60, 150, 225, 300, 375].map((along, i) => ({ ...terminal.posts[i]!, along }))
    const model = { ...measured, first: { kind: 'unit', sheet: { ...terminal, posts }, atInches: null } } as const
    const { posts: placed } = model.layout
    const wanted = (i: number) => wantedSpace(model, placed[i]!, { ...placed[i + 1]!, alongInches: i * 75 + 20 }).wanted
    expect([0, 1, 2, 5, 10].map(wanted)).toEqual([60, 90, 75, 18.75, 75])
  })

  it('is the nearest length that may be there; of two as near the one that leaves the run as long as it is', () => {
    const wanted = (panels: readonly number[]) => {
      const model = modelOf(panels, 12)
      return model.layout.panels.map((panel) => wantedLength(model, panel).wanted)
    }
    // 150 is as far from the adapter of 112.5 as from that of 187.5.
    expect(wanted([150, 150, 150, 150, 150, 150])).toEqual([150, 150, 112.5, 150, 150, 187.5])
    // A panel of the terminal's own is of one length, whatever hangs there and whatever else is nearer.
    expect(wanted([187.5, 75, 112.5, 150, 150, 112.5])).toEqual([150, 150, 112.5, 150, 150, 112.5])
    // 75 may lie beside an end alone.
    expect(wanted([150, 150, 112.5, 75, 150, 75, 112.5])).toEqual([150, 150, 112.5, 75, 150, 75, 112.5])
    expect(wanted([150, 150, 112.5, 150, 75, 150, 112.5])).toEqual([150, 150, 112.5, 150, 112.5, 150, 112.5])
  })
})

it('a panel that was counted has its length among the answers, as a wrong one, whatever it is', () => {
  const panels = [150, 150, 112.5, 130, 150, 112.5]
  const layout = countedLayout(ends, { panels, posts: 12 })
  const found = deriveRequirements({
    ...{ ...ends, layout, counted: { panels, posts: 12, need: null, isLocated: true }, flare: null },
    ...{ work: 'standing', letting: null, speed: null, opposingReaches: null },
  })
  const look = found.find(({ id }) => id === 'panel-4/panel-length')?.look
  if (look?.kind !== 'choose') throw new Error('not chosen')
  expect(look.counted).toBe('in-130')
  expect(look.choices.filter(({ id }) => id === 'in-130').map(({ right }) => right)).toEqual([false])
  // 150 is 20 in away, 112 1/2 is 17 1/2.
  expect(look.choices.filter(({ right }) => right).map(({ id }) => id)).toEqual(['in-112.5'])
})

describe('a splice of a run whose posts were measured', () => {
  const positions = (posts: readonly number[], panels = rail) => {
    const layout = countedLayout(ends, { panels, posts })
    const model: RunModel = {
      ...{ ...ends, layout, counted: { panels, posts, need: null, isLocated: true } },
      ...{ flare: null, work: 'standing', letting: null, speed: null, opposingReaches: null },
    }
    return layout.splices.map((splice) => wantedPosition(model, splice))
  }
  // The splices lie at 150, 300, 412.5, 562.5 and 712.5; the terminal has its own two at posts, the run midway.
  const every = Array.from({ length: 12 }, (_, i) => i * 75)
  const moved = (by: number, ...which: readonly number[]) => every.map((at, i) => (which.includes(i) ? at + by : at))

  it('belongs at a post in the terminal and midway in the run, and is seen where it lies', () => {
    expect(positions(every)).toEqual([
      ...[0, 1].map(() => ({ wanted: 'post', counted: 'post' })),
      ...[0, 1, 2].map(() => ({ wanted: 'midspan', counted: 'midspan' })),
    ])
  })

  it('is elsewhere where the posts beside it stand as far apart as they should, and not midway', () => {
    // The posts at 525 and 600 stand 5 in nearer to the first end.
    expect(positions(moved(-5, 7, 8))[3]).toEqual({ wanted: 'midspan', counted: 'elsewhere' })
  })

  it('says nothing where no post stands before it', () => {
    const first: RunEnd = { kind: 'unknown', because: 'not looked at', atInches: null, posts: 0, panels: 0 }
    const panels = [22.5, 150, 112.5]
    const layout = countedLayout({ ...ends, first }, { panels, posts: 4 })
    const model: RunModel = {
      ...{ ...ends, first, layout, counted: { panels, posts: 4, need: null, isLocated: true } },
      ...{ flare: null, work: 'standing', letting: null, speed: null, opposingReaches: null },
    }
    // The anchor's posts are 75 in apart and end the rail of 285 in; two more at full spacing begin at 60.
    expect(layout.posts.map(({ alongInches }) => alongInches)).toEqual([0, 75, 150, 225])
    expect(layout.splices.map(({ alongInches }) => alongInches)).toEqual([-37.5, 112.5])
    expect(layout.splices.map((splice) => wantedPosition(model, splice).counted)).toEqual([null, 'midspan'])
  })

  it('says nothing where the posts beside it do not stand as they should, or none stands beyond it', () => {
    expect(positions(moved(10, 7))[3]).toEqual({ wanted: 'midspan', counted: null })
    expect(positions(every.slice(0, 9), [150, 150, 112.5, 150, 150])[3]).toEqual({
      wanted: 'midspan',
      counted: 'midspan',
    })
    expect(positions(every.slice(0, 8), [150, 150, 112.5, 150, 150])[3]).toEqual({ wanted: 'midspan', counted: null })
  })

  it('belongs between the posts of a unit whose own panels end there, at either end', () => {
    const sheet = {
      ...terminal,
      panels: { ...terminal.panels, own: [112.5, 187.5].map((inches) => ({ ...terminal.panels.own[0]!, inches })) },
    }
    const unequal = { kind: 'unit', sheet, atInches: null } as const
    const wanted = (of: typeof ends, panels: readonly number[]) => {
      const layout = countedLayout(of, { panels, posts: every })
      const notSaid = { flare: null, work: 'standing', letting: null, speed: null, opposingReaches: null } as const
      return layout.splices.map((splice) => wantedPosition({ ...of, layout, ...notSaid }, splice).wanted)
    }
    const panels = [112.5, 187.5, 112.5, 150, 150, 112.5]
    // The run's own lie midway.
    const inUnit = ['midspan', 'post', 'midspan']
    expect(wanted({ ...ends, first: unequal }, panels)).toEqual([...inUnit, 'midspan', 'midspan'])
    expect(
      wanted({ system: midspan, first: unit('trailing-anchor-31'), second: unequal }, panels.toReversed()),
    ).toEqual([...['midspan', 'midspan', ...inUnit.toReversed()]])
  })
})

describe('an end that nobody knows', () => {
  const notLooked: RunEnd = { kind: 'unknown', because: 'not looked at', atInches: null, posts: 0, panels: 0 }
  const only = (panels: CountedPieces['panels'], posts: number) =>
    countedLayout({ ...ends, second: notLooked }, { panels, posts })

  it('leaves a terminal with its own pieces, and a post right at its last splice may be counted or not', () => {
    expect(only([150, 150, 112.5], 6)).toMatchObject({ asCounted: 'posts placed', countsToInches: null })
    expect(only([150, 150, 150], 6).asCounted).toBe('posts placed')
    expect(only([150, 150, 150], 7).posts.at(-1)).toMatchObject({ alongInches: 450, unit: 'run' })
  })

  it('is the first as well as the second', () => {
    const { posts, panels } = countedLayout({ ...ends, first: notLooked }, { panels: [150, 112.5], posts: 4 })
    expect(posts.map(({ unit, ownNumber, alongInches }) => [unit, ownNumber, alongInches])).toEqual([
      ['run', null, 0],
      ['run', null, 75],
      ['second', 2, 150],
      ['second', 1, 225],
    ])
    expect(panels[0]).toMatchObject({ fromInches: -37.5, unit: 'run' })
  })

  it('has its posts standing, of which nothing is asked', () => {
    const first: RunEnd = { kind: 'unknown', because: 'no sheet fits', atInches: null, posts: 4, panels: 2 }
    const { posts, panels } = countedLayout(
      { ...ends, first },
      { panels: [150, 112.5, 150, 150, 150, 112.5], posts: 12 },
    )
    expect(posts.map(({ state }) => state === 'standing').lastIndexOf(true)).toBe(3)
    expect(panels.map(({ unit }) => unit)).toEqual(['first', 'first', 'run', 'run', 'run', 'second'])
  })
})
