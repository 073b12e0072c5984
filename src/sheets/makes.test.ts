import { describe, expect, it } from 'vitest'
import type { EndSheet, HardwareSheet, LongitudinalSheet } from '../core/hardware/hardware-sheet.ts'
import { beamOf, makeOf, specialMakeOf } from '../core/hardware/make.ts'
import { landedSheets } from './landed-sheets.ts'
import { shippedSheets } from './shipped-sheets.ts'

const factsOf = (sheet: HardwareSheet): unknown =>
  sheet.kind === 'longitudinal'
    ? [makeOf(sheet.post), sheet.omissions.map(specialMakeOf)]
    : [sheet.posts.map(makeOf), [...sheet.panels.own, ...sheet.panels.adapters].map(beamOf)]

const shipped = (id: string): HardwareSheet => shippedSheets.find((sheet) => sheet.id === id)!

describe('what posts and panels are made of', () => {
  it.each(landedSheets.map((sheet) => [sheet.id, sheet] as const))(
    'is read from the names of the older edition of %s as the one on the shelf states it in fields',
    (id, older) => {
      expect(JSON.stringify(older)).not.toContain('"make"')
      expect(JSON.stringify(older)).not.toContain('"beam"')
      expect(factsOf(older)).toEqual(factsOf(shipped(id)))
    },
  )

  it('is stated by the fields alone where a sheet has them, whatever it calls the piece', () => {
    const { posts, panels } = shipped('bridge-end-31') as EndSheet
    const make = { material: 'steel', breakaway: 'hinge' } as const
    expect(makeOf({ ...posts[0]!, kind: 'breakaway wood post', make })).toEqual(make)
    const beam = { profile: 'W', gauge: 12, layers: 1 } as const
    expect(beamOf({ ...panels.own[0]!, name: 'thrie-beam panel, nested', beam })).toEqual(beam)
    const span = (shipped('w-beam-midspan-31') as LongitudinalSheet).omissions.find((one) => one.specialPostKind)!
    expect(specialMakeOf({ ...span, specialPostMake: make })).toEqual(make)
  })

  it('of the bridge end is a nested thrie-beam panel, a 10-gauge piece and plain rail', () => {
    const { panels } = shipped('bridge-end-31') as EndSheet
    expect(panels.own.map(beamOf)).toEqual([
      { profile: 'thrie', gauge: 12, layers: 2 },
      { profile: 'W to thrie', gauge: 10, layers: 1 },
      { profile: 'W', gauge: 12, layers: 1 },
    ])
  })
})
