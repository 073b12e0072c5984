import { describe, expect, it } from 'vitest'
import { shippedSheets } from '../../sheets/shipped-sheets.ts'
import type { EndSheet, LongitudinalSheet } from '../hardware/hardware-sheet.ts'
import { countedLayout } from '../layout/counted-layout.ts'
import type { CountedPieces, LayoutRequest, RunEnd } from '../layout/layout.ts'
import { countedRequirements } from './counted-requirements.ts'
import { deriveRequirements } from './derive-requirements.ts'
import type { RunModel } from './run-model.ts'

const sheet = (id: string) => shippedSheets.find((one) => one.id === id)!
const system = sheet('w-beam-midspan-31') as LongitudinalSheet
const unit = (id: string): RunEnd => ({ kind: 'unit', sheet: sheet(id) as EndSheet, atInches: null })
const notLooked = (posts: number): RunEnd => ({
  kind: 'unknown',
  because: 'not looked at',
  atInches: null,
  posts,
  panels: 0,
})
/** Six posts, the last of them 375 in from the first; of the anchor two, 75 in apart. */
const [terminal, anchor] = [unit('flared-terminal-31'), unit('trailing-anchor-31')]

interface Ends {
  readonly first: RunEnd
  readonly second: RunEnd
}

function modelOf(ends: Ends, { panels, posts }: CountedPieces, need: LayoutRequest['need'] = null): RunModel {
  const layout = countedLayout({ system, ...ends }, { panels, posts })
  const counted = { panels, posts, need, isLocated: true }
  return {
    ...{ system, ...ends, layout, counted, flare: null, work: 'standing', letting: '2016-01-01', speed: null },
    opposingReaches: null,
  }
}

/** The rules of the record that a count is asked, by topic. */
function asked(
  ends: Ends,
  pieces: CountedPieces,
  { need = null, postOneAtInches = 0 }: { need?: LayoutRequest['need']; postOneAtInches?: number } = {},
) {
  const model = modelOf(ends, pieces, need)
  const found = countedRequirements({ ...model, layout: { ...model.layout, postOneAtInches } }, model.counted!)
  return Object.fromEntries(found.map(({ topic, look }) => [topic, look.kind === 'record' ? look.rule : look.kind]))
}

const rail = [150, 150, 112.5, 150, 150, 112.5]

describe('posts that a count has too few of', () => {
  const missing = (first: RunEnd, second: RunEnd, panels: readonly number[], posts: number) =>
    asked({ first, second }, { panels, posts })['post-count']

  it('are told between two units: 825 in of rail are twelve posts', () => {
    // 0 to 375 and 750 to 825 belong to the units, and between them stand those at 450, 525, 600 and 675.
    expect(missing(terminal, anchor, rail, 12)).toBeUndefined()
    expect(missing(terminal, anchor, rail, 11)).toEqual({
      kind: 'too few pieces',
      of: 'posts',
      counted: 11,
      wanted: 12,
    })
  })

  it('are told on from a terminal, as far as the rail goes', () => {
    // Of 562.5 in the terminal has six posts to 375; those at 450 and 525 are wanted besides.
    expect(missing(terminal, notLooked(0), [150, 150, 112.5, 150], 8)).toBeUndefined()
    expect(missing(terminal, notLooked(0), [150, 150, 112.5, 150], 7)).toMatchObject({ counted: 7, wanted: 8 })
    // The same run seen from the other side of the road.
    expect(missing(notLooked(0), terminal, [150, 112.5, 150, 150], 8)).toBeUndefined()
    expect(missing(notLooked(0), terminal, [150, 112.5, 150, 150], 7)).toMatchObject({ counted: 7, wanted: 8 })
  })

  it('are as many as leave no space wider than the full one, where the rail is no whole number of them', () => {
    // 412 1/2 in between the terminal's last post at 375 and the anchor's at 787 1/2: five posts leave six spaces of 68 3/4,
    // four leave five of 82 1/2.
    const long = [150, 150, 112.5, 150, 150, 150]
    expect(missing(terminal, anchor, long, 13)).toBeUndefined()
    expect(missing(terminal, anchor, long, 12)).toMatchObject({ counted: 12, wanted: 13 })
  })

  it('are told besides those that belong to an end nobody knows', () => {
    // Of 975 in the terminal reaches to 375, the last three stand on 150, and five stand in the 450 between: 6 + 3 + 5.
    const panels = [150, 150, 112.5, 150, 150, 150, 112.5]
    expect(missing(terminal, notLooked(3), panels, 14)).toBeUndefined()
    expect(missing(terminal, notLooked(3), panels, 13)).toMatchObject({ counted: 13, wanted: 14 })
  })

  it('are at least those of the units', () => {
    expect(missing(terminal, anchor, [150, 150, 112.5], 7)).toMatchObject({ counted: 7, wanted: 8 })
  })
})

