import { describe, expect, it } from 'vitest'
import { shippedSheets } from '../../sheets/shipped-sheets.ts'
import type { EndSheet, LongitudinalSheet } from '../hardware/hardware-sheet.ts'
import type { LayoutRequest } from './layout.ts'
import { scoreOf } from './score.ts'
import { solveLayout } from './solve-layout.ts'

const sheetOf = <T>(id: string): T => shippedSheets.find((one) => one.id === id) as T
const unit = (id: string) => ({ kind: 'unit', sheet: sheetOf<EndSheet>(id), atInches: null }) as const
const [higher, lower] = ['w-beam-midspan-31', 'w-beam-post-splice-27-3-4'].map((id) => sheetOf<LongitudinalSheet>(id))
const something = (fromInches: number, toInches: number) => ({ name: 'something', fromInches, toInches })

const free = { stock: null, obstructions: [], reduced: [], standing: null, mayExtendInches: 600 }
const plain: LayoutRequest = {
  ...{ ...free, system: higher!, need: { fromInches: 0, toInches: 1200 } },
  ...{ first: unit('flared-terminal-31'), second: unit('trailing-anchor-31') },
}
const low: LayoutRequest = {
  ...{ ...plain, system: lower!, need: { fromInches: 0, toInches: 3000 } },
  ...{ first: unit('flared-terminal-27-3-4'), second: unit('trailing-anchor-27-3-4') },
}

/** The search adds its score up as it goes; a run that is opened again is counted from its pieces. */
describe('the score of a layout, counted from its pieces', () => {
  it.each<[string, LayoutRequest]>([
    ['a plain run', plain],
    ['a run with a gap', { ...plain, obstructions: [something(500, 600)] }],
    ['a run with a long gap and its special posts', { ...plain, obstructions: [something(500, 720)] }],
    ['a run with a moved post and a gap', { ...low, obstructions: [something(700, 712), something(1951, 2099)] }],
    [
      'a run closer spaced',
      { ...plain, reduced: [{ fromInches: 300, toInches: 600, spacing: 'half', nested: false }] },
    ],
    ['a run of short panels', { ...plain, stock: [150, 112.5, 187.5].map((inches) => ({ inches, count: null })) }],
  ])('is that of the search, for the first runs of %s', (_, request) => {
    const solved = solveLayout(request)
    if (!solved.ok) throw new Error(solved.error.kind)
    let looked = 0
    for (const { score, ...layout } of solved.value.runs) {
      expect(scoreOf(layout, request.system)).toEqual(score)
      if (++looked === 5) break
    }
    expect(looked).toBeGreaterThan(0)
  })
})
