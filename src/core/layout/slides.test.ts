import { describe, expect, it } from 'vitest'
import { shippedSheets } from '../../sheets/shipped-sheets.ts'
import type { EndSheet, LongitudinalSheet } from '../hardware/hardware-sheet.ts'
import type { LayoutRequest, LayoutScore, RunEnd } from './layout.ts'
import { solveLayout } from './solve-layout.ts'

const sheetOf = <T>(id: string): T => shippedSheets.find((one) => one.id === id) as T
const unit = (id: string, atInches: number | null): RunEnd => ({ kind: 'unit', sheet: sheetOf<EndSheet>(id), atInches })
const something = (fromInches: number, toInches: number) => ({ name: 'something', fromInches, toInches })
const closer = (fromInches: number, toInches: number) => ({
  reduced: [{ fromInches, toInches, spacing: 'half', nested: false }] as const,
})
const upTo = (toInches: number, mayExtendInches: number) => ({ need: { fromInches: 0, toInches }, mayExtendInches })

function best(request: LayoutRequest): LayoutScore | null {
  const solved = solveLayout(request)
  if (!solved.ok) throw new Error(solved.error.kind)
  for (const { score } of solved.value.runs) return score
  return null
}
const isBetter = (one: LayoutScore, than: LayoutScore): boolean => {
  const keys = ['changedPosts', 'oddPanels', 'railInches', 'pieces'] as const
  const first = keys.find((key) => one[key] !== than[key])
  return first !== undefined && one[first] < than[first]
}

const free = { stock: null, obstructions: [], reduced: [], standing: null }
const higher = {
  ...{ ...free, system: sheetOf<LongitudinalSheet>('w-beam-midspan-31'), ...upTo(900, 300) },
  ...{ terminal: 'flared-terminal-31', anchor: 'trailing-anchor-31' },
}
const lower = {
  ...{ ...free, system: sheetOf<LongitudinalSheet>('w-beam-post-splice-27-3-4') },
  ...{ ...upTo(900, 300), terminal: 'flared-terminal-27-3-4', anchor: 'trailing-anchor-27-3-4' },
}

/** The search tries few places where a run that is free may begin; here every half inch is tried. */
describe('a run with both ends free is as good as the best of all places where it may lie', () => {
  it.each<[string, typeof higher, Partial<LayoutRequest>]>([
    ['things at both ends', lower, { ...upTo(970, 90), obstructions: [something(-240, -170), something(140, 195)] }],
    [
      'things at both ends of midspan splices',
      higher,
      { ...upTo(990, 60), obstructions: [something(20, 95), something(1050, 1060)] },
    ],
    [
      'a thing at one end and one that a post is left out for',
      higher,
      { ...upTo(810, 90), obstructions: [something(-100, -35), something(320, 405)] },
    ],
    ['a part closer spaced', higher, { ...upTo(900, 60), ...closer(310, 520) }],
  ])('%s', (_, { terminal, anchor, ...plain }, changes) => {
    const at = (place: number | null): LayoutScore | null =>
      best({ ...plain, ...changes, first: unit(terminal, place), second: unit(anchor, null) })
    const found = at(null)
    let least: LayoutScore | null = null
    for (let place = -600; place <= 0; place += 0.5) {
      const one = at(place)
      if (one !== null && (least === null || isBetter(one, least))) least = one
    }
    expect(least).not.toBeNull()
    expect(found).toEqual(least)
  })
})
