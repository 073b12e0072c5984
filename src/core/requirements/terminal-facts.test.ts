import { describe, expect, it } from 'vitest'
import { shippedSheets } from '../../sheets/shipped-sheets.ts'
import type { SourceSaying } from '../hardware/hardware-saying.ts'
import type { EndSheet, LongitudinalSheet } from '../hardware/hardware-sheet.ts'
import { solveLayout } from '../layout/solve-layout.ts'
import { deriveRequirements } from './derive-requirements.ts'
import type { Requirement } from './requirement.ts'

const sheet = (id: string) => shippedSheets.find((one) => one.id === id)!

function requirementsAt(system: string, terminal: string, anchor: string): ReadonlyMap<string, Requirement> {
  const first = { kind: 'unit', sheet: sheet(terminal) as EndSheet, atInches: null } as const
  const second = { kind: 'unit', sheet: sheet(anchor) as EndSheet, atInches: null } as const
  const longitudinal = sheet(system) as LongitudinalSheet
  const solved = solveLayout({
    system: longitudinal,
    first,
    second,
    need: { fromInches: 0, toInches: 1000 },
    stock: null,
    obstructions: [],
    reduced: [],
    standing: null,
    mayExtendInches: 600,
  })
  if (!solved.ok) throw new Error(solved.error.kind)
  for (const layout of solved.value.runs) {
    const model = {
      layout,
      system: longitudinal,
      first,
      second,
      flare: null,
      work: null,
      letting: null,
      speed: null,
      opposingReaches: null,
    }
    return new Map(deriveRequirements(model).map((one) => [one.id, one]))
  }
  throw new Error('no layout')
}

const at31 = requirementsAt('w-beam-midspan-31', 'flared-terminal-31', 'trailing-anchor-31')
const at27 = requirementsAt('w-beam-post-splice-27-3-4', 'flared-terminal-27-3-4', 'trailing-anchor-27-3-4')
const both = [['31 in', at31] as const, ['27 3/4 in', at27] as const]

function limits(requirement: Requirement | undefined) {
  if (requirement?.look.kind !== 'measure') throw new Error(`${requirement?.id} is not measured`)
  const { nominal, low, high, unit, role } = requirement.look.limits
  return { nominal, low, high, unit, role }
}

function right(requirement: Requirement | undefined): string {
  if (requirement?.look.kind !== 'choose') throw new Error(`${requirement?.id} is not looked at`)
  return requirement.look.choices.find((choice) => choice.right)!.id
}

// The numbers are those of the trade's list of facts on flared cable-anchored terminals of the older generation.
describe('the twenty facts of a flared cable-anchored terminal, as requirements', () => {
  it('1: rail height at every post, a centre of 31 in or a floor of 27 3/4 in', () => {
    expect(limits(at31.get('post-4/rail-height'))).toMatchObject({ nominal: 31, role: 'centre', unit: 'in' })
    expect(limits(at27.get('post-4/rail-height'))).toMatchObject({ low: 27.75, role: 'floor', unit: 'in' })
    for (const [, all] of both)
      expect([...all.keys()].filter((id) => id.endsWith('/rail-height')).length).toBeGreaterThan(10)
  })

  it('6: at 31 in the last panel before the run is an odd one', () => {
    expect(right(at31.get('panel-3/panel-length'))).toMatch(/^in-(112\.5|187\.5)$/)
    expect(right(at31.get('splice-3/splice-position'))).toBe('midspan')
  })

  it('7: at 27 3/4 in panels are standard and splices at posts', () => {
    expect(right(at27.get('panel-3/panel-length'))).toBe('in-150')
    for (const [id, one] of at27) if (id.endsWith('/splice-position')) expect(right(one)).toBe('post')
  })

  it('15 and 16: slots and head holes are the upper set at 31 in, the lower at 27 3/4 in', () => {
    expect(at31.get('post-2/slot-set')?.must).toMatchObject({ set: 'upper' })
    expect(at27.get('post-2/slot-set')?.must).toMatchObject({ set: 'lower' })
    expect(right(at31.get('post-1/head-holes'))).toBe('upper-both')
    expect(right(at27.get('post-1/head-holes'))).toBe('lower-both')
  })

  it.each(both)('the rest alike at %s', (_, all) => {
    expect(limits(all.get('post-1/flare-offset')), '2').toMatchObject({ nominal: 48, unit: 'in' })
    for (const panel of [1, 2, 3]) expect(all.get(`panel-${panel}/straightness`)?.look.kind, '3').toBe('measure')
    expect(limits(all.get('space-1/spacing')), '4').toMatchObject({ nominal: 75 })
    expect(right(all.get('panel-1/slotted-panel')), '5').toBe('slotted')
    for (const [id, one] of all) if (id.endsWith('/lap')) expect(right(one), '8').toBe('upstream-over')
    expect(right(all.get('post-1/rail-bolt')), '9').toBe('not-bolted')
    for (const post of [1, 2]) expect(right(all.get(`post-${post}/block`)), '10').toBe('no-block')
    for (const post of [3, 4, 5, 6, 7]) expect(right(all.get(`post-${post}/block`)), '11').toBe('block')
    expect(right(all.get('post-1/hinge-side')), '12').toBe('toward-head')
    expect(right(all.get('post-2/hinge-side')), '13').toBe('away')
    for (const post of [1, 2])
      expect(limits(all.get(`post-${post}/stub-height`)), '14').toMatchObject({ high: 4, role: 'ceiling' })
    expect(all.get('post-2/slot-set')?.must, '15').toMatchObject({ side: 'upstream' })
    expect(right(all.get('post-1/bearing-plate')), '17').toBe('five-up')
    expect(right(all.get('post-1/plate-retainer')), '17').toBe('held')
    expect(limits(all.get('post-1/cable-play')), '18').toMatchObject({ high: 1, unit: 'in' })
    expect(right(all.get('panel-1/bracket-seat')), '19').toBe('seated')
    expect(right(all.get('panel-1/bracket-opening')), '19').toBe('toward-head')
    expect(all.get('first/manual')?.look.kind, '20').toBe('confirm')
  })

  it('puts first what gets covered, then walks from the first end to the second', () => {
    const order = [...at31.values()]
    const firstOpen = order.findIndex(({ hold }) => !hold)
    expect(firstOpen).toBeGreaterThan(0)
    expect(order.slice(firstOpen).some(({ hold }) => hold)).toBe(false)
    const along = order.slice(firstOpen).map(({ place }) => place.alongInches)
    expect(along).toEqual([...along].sort((a, b) => a - b))
  })

  it('names source and confirmation for every one, and no id twice', () => {
    for (const [, all] of both)
      for (const one of all.values())
        expect(JSON.stringify((one.source as SourceSaying).title.of).length, one.id).toBeGreaterThan(5)
    expect(new Set(at31.keys()).size).toBe(at31.size)
  })
})
