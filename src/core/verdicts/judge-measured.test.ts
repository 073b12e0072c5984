import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Dimension } from '../hardware/hardware-sheet.ts'
import { exactLength, type LengthUnit, lengthIn } from '../units/exact-length.ts'
import { guardBand, judgeMeasured, probabilityWithin } from './judge-measured.ts'

const cited = { measured: '', source: 'test', confirmation: 'published' } as const
const floor: Dimension = { nominal: 'notStated', low: 27.75, high: 'notStated', unit: 'in', role: 'floor', ...cited }
const centre: Dimension = { nominal: 31, low: 30, high: 32, unit: 'in', role: 'centre', ...cited }
const ceiling: Dimension = { nominal: 'notStated', low: 'notStated', high: 4, unit: 'in', role: 'ceiling', ...cited }
const simple = { kind: 'simple' } as const
const oneNanometre = { fixed: 1, relative: 0 }

const judge = (value: number, unit: LengthUnit, limits: Dimension) =>
  judgeMeasured(exactLength(value, unit), { fixed: exactLength(3, 'mm'), relative: 0 }, limits, simple, false)?.verdict

describe('judgeMeasured under simple acceptance', () => {
  it.each([
    [27.75, 'in', floor, 'meets'],
    [704.85, 'mm', floor, 'meets'],
    [0.70485, 'm', floor, 'meets'],
    [2.3125, 'ft', floor, 'meets'],
    [27.6875, 'in', floor, 'fails'],
    [704.849999, 'mm', floor, 'fails'],
    [29, 'in', floor, 'meets'],
    [30, 'in', centre, 'meets'],
    [762, 'mm', centre, 'meets'],
    [32, 'in', centre, 'meets'],
    [812.8, 'mm', centre, 'meets'],
    [812.800001, 'mm', centre, 'fails'],
    [29.9375, 'in', centre, 'fails'],
    [4, 'in', ceiling, 'meets'],
    [101.6, 'mm', ceiling, 'meets'],
    [4.0625, 'in', ceiling, 'fails'],
  ] as const)('judges %d %s', (value, unit, limits, verdict) => {
    expect(judge(value, unit, limits)).toBe(verdict)
  })

  it('gives the same verdict in inches and in millimetres, for any sixteenth', () => {
    fc.assert(
      fc.property(fc.integer({ min: 400, max: 560 }), (n) => {
        const mm = lengthIn(exactLength(n / 16, 'in'), 'mm')
        for (const limits of [floor, centre]) expect(judge(mm, 'mm', limits)).toBe(judge(n / 16, 'in', limits))
      }),
      { seed: 27 },
    )
  })

  it('judges a limit stated in millimetres in millimetres', () => {
    const metric: Dimension = { ...floor, low: 706, unit: 'mm' }
    expect(judge(706, 'mm', metric)).toBe('meets')
    expect(judge(27.75, 'in', metric)).toBe('fails')
  })

  it('gives the margin from the nearer limit, in the unit of the limit', () => {
    expect(judgeMeasured(exactLength(31.75, 'in'), oneNanometre, centre, simple, false)?.because.margin).toBe(0.25)
    expect(judgeMeasured(exactLength(29.5, 'in'), oneNanometre, centre, simple, false)?.because.margin).toBe(-0.5)
  })

  it('has no verdict where the sheet states no limit', () => {
    expect(judgeMeasured(1, oneNanometre, { ...floor, low: 'notStated' }, simple, false)).toBeNull()
  })
})

describe('judgeMeasured with a guard band', () => {
  it('never says meets where simple acceptance says fails, nor fails where it says meets', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 25, max: 34, noNaN: true }),
        fc.double({ min: 0.001, max: 1, noNaN: true }),
        (value, u) => {
          for (const limits of [floor, centre]) {
            const nm = exactLength(value, 'in')
            const spread = { fixed: exactLength(u, 'in'), relative: 0 }
            const guarded = judgeMeasured(nm, spread, limits, { kind: 'guard band', multiple: 1 }, false)!.verdict
            const plain = judgeMeasured(nm, spread, limits, simple, false)!.verdict
            expect(guarded === 'too close' || guarded === plain).toBe(true)
          }
        },
      ),
      { seed: 28 },
    )
  })
})

describe('without any doubt', () => {
  it('the probability is 1 on and between the limits and 0 beyond either', () => {
    const both = [29, 30, 31, 32, 33].map((value) => probabilityWithin(value, 0, 30, 32))
    expect(both).toEqual([0, 1, 1, 1, 0])
    expect([29, 30, 99].map((value) => probabilityWithin(value, 0, 30, null))).toEqual([0, 1, 1])
    expect([-9, 32, 33].map((value) => probabilityWithin(value, 0, null, 32))).toEqual([1, 1, 0])
  })

  it('simple acceptance has no guard band, another rule its multiple of 2 u', () => {
    expect(guardBand({ fixed: 3, relative: 0 }, simple)).toEqual({ fixed: 0, relative: 0 })
    expect(guardBand({ fixed: 3, relative: 0.01 }, { kind: 'guard band', multiple: 1.5 })).toEqual({
      ...{ fixed: 9, relative: 0.03 },
    })
  })
})
