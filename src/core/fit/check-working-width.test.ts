import { describe, expect, it } from 'vitest'
import { check, facts, inches, sheet } from '../../../test/fixtures/fit-facts.ts'
import type { LongitudinalSheet } from '../hardware/hardware-sheet.ts'
import { exactLength } from '../units/exact-length.ts'
import type { FitFacts } from './fit.ts'
import type { FitCheck } from './fit-check.ts'

const room = (clear: number, changes: Partial<FitFacts>): FitCheck =>
  check('room behind rail', { nearest: { ...facts.nearest!, clear }, ...changes })

const closer = (spacing: 'half' | 'quarter') => ({ kind: 'space posts closer', spacing })

const older = { work: 'new', letting: '2017-12-31' } as const
const newer = { work: 'new', letting: '2018-01-01' } as const

describe('room behind the rail, where NCHRP 350 is enough', () => {
  // public answer 346: 49, 44 and 35 in at standard, half and quarter spacing
  it.each([
    [49, 'full', 'meets', null],
    // 56 ft 3 in of it
    [48.99, 'full', 'fails', { ...closer('half'), overInches: 675, needsInches: 44, half: null }],
    [44, 'full', 'fails', closer('half')],
    [
      43.99,
      'full',
      'fails',
      { ...closer('quarter'), overInches: 675, needsInches: 35, half: { inches: 150, at: 'both ends' } },
    ],
    [34, 'full', 'fails', { kind: 'move rail away', by: inches(15), hazard: 'the pier' }],
    [44, 'half', 'meets', null],
    [43.99, 'half', 'fails', closer('quarter')],
    [35, 'quarter', 'meets', null],
    [34.99, 'quarter', 'fails', { kind: 'move rail away' }],
  ] as const)('with %d in at %s spacing: %s', (clear, spacing, verdict, change) => {
    for (const work of [older, { work: 'standing', letting: null } as const]) {
      const found = room(inches(clear), { spacing, ...work })
      expect(found).toMatchObject({ verdict, confirmation: 'published', limit: { standard: 'NCHRP 350' } })
      if (change === null) expect(found.smallestChange).toBeNull()
      else expect(found.smallestChange).toMatchObject(change)
    }
  })
})

describe('room behind the rail, where MASH governs', () => {
  // 60 in: what a state asks for (public answer 42013); reduced spacing under MASH prints no working width
  it.each([
    [60, 'meets', null],
    [59.99, 'fails', { kind: 'move rail away', by: inches(0.01) }],
    [45, 'fails', { kind: 'move rail away', by: inches(15) }],
  ] as const)('with %d in at full spacing: %s, and no reduced spacing is offered', (clear, verdict, change) => {
    for (const work of [newer, { work: null, letting: null }, { work: 'new', letting: null }] as const) {
      const found = room(inches(clear), work)
      expect(found).toMatchObject({ verdict, confirmation: 'common practice', limit: { standard: 'MASH' } })
      if (change === null) expect(found.smallestChange).toBeNull()
      else expect(found.smallestChange).toMatchObject(change)
    }
  })

  it.each(['half', 'quarter'] as const)('at %s spacing cannot be told, however much there is', (spacing) => {
    for (const clear of [30, 50, 500])
      expect(room(inches(clear), { spacing, ...newer })).toMatchObject({
        verdict: 'unread',
        limit: { kind: 'working width not stated', spacing, standard: 'MASH' },
        source: {
          edition: { of: { own: expect.stringContaining('half spacing passed only with blocks 10 in tall') } },
        },
      })
  })

  it('cannot be told of a system that was never tested to it', () => {
    const system = sheet('w-beam-post-splice-27-3-4') as LongitudinalSheet
    expect(room(inches(100), { system, ...newer }).verdict).toBe('unread')
    expect(room(inches(48), { system, ...older })).toMatchObject({ verdict: 'meets', confirmation: 'from memory' })
  })
})

describe('a row of an older sheet, which names no standard', () => {
  const full = sheet('w-beam-midspan-31') as LongitudinalSheet
  const [first] = full.workingWidths
  const rowAlone = (standards: readonly ('MASH' | 'NCHRP 350')[]): LongitudinalSheet => ({
    ...full,
    criteria: full.criteria.filter(({ standard }) => standards.includes(standard)),
    workingWidths: [{ ...first!, standard: undefined, inches: 50 }],
  })

  it('is that of the only standard to which the sheet was tested, else of none', () => {
    const clear = exactLength(50, 'in')
    expect(room(clear, { system: rowAlone(['MASH']), ...newer }).verdict).toBe('meets')
    expect(room(clear, { system: rowAlone(['NCHRP 350']), ...newer }).verdict).toBe('unread')
    expect(room(clear, { system: rowAlone(['MASH', 'NCHRP 350']), ...newer }).verdict).toBe('unread')
  })
})