describe('what nobody said of what stands, or looked at,', () => {
  const pieces = { panels: rail, posts: 12 }
  const topics = (first: RunEnd, second: RunEnd, isLocated = true) => {
    const model = modelOf({ first, second }, pieces)
    return countedRequirements(model, { ...model.counted!, isLocated }).map(({ topic }) => topic)
  }

  it('is asked for at either end; of a run that is known from end to end nothing but what it shields', () => {
    const unfit: RunEnd = { kind: 'unknown', because: 'no sheet fits', atInches: null, posts: 2, panels: 1 }
    expect(topics(terminal, anchor)).toEqual(['need'])
    expect(topics(terminal, anchor, false)).toEqual(['need', 'location'])
    expect(topics(terminal, unfit)).toEqual(['end-hardware', 'need'])
    expect(topics(unfit, anchor)).toEqual(['end-hardware', 'need'])
    expect(topics(terminal, notLooked(2))).toEqual(['rest-of-run', 'need'])
    expect(topics(notLooked(2), anchor)).toEqual(['rest-of-run', 'need'])
  })

  it('is told of a unit that stands at a system for which its sheet is not', () => {
    const other = unit('trailing-anchor-27-3-4')
    expect(topics(terminal, other)).toContain('end-joins')
    expect(topics(other, anchor)).toContain('end-joins')
    expect(asked({ first: terminal, second: other }, pieces)['end-joins']).toMatchObject({
      kind: 'unit joins another system',
    })
  })
})

describe('panels that a count has too few of', () => {
  const missing = (first: RunEnd, second: RunEnd, panels: readonly number[]) =>
    asked({ first, second }, { panels, posts: 12 })['panel-count']

  it('are told where two units need more: the terminal three, the anchor one', () => {
    expect(missing(terminal, anchor, [150, 150, 112.5, 112.5])).toBeUndefined()
    expect(missing(terminal, anchor, [150, 150, 112.5])).toEqual({
      kind: 'too few pieces',
      of: 'panels',
      counted: 3,
      wanted: 4,
    })
  })

  it('are not made up for by those of an end that nobody knows', () => {
    const unknown: RunEnd = { kind: 'unknown', because: 'no sheet fits', atInches: null, posts: 2, panels: 2 }
    expect(missing(unknown, terminal, [150, 150, 112.5, 150, 150])).toBeUndefined()
    // Two of four are of the unknown end.
    expect(missing(unknown, terminal, [150, 150, 150, 150])).toMatchObject({ counted: 2, wanted: 3 })
  })
})

