import { describe, expect, it } from 'vitest'
import { shippedSheets } from '../../sheets/shipped-sheets.ts'
import type { EndSheet, LongitudinalSheet } from '../hardware/hardware-sheet.ts'
import { countedLayout } from '../layout/counted-layout.ts'
import type { CountedPieces, LayoutRequest, RunEnd } from '../layout/layout.ts'
import { countedRequirements } from './counted-requirements.ts'
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

/** The rules of the record that a count is asked, by topic. */
function asked(
  ends: { readonly first: RunEnd; readonly second: RunEnd },
  { panels, posts }: CountedPieces,
  { need = null, postOneAtInches = 0 }: { need?: LayoutRequest['need']; postOneAtInches?: number } = {},
) {
  const layout = { ...countedLayout({ system, ...ends }, { panels, posts }), postOneAtInches }
  const counted = { panels, posts, need, isLocated: true }
  const model: RunModel = {
    ...{ system, ...ends, layout, counted, flare: null, work: 'standing', letting: '2016-01-01', speed: null },
    opposingReaches: null,
  }
  const found = countedRequirements(model, counted)
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
