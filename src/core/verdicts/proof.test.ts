import { describe, expect, it } from 'vitest'
import type { Dimension } from '../hardware/hardware-sheet.ts'
import type { Instrument } from '../measurement/instruments.ts'
import type { Reading } from '../measurement/reading.ts'
import { theirs } from '../theirs.ts'
import { exactLength, type LengthUnit } from '../units/exact-length.ts'
import { chooseChange, landing, proofOf, readableRoom, roomWithin, roundTo, setOutSteps } from './proof.ts'
import type { Measured, Verdict } from './verdict.ts'

const inch = (value: number) => exactLength(value, 'in')
const fixed = (guard: number) => ({ fixed: guard, relative: 0 })
const mm = (value: number) => exactLength(value, 'mm')
const room = (low: number, high: number) => ({ low: inch(low), high: inch(high) })
const endless = Number.POSITIVE_INFINITY

const instrument = (id: string, own: number, readTo: number): Instrument => ({
  ...{
    id,
    name: theirs(`the ${id}`),
    standardUncertainty: own,
    unit: 'mm',
    readTo,
    source: theirs(''),
    confirmation: 'from memory',
  },
})
const reading = (id: string, used: string | null, resolution: number | null): Reading => ({
  ...{ id, of: id, instrument: used, uncertainty: null, by: 'J. Okafor', at: '2016-05-12T10:05:00Z' },
  answer: { kind: 'measured', value: 0, unit: 'mm', resolution },
  ...{ where: null, photos: [], corrects: null, rechecks: null, together: null },
})
const limits = (low: number | 'notStated', high: number | 'notStated'): Dimension => ({
  ...{
    nominal: 'notStated',
    unit: 'in',
    role: 'centre',
    measured: '',
    source: '',
    confirmation: 'published',
    low,
    high,
  },
})
const within = limits(30, 32)
const guarded = { kind: 'guard band', multiple: 1 } as const
/** A standard uncertainty of 1/8 in, so a guard band of 1/4 in. */
const because = { uncertainty: 0.125, unit: 'in' } as Measured
const on = (...readings: readonly string[]) => ({ readings }) as unknown as Verdict

describe('the doubt of a value', () => {
  const instruments = [instrument('tape', 1, 3), instrument('not-stated', 6, 12), instrument('level', 1, 6)]
  const readings = [
    reading('a', 'tape', null),
    reading('b', 'level', null),
    reading('c', 'tape', mm(2)),
    reading('d', null, null),
  ]
  const { of } = proofOf(readings, { rule: guarded, instruments })

  it('has the guard band of the verdict, and the step of the instrument or the one that the reader stated', () => {
    expect(of(on('a'), because)).toEqual({ guard: fixed(inch(0.25)), step: mm(3) })
    expect(of(on('c'), because).step).toBe(mm(2))
  })

  it('has the coarsest step of the readings that it is computed from', () => {
    expect(of(on('a', 'b', 'c'), because).step).toBe(mm(6))
  })

  it('takes a reading that names no instrument as not stated, or where the list has none as the shipped one', () => {
    expect(of(on('d'), because).step).toBe(mm(12))
    const two = proofOf(readings, { rule: guarded, instruments: [instrument('tape', 1, 3), instrument('rod', 5, 9)] })
    expect(two.of(on('d'), because).step).toBe(mm(6.35))
  })
})

describe('the instruments that could prove something', () => {
  it('are all but the one that nobody stated, the least doubtful first, and the finer step where they are alike', () => {
    // u = sqrt(own^2 + step^2/12): 2, 2, 1 and sqrt(1 + 3) = 2 mm; the guard band is twice that.
    const instruments = [
      instrument('rough', 2, 0),
      instrument('not-stated', 0, 0),
      instrument('fine', 1, 0),
      instrument('stepped', 1, 6),
    ]
    const proof = proofOf([], { rule: guarded, instruments }).instrumentsFor(within)
    expect(proof).toEqual([
      { name: theirs('the fine'), guard: fixed(mm(2)), step: 0 },
      { name: theirs('the rough'), guard: fixed(mm(4)), step: 0 },
      { name: theirs('the stepped'), guard: fixed(mm(4)), step: mm(6) },
    ])
    const turned = proofOf([], { rule: guarded, instruments: instruments.toReversed() }).instrumentsFor(within)
    expect(turned).toEqual(proof)
    expect(
      proofOf([], { rule: { kind: 'simple' }, instruments })
        .instrumentsFor(within)
        .map(({ guard }) => guard.fixed),
    ).toEqual([0, 0, 0])
  })
})

