import { describe, expect, it } from 'vitest'
import type { Instrument } from './instruments.ts'
import { standardUncertainty } from './uncertainty.ts'

/** Values worked by hand from JCGM 100:2008, 4.3.7: a step read adds step / sqrt(12), combined as squares. */
const ofUnit = (unit: Instrument['unit'], own: number, readTo: number): Instrument => ({
  id: 'tried',
  name: 'tried',
  standardUncertainty: own,
  unit,
  readTo,
  source: 'by hand',
  confirmation: 'from memory',
})
const mm = 1_000_000
const inch = 25_400_000
const read = (resolution: number | null) => ({ kind: 'length', value: 0, unit: 'mm', resolution }) as const
const unstated = { uncertainty: null }

describe('standardUncertainty', () => {
  it('is what the reader stated, in the unit stated, whatever the instrument', () => {
    const stated = { uncertainty: { value: 0.25, unit: 'in' } } as const
    expect(standardUncertainty(stated, read(6 * mm), ofUnit('mm', 40, 40))).toBe(6_350_000)
  })

  it('is 2 mm of an instrument of 1 mm read to 6 mm: sqrt(1 + 36/12)', () => {
    expect(standardUncertainty(unstated, read(null), ofUnit('mm', 1, 6))).toBe(2 * mm)
  })

  it('takes the instrument and its step in the unit of the instrument', () => {
    expect(standardUncertainty(unstated, read(null), ofUnit('in', 1, 6))).toBe(2 * inch)
  })

  it('is 1.3565 mm of a tape of 1 mm read to 1/8 in: sqrt(1 + 3.175 x 3.175 / 12)', () => {
    expect(standardUncertainty(unstated, read(null), ofUnit('mm', 1, 3.175)) / mm).toBeCloseTo(1.356485, 6)
  })

  it('takes the step that the reader states instead of the instrument’s, finer or coarser', () => {
    expect(standardUncertainty(unstated, read(6 * mm), ofUnit('mm', 1, 1))).toBe(2 * mm)
    expect(standardUncertainty(unstated, read(0), ofUnit('mm', 1, 6))).toBe(mm)
  })
})
