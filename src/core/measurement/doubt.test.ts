import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { theirs } from '../theirs.ts'
import { doubt, doubtAt, doubtfulAround } from './doubt.ts'
import { type Instrument, instrumentOf, instruments } from './instruments.ts'

const own = { id: 'x', name: theirs('x'), source: theirs('test'), confirmation: 'published' } as const
const nothing = { uncertainty: null, resolution: null }
const mm = 1_000_000
const inch = 25_400_000
const ofLength = (unit: 'mm' | 'in', standardUncertainty: number, readTo: number): Instrument => ({
  ...own,
  standardUncertainty,
  unit,
  readTo,
})

describe('doubt', () => {
  // JCGM 100:2008, F.2.2.1: a step of d alone gives u = 0.29 d.
  it('is 0.29 of the step where the instrument has no other', () => {
    const gauge: Instrument = { ...own, standardUncertainty: 0, unit: '°', readTo: 1 }
    expect(doubt(gauge, nothing)).toEqual({ fixed: expect.closeTo(0.29 * 1e6, -4), relative: 0 })
    expect(doubt(gauge, nothing).fixed).toBeCloseTo(1e6 / Math.sqrt(12), 6)
  })

  it('takes the step that the reader states before that of the instrument, and the reader’s own doubt before both', () => {
    const level: Instrument = { ...own, standardUncertainty: 0.3, unit: '%', readTo: 100 }
    // 0.3 and 1.3856 / sqrt(12) = 0.4: together 0.5.
    expect(doubt(level, { uncertainty: null, resolution: 0.4 * Math.sqrt(12) * 1e6 }).fixed).toBeCloseTo(0.5e6, 6)
    expect(doubt(level, { uncertainty: { value: 0.7, unit: '%' }, resolution: 1 })).toEqual({
      fixed: 0.7e6,
      relative: 0,
    })
  })

  it('is 2 mm of an instrument of 1 mm read to 6 mm, sqrt(1 + 36/12), and 2 in of one in inches', () => {
    expect(doubt(ofLength('mm', 1, 6), nothing)).toEqual({ fixed: 2 * mm, relative: 0 })
    expect(doubt(ofLength('in', 1, 6), nothing)).toEqual({ fixed: 2 * inch, relative: 0 })
  })

  it('is 1.3565 mm of a tape of 1 mm read to 1/8 in: sqrt(1 + 3.175 x 3.175 / 12)', () => {
    expect(doubt(ofLength('mm', 1, 3.175), nothing).fixed / mm).toBeCloseTo(1.356485, 6)
  })

  it('takes the step that the reader states, finer or coarser, and the stated doubt in its own unit', () => {
    expect(doubt(ofLength('mm', 1, 1), { ...nothing, resolution: 6 * mm }).fixed).toBe(2 * mm)
    expect(doubt(ofLength('mm', 1, 6), { ...nothing, resolution: 0 }).fixed).toBe(mm)
    const stated = { uncertainty: { value: 0.25, unit: 'in' }, resolution: 6 * mm } as const
    expect(doubt(ofLength('mm', 40, 40), stated)).toEqual({ fixed: 6_350_000, relative: 0 })
  })

  it('grows with the reading where the instrument says so', () => {
    const wrench: Instrument = { ...own, standardUncertainty: 3, relativeUncertainty: 0.04, unit: 'N·m', readTo: 1e-6 }
    // 3 N·m and 4 % of 100 N·m: together 5 N·m.
    expect(doubtAt(doubt(wrench, nothing), 100e9)).toBeCloseTo(5e9, 0)
    expect(doubtAt(doubt(wrench, nothing), 0)).toBeCloseTo(3e9, 0)
    expect(doubtAt({ fixed: 3, relative: 1 }, 4)).toBe(5)
  })

  it('is nothing for what is counted, unless the instrument says so', () => {
    const eye: Instrument = { ...own, standardUncertainty: 0, unit: 'count', readTo: 1 }
    expect(doubt(eye, nothing)).toEqual({ fixed: 0, relative: 0 })
    expect(doubt({ ...eye, standardUncertainty: 2 }, nothing)).toEqual({ fixed: 2, relative: 0 })
  })
})

describe('doubtfulAround', () => {
  it('is the limit less and more what is doubtful', () => {
    expect(doubtfulAround(100, { fixed: 3, relative: 0 })).toEqual({ from: 97, to: 103 })
    // 125 - 100 = 0.2 of 125, and 100 - 83 1/3 = 0.2 of 83 1/3.
    const { from, to } = doubtfulAround(100, { fixed: 0, relative: 0.2 })
    expect([from, to]).toEqual([expect.closeTo(100 / 1.2, 10), expect.closeTo(125, 10)])
    expect(doubtfulAround(100, { fixed: 1, relative: 1 })).toEqual({ from: -Infinity, to: Infinity })
  })

  it('gives the values whose own doubt just reaches the limit', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -1e6, max: 1e6 }),
        fc.double({ min: 0, max: 1e5, noNaN: true }),
        fc.double({ min: 0.001, max: 0.9, noNaN: true }),
        (limit, fixed, relative) => {
          const { from, to } = doubtfulAround(limit, { fixed, relative })
          expect(limit - from).toBeCloseTo(doubtAt({ fixed, relative }, from), 4)
          expect(to - limit).toBeCloseTo(doubtAt({ fixed, relative }, to), 4)
        },
      ),
      { seed: 106 },
    )
  })
})

describe('instrumentOf', () => {
  it('is the one named where it reads the quantity, or else the coarse one for that quantity', () => {
    expect(instrumentOf(instruments, 'tape', 'length').id).toBe('tape')
    expect(instrumentOf(instruments, 'tape', 'torque').id).toBe('torque-not-stated')
    expect(instrumentOf(instruments, null, 'length').id).toBe('not-stated')
    expect(instrumentOf([], 'tape', 'slope').id).toBe('slope-not-stated')
  })
})