describe('where the next reading falls', () => {
  it('is a step further in where the step is finer than the sixteenth that the trade sets out by', () => {
    // 1/16 in is 1.5875 mm
    expect(landing({ low: mm(0), high: mm(10) }, mm(0.7), mm(1.5))).toEqual({ low: mm(1.5), high: mm(8.5) })
  })

  it('is on a step from the one at hand where it is as coarse or coarser', () => {
    expect(landing(room(-1, 10), inch(0.5), inch(2))).toEqual(room(0.5, 8.5))
    expect(landing(room(-0.2, 0.2), 0, inch(1 / 16))).toEqual(room(-3 / 16, 3 / 16))
  })

  it('is set out by eighths and sixteenths, or by the step itself where that is coarse', () => {
    expect(setOutSteps(mm(1), 'in')).toEqual([inch(1 / 8), inch(1 / 16)])
    expect(setOutSteps(mm(1), 'mm')).toEqual([mm(5), mm(1)])
    expect(setOutSteps(inch(1 / 16), 'in')).toEqual([inch(1 / 16)])
    expect(setOutSteps(inch(1), 'mm')).toEqual([inch(1)])
  })
})

describe('chooseChange', () => {
  const choose = (low: number, high: number, wanted: number, step: number, unit: LengthUnit = 'in') => {
    const change = chooseChange({ low: inch(low), high: inch(high) }, inch(wanted), inch(step), unit)
    return change === null ? null : change / inch(1)
  }

  it('is what is wanted, in eighths where that stays a step inside, else in sixteenths, else exactly', () => {
    expect(choose(0, 4, 1.3, 0.125)).toBe(1.25)
    expect(choose(1.1, 1.55, 1.32, 0.2)).toBe(1.3125)
    expect(choose(1.31, 1.33, 1.32, 0.005)).toBe(1.32)
  })

  it('is the middle of the changes where what is wanted is not a step inside them, on either side', () => {
    expect(choose(1, 2, 5, 0.125)).toBe(1.5)
    expect(choose(1, 2, -5, 0.125)).toBe(1.5)
    expect(choose(1, 2, 1.9, 0.125)).toBe(1.5)
  })

  it('is a step inside the only end that there is', () => {
    expect(chooseChange({ low: inch(1), high: endless }, inch(0), inch(0.125), 'in')).toBe(inch(1.125))
    expect(chooseChange({ low: -endless, high: inch(1) }, inch(3), inch(0.125), 'in')).toBe(inch(0.875))
  })

  it('is a whole step of the reading where the changes are narrower than two, if one lies in them', () => {
    expect(choose(0.9, 1.3, 1.2, 0.5)).toBe(1)
    expect(choose(1.1, 1.4, 1.2, 0.5)).toBeNull()
  })

  it('is in hundredths of a foot, and in 5 mm, where those are the units', () => {
    const foot = (value: number) => exactLength(value, 'ft')
    expect(chooseChange({ low: 0, high: foot(1) }, foot(0.333), foot(0.001), 'ft')).toBe(foot(0.33))
    for (const unit of ['mm', 'm'] as const) {
      expect(chooseChange({ low: 0, high: mm(50) }, mm(22), mm(1), unit)).toBe(mm(20))
      expect(chooseChange({ low: mm(20.5), high: mm(24.5) }, mm(22.4), mm(1), unit)).toBe(mm(22))
    }
  })
})

describe('lengths in steps', () => {
  it('are rounded to the nearest, halves toward nothing, so that a mirrored one is mirrored', () => {
    expect([1.5, 1.51, 2.49, 0.5, 0].map((value) => roundTo(value, 1))).toEqual([1, 2, 2, 0, 0])
    expect([-1.5, -1.51, -2.49].map((value) => roundTo(value, 1))).toEqual([-1, -2, -2])
    expect(Object.is(roundTo(-0.2, 1), 0)).toBe(true)
  })

  it('are drawn inward where a range is read on a tape, in sixteenths, millimetres or hundredths of a foot', () => {
    expect(readableRoom(room(1.01, 2.01), 'in')).toEqual({ from: 1.0625, to: 2 })
    expect(readableRoom({ low: mm(1.2), high: mm(9.9) }, 'mm')).toEqual({ from: 2, to: 9 })
    expect(readableRoom({ low: -endless, high: endless }, 'in')).toEqual({ from: null, to: null })
    const { from, to } = readableRoom({ low: exactLength(1.004, 'ft'), high: exactLength(1.999, 'ft') }, 'ft')
    expect([from, to]).toEqual([expect.closeTo(1.01, 12), expect.closeTo(1.99, 12)])
  })
})

it('the room within limits is drawn in by the guard band, and open where a limit is not stated', () => {
  expect(roomWithin(limits(30, 32), fixed(inch(0.25)))).toEqual(room(30.25, 31.75))
  expect(roomWithin(limits('notStated', 4), fixed(inch(0.25)))).toEqual({ low: -endless, high: inch(3.75) })
  expect(roomWithin(limits(27.75, 'notStated'), fixed(inch(0.25)))).toEqual({ low: inch(28), high: endless })
  // A guard band of part of a nanometre is still kept whole.
  expect(roomWithin(limits(30, 32), fixed(0.5))).toEqual({ low: inch(30) + 1, high: inch(32) - 1 })
})
