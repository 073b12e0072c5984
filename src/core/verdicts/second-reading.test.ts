import { describe, expect, it } from 'vitest'
import type { Dimension } from '../hardware/hardware-sheet.ts'
import { exactLength, type LengthUnit } from '../units/exact-length.ts'
import { judgeMeasured } from './judge-measured.ts'
import { secondReading } from './second-reading.ts'

const cited = { measured: '', source: 'test', confirmation: 'published' } as const
const floor: Dimension = { nominal: 'notStated', low: 27.75, high: 'notStated', unit: 'in', role: 'floor', ...cited }
const centre: Dimension = { nominal: 31, low: 30, high: 32, unit: 'in', role: 'centre', ...cited }
const guarded = { kind: 'guard band', multiple: 1 } as const

const read = (value: number, unit: LengthUnit, u: number, limits: Dimension) =>
  judgeMeasured(exactLength(value, unit), { fixed: exactLength(u, 'mm'), relative: 0 }, limits, guarded, false)!

// By hand: u = 3 mm gives a guard band of 6 mm = 0.2362 in; 27.75 + 0.2362 = 27.9862, the next sixteenth is 28;
// 27.75 - 0.2362 = 27.5138, the sixteenth below is 27 1/2.
describe('secondReading', () => {
  it('says what another reading as doubtful would have to give, in sixteenths', () => {
    const { because } = read(27.875, 'in', 3, floor)
    const second = secondReading(because, floor, guarded)!
    expect(second.meets).toEqual({ from: 28, to: null })
    expect(second.fails).toEqual({ atMost: 27.5, atLeast: null })
    expect(second.finer!.verdict).toBe('meets')
    // 1/8 in inside: u may be half of it, 1/16 in.
    expect(second.finer!.uncertainty).toBeCloseTo(0.0625, 12)
  })

  it('names values that the judging then decides so', () => {
    for (const limits of [floor, centre]) {
      const near = read((limits.low as number) - 0.125, 'in', 3, limits)
      expect(near.verdict).toBe('too close')
      const { meets, fails, finer } = secondReading(near.because, limits, guarded)!
      expect(read(meets!.from!, 'in', 3, limits).verdict).toBe('meets')
      expect(read(meets!.from! - 1 / 16, 'in', 3, limits).verdict).toBe('too close')
      expect(read(fails.atMost!, 'in', 3, limits).verdict).toBe('fails')
      expect(read(fails.atMost! + 1 / 16, 'in', 3, limits).verdict).toBe('too close')
      expect(finer).toMatchObject({ verdict: 'fails' })
    }
  })

  it('knows that no value meets where the limits are narrower than the doubt', () => {
    const narrow: Dimension = { ...centre, low: 30.9, high: 31.1 }
    const { because } = read(31, 'in', 6, narrow)
    expect(secondReading(because, narrow, guarded)!.meets).toBeNull()
  })

  it('cannot settle a value on the limit by reading the same value more finely', () => {
    const { because } = read(27.75, 'in', 3, floor)
    expect(secondReading(because, floor, guarded)!.finer).toBeNull()
  })

  it('has nothing to say of what is decided, or under simple acceptance', () => {
    expect(secondReading(read(29, 'in', 3, floor).because, floor, guarded)).toBeNull()
    expect(secondReading(read(27.75, 'in', 3, floor).because, floor, { kind: 'simple' })).toBeNull()
  })
})