describe('the hardware of the run itself', () => {
  const isAsked = (first: RunEnd, second: RunEnd, { panels, posts }: CountedPieces) =>
    deriveRequirements(modelOf({ first, second }, { panels, posts })).some(({ id }) => id === 'run/criteria')

  it('is asked of nobody who looked at a terminal alone', () => {
    const alone = { panels: [150, 150, 112.5], posts: 6 }
    expect(isAsked(terminal, notLooked(0), alone)).toBe(false)
    expect(isAsked(notLooked(0), terminal, { ...alone, panels: alone.panels.toReversed() })).toBe(false)
    // One panel of the run, or one post of it, is enough.
    expect(isAsked(terminal, notLooked(0), { panels: [150, 150, 112.5, 150], posts: 6 })).toBe(true)
    expect(isAsked(terminal, notLooked(0), { ...alone, posts: [0, 75, 150, 225, 300, 375, 450] })).toBe(true)
  })

  it('is asked where both ends were looked at, though nothing of it stands between them', () => {
    const between = { panels: [150, 150, 112.5, 112.5], posts: 8 }
    expect(isAsked(terminal, anchor, between)).toBe(true)
    const unfit: RunEnd = { kind: 'unknown', because: 'no sheet fits', atInches: null, posts: 2, panels: 1 }
    expect(isAsked(terminal, unfit, between)).toBe(true)
  })
})

describe('an end that nobody knows', () => {
  it('is asked nothing, at either end; what is beside it is', () => {
    const unknown: RunEnd = { kind: 'unknown', because: 'no sheet fits', atInches: null, posts: 2, panels: 2 }
    const panels = (first: RunEnd, second: RunEnd, lengths: readonly number[]) =>
      deriveRequirements(modelOf({ first, second }, { panels: lengths, posts: 12 })).flatMap(({ topic, place }) =>
        topic === 'panel-length' ? [place.number] : [],
      )
    expect(panels(unknown, anchor, [150, 150, 150, 150, 112.5])).toEqual([3, 4, 5])
    expect(panels(terminal, unknown, [150, 150, 112.5, 150, 150, 150])).toEqual([1, 2, 3, 4])
  })

  it('leaves the space beside it to be asked, between a post of the run and one of its own', () => {
    const unknown: RunEnd = { kind: 'unknown', because: 'no sheet fits', atInches: null, posts: 2, panels: 2 }
    const spaces = (first: RunEnd, second: RunEnd, lengths: readonly number[], posts: number) =>
      deriveRequirements(modelOf({ first, second }, { panels: lengths, posts })).flatMap(({ topic, place }) =>
        topic === 'spacing' ? [place.number] : [],
      )
    // Two posts of the unknown end, two of the anchor, seven spaces between eight posts: all but the one within it.
    expect(spaces(unknown, anchor, [150, 150, 112.5, 112.5], 8)).toEqual([2, 3, 4, 5, 6, 7])
    // Six of the terminal at the first end, two of the unknown one at the second.
    expect(spaces(terminal, unknown, [150, 150, 112.5, 150, 112.5], 10)).toEqual([1, 2, 3, 4, 5, 6, 7, 8])
  })
})

describe('what a run has to shield', () => {
  const short = (need: LayoutRequest['need']) =>
    asked({ first: terminal, second: anchor }, { panels: rail, posts: 12 }, { need, postOneAtInches: 1000 }).need

  it('is compared with where its rail counts, both from the datum: what is missing, at each end', () => {
    const { countsFromInches: from, countsToInches: to } = countedLayout(
      { system, first: terminal, second: anchor },
      { panels: rail, posts: 12 },
    )
    const rule = (shortAtFirst: number, shortAtSecond: number) => ({ kind: 'need of run', shortAtFirst, shortAtSecond })
    expect(short({ fromInches: 1000 + from!, toInches: 1000 + to! })).toEqual(rule(0, 0))
    expect(short({ fromInches: 1000 + from! - 7, toInches: 1000 + to! + 3 })).toEqual(rule(7, 3))
    expect(short({ fromInches: 1000 + from! + 7, toInches: 1000 + to! - 3 })).toEqual(rule(0, 0))
  })

  it('is not compared at an end that nobody knows, nor where nobody said it', () => {
    const need = { fromInches: 0, toInches: 500 }
    const pieces = { panels: [150, 150, 112.5, 150], posts: 8 }
    expect(asked({ first: terminal, second: notLooked(0) }, pieces, { need }).need).toEqual({
      kind: 'not said',
      what: 'need',
    })
    expect(short(null)).toEqual({ kind: 'not said', what: 'need' })
  })
})
