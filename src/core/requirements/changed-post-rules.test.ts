import { describe, expect, it } from 'vitest'
import { shippedSheets } from '../../sheets/shipped-sheets.ts'
import type { SourceSaying } from '../hardware/hardware-saying.ts'
import type { LongitudinalSheet, MovedPostRule } from '../hardware/hardware-sheet.ts'
import type { CurbBefore, Obstruction } from '../layout/layout.ts'
import { solveLayout } from '../layout/solve-layout.ts'
import { deriveRequirements } from './derive-requirements.ts'
import type { Requirement } from './requirement.ts'

const shipped = (id: string) => shippedSheets.find((one) => one.id === id) as LongitudinalSheet

/** The requirements of a run between two standing splices 125 ft apart; at 27 3/4 in its posts stand at multiples of 75 in. */
function requirementsOf(
  system: LongitudinalSheet,
  position: 'post' | 'midspan',
  obstructions: readonly Obstruction[],
  curb?: CurbBefore,
): readonly Requirement[] {
  const first = { kind: 'standing splice', atInches: 0, position } as const
  const second = { kind: 'standing splice', atInches: 1500, position } as const
  const solved = solveLayout({
    ...{ system, first, second, obstructions, curb },
    ...{ need: null, stock: null, reduced: [], standing: null, mayExtendInches: 0 },
  })
  if (!solved.ok) throw new Error(solved.error.kind)
  for (const layout of solved.value.runs)
    return deriveRequirements({
      layout,
      system,
      first,
      second,
      work: null,
      letting: null,
      speed: null,
      flare: null,
      opposingReaches: null,
      curb,
    })
  throw new Error('no layout')
}

const pipe = (at: number): Obstruction => ({ name: 'a pipe', fromInches: at - 5, toInches: at + 5 })

/** Public answers 1028 and 1265: a new slot of 3/4 x 2 1/2 in, cut smoothly, spray galvanizing; the old one stays. */
describe('a post that the layout moves', () => {
  const requirements = requirementsOf(shipped('w-beam-post-splice-27-3-4'), 'post', [pipe(450)])
  const moved = requirements.filter(({ topic }) => topic === 'new-slot')

  it('is required to have a new slot, and no other post is', () => {
    expect(moved).toHaveLength(1)
    expect(moved[0]!.must).toEqual({ kind: 'must', of: 'new-slot', slot: { widthInches: 0.75, lengthInches: 2.5 } })
    expect(moved[0]!.confirmation).toBe('common practice')
    expect(
      requirementsOf(shipped('w-beam-post-splice-27-3-4'), 'post', []).some(({ topic }) => topic === 'new-slot'),
    ).toBe(false)
  })

  it('is asked for no slot where the sheet does not say how one is made', () => {
    const system = shipped('w-beam-post-splice-27-3-4')
    for (const newSlot of [undefined, 'notStated'] as const) {
      const movedPost = { ...(system.movedPost as MovedPostRule), newSlot }
      const asked = requirementsOf({ ...system, movedPost }, 'post', [pipe(450)])
      expect(asked.some(({ topic }) => topic === 'new-slot')).toBe(false)
      expect(asked.some(({ topic }) => topic === 'spacing')).toBe(true)
    }
  })

  it('and neither of its spaces, nor the rail beside it, says otherwise', () => {
    const { number } = moved[0]!.place
    const spaces = requirements.filter(({ topic }) => topic === 'spacing')
    for (const { place, remedy } of spaces) {
      const isBeside = place.number === number || place.number === number - 1
      const slots = { kind: 'rail slots', newSlotAt: isBeside ? number : null }
      expect(remedy).toEqual({ kind: 'if it fails', of: 'spacing', slots })
    }
    const sound = requirements.filter(({ topic }) => topic === 'rail-sound')
    expect(sound.length).toBeGreaterThan(0)
    for (const { must } of sound)
      expect(must).toMatchObject({ own: expect.stringContaining('and the new slot of a moved post') })
  })
})

/** Report results 357 and 395: behind a 6-in curb plain rail tore at the splice in the gap, 37 ft 6 in doubled passed. */
describe('a post left out', () => {
  // at 31 in, from a midspan splice at 0, posts stand at 37.5 + 75 n: 712.5 is one
  const topicsWith = (curb?: CurbBefore) => requirementsOf(shipped('w-beam-midspan-31'), 'midspan', [pipe(712.5)], curb)

  it('where nobody said whether there is a curb is required to be before none', () => {
    const curb = topicsWith().filter(({ topic }) => topic === 'curb')
    expect(curb).toHaveLength(1)
    expect(curb[0]).toMatchObject({ confirmation: 'published', place: { kind: 'space' } })
    // What holds at a curb is from result 395, and not from where the gap itself is.
    expect((curb[0]!.source as SourceSaying).edition).toMatchObject({ of: { own: expect.stringContaining('395') } })
    expect(curb[0]!.remedy).toMatchObject({ doubledInches: 37.5 * 12 })
    expect(topicsWith().some(({ topic }) => topic === 'nested')).toBe(false)
  })

  it('without a curb asks neither', () => {
    expect(topicsWith('none').filter(({ topic }) => topic === 'curb' || topic === 'nested')).toEqual([])
  })

  it('at a curb lies under 37 ft 6 in of doubled rail', () => {
    const nested = topicsWith('present').filter(({ topic }) => topic === 'nested')
    const along = nested.map(({ place }) => place.alongInches)
    expect(along.length).toBeGreaterThan(0)
    expect((nested[0]!.source as SourceSaying).edition).toMatchObject({ of: { own: expect.stringContaining('395') } })
    expect(topicsWith('present').some(({ topic }) => topic === 'curb')).toBe(false)
  })
})
