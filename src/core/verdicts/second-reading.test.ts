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

  it('says the same of a ceiling, the other way round', () => {
    // 4 + 0.2362 = 4.2362, the sixteenth above is 4 1/4; 4 - 0.2362 = 3.7638, the sixteenth below is 3 3/4.
    const ceiling: Dimension = { ...floor, low: 'notStated', high: 4, role: 'ceiling' }
    const second = secondReading(read(4.0625, 'in', 3, ceiling).because, ceiling, guarded)!
    expect(second.meets).toEqual({ from: null, to: 3.75 })
    expect(second.fails).toEqual({ atMost: null, atLeast: 4.25 })
    expect(second.finer).toEqual({ verdict: 'fails', uncertainty: expect.closeTo(1 / 32, 12) })
  })

  it('goes by hundredths of a foot and by millimetres where those are the units of the limit', () => {
    // 3 mm doubt: 6 mm = 0.01969 ft; 2.5 + 0.01969 = 2.51969, next 2.52; 2.5 - 0.01969 = 2.48031, below it 2.48.
    const foot: Dimension = { ...floor, low: 2.5, unit: 'ft' }
    const inFeet = secondReading(read(2.5, 'ft', 3, foot).because, foot, guarded)!
    expect(inFeet.meets!.from).toBeCloseTo(2.52, 12)
    expect(inFeet.fails.atMost).toBeCloseTo(2.48, 12)
    const metric: Dimension = { ...floor, low: 700, unit: 'mm' }
    const inMetric = secondReading(read(700, 'mm', 3, metric).because, metric, guarded)!
    // 706 mm meets, and below 694 mm it fails.
    expect([inMetric.meets!.from, inMetric.fails.atMost]).toEqual([706, 693])
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
