import { describe, expect, it } from 'vitest'
import type { Dimension } from '../hardware/hardware-sheet.ts'
import { theirs } from '../theirs.ts'
import { exactLength, type LengthUnit } from '../units/exact-length.ts'
import { type HeightReading, heightRemedy } from './height-remedy.ts'
import type { Proof } from './proof.ts'

/** The steps as data, with values worked by hand in inches; readings to 1/8 in, without a guard band where none is given. */
const cited = { measured: '', source: 'test', confirmation: 'published', unit: 'in' } as const
const rail: Dimension = { nominal: 31, low: 30, high: 32, role: 'centre', ...cited }
const floor: Dimension = { nominal: 'notStated', low: 27.75, high: 'notStated', role: 'floor', ...cited }
const stub: Dimension = { nominal: 'notStated', low: 'notStated', high: 4, role: 'ceiling', ...cited }

const inch = (value: number) => exactLength(value, 'in')
const read = (value: number, limits: Dimension, guard = 0, step = 1 / 8): HeightReading => ({
  ...{ value: exactLength(value, limits.unit), limits, guard: { fixed: inch(guard), relative: 0 }, step: inch(step) },
})
const tape = (name: string, guard: number, step = 1 / 8) => ({
  name: theirs(name),
  guard: { fixed: inch(guard), relative: 0 },
  step: inch(step),
})
type Given = HeightReading | null

const steps = (
  one: Given,
  other: Given,
  unread: 'rail' | 'stub' | null = null,
  instruments: ReturnType<Proof['instrumentsFor']> = [],
) => {
  const of = () => {
    throw new Error('not asked')
  }
  return heightRemedy({ id: 'post-9', number: 9 }, one, other, unread, { of, instrumentsFor: () => instruments })
}

describe('a post that is raised or lowered', () => {
  it('is raised where the rail is low and lowered where it is high, to the nominal height', () => {
    expect(steps(read(29, rail), read(1, stub))).toEqual([
      {
        ...{ kind: 'raise post', post: 9, by: 2, unit: 'in', railThen: 31, stubThen: 3 },
        ...{ holds: { from: 1, to: 3 }, blockUpTo: null },
      },
    ])
    expect(steps(read(33, rail), read(2, stub))).toMatchObject([
      { kind: 'raise post', by: -2, railThen: 31, stubThen: 0, holds: { from: -3, to: -1 }, blockUpTo: null },
    ])
  })

  it('goes to the middle of limits without a nominal height, or one step of the reading past the only limit', () => {
    const between: Dimension = { ...rail, nominal: 'notStated', low: 30, high: 33 }
    expect(steps(read(28, between), null)).toMatchObject([{ by: 3.5, railThen: 31.5 }])
    expect(steps(read(27, floor), null)).toMatchObject([{ by: 0.875, railThen: 27.875, holds: null }])
    // 31.5 in, though the room that the stub leaves lies elsewhere; and a nominal height that is not the middle.
    expect(steps(read(29, between), read(0.5, stub))).toMatchObject([{ by: 2.5, railThen: 31.5 }])
    expect(steps(read(29, { ...between, nominal: 31 }), null)).toMatchObject([{ by: 2, railThen: 31 }])
    const under: Dimension = { ...rail, nominal: 'notStated', low: 'notStated', high: 32 }
    expect(steps(read(33, under), null)).toMatchObject([{ by: -1.125, railThen: 31.875, holds: null }])
    expect(steps(null, read(5, stub))).toEqual([
      {
        ...{ kind: 'raise post', post: 9, by: -1.125, unit: 'in', railThen: null, stubThen: 3.875 },
        ...{ holds: null, blockUpTo: null },
      },
    ])
  })

  it('may have its block raised instead by up to 3 in, where only the rail of an ordinary post is low', () => {
    const block = (...of: Parameters<typeof steps>) =>
      steps(...of).flatMap((one) => ('blockUpTo' in one ? one.blockUpTo : []))
    expect(block(read(28, rail), null)).toEqual([3])
    expect(block(read(27.875, rail), null)).toEqual([null])
    expect(block(read(27.25, floor), null)).toEqual([3])
    expect(block(read(33, rail), null)).toEqual([null])
    expect(block(read(29, rail), read(1, stub))).toEqual([null])
    expect(block(read(29, rail), null, 'stub')).toEqual([null])
    const metric: Dimension = { ...rail, nominal: 787, low: 762, high: 813, unit: 'mm' }
    expect(block(read(750, metric), null)).toEqual([null])
    // Between 705 and 708 mm the middle is 3 1/2 mm up, and halves go toward nothing.
    const narrow: Dimension = { ...floor, low: 705, high: 708, unit: 'mm' }
    const low = { ...read(703, narrow), step: exactLength(1, 'mm') }
    expect(steps(low, null)).toMatchObject([{ by: 3, railThen: 706, unit: 'mm', blockUpTo: null }])
  })

  it('is moved in the coarser of the two steps that its heights were read in', () => {
    // The stub leaves up 1 to 1 1/4 in. In half inches only 1 in falls in it; in eighths the middle would.
    expect(steps(read(29, rail, 0, 1 / 8), read(2.75, stub, 0, 1 / 2))).toMatchObject([{ by: 1 }])
    expect(steps(read(29, rail, 0, 1 / 2), read(2.75, stub, 0, 1 / 8))).toMatchObject([{ by: 1 }])
    expect(steps(read(29, rail), read(2.75, stub))).toMatchObject([{ by: 1.125 }])
  })

  it('has what was not read measured first, under its own name', () => {
    const first = { kind: 'measure first', from: 9, to: 9, using: null }
    expect(steps(read(29, rail), null, 'stub')[0]).toEqual({
      ...{ ...first, what: 'stub', requirements: ['post-9/stub-height'] },
    })
    expect(steps(null, read(5, stub), 'rail')[0]).toEqual({
      ...{ ...first, what: 'rail', requirements: ['post-9/rail-height'] },
    })
  })
})

describe('a post that no move brings right', () => {
  it('is reset, with what the least move would do', () => {
    expect(steps(read(28.5, rail), read(3.5, stub))).toEqual([
      {
        ...{ kind: 'reset post', post: 9 },
        because: { unit: 'in', brings: 'rail', move: 1.5, railThen: 30, stubThen: 5, stubLimit: 4 },
      },
    ])
    // A rail right on its lower limit is right: it is the stub that is lowered.
    expect(steps(read(30, rail), read(5, stub))).toEqual([
      {
        ...{ kind: 'reset post', post: 9 },
        because: { unit: 'in', brings: 'stub', move: -1, railThen: 29, stubThen: 4, stubLimit: 4 },
      },
    ])
  })

  it('is reset without a reason where a move brings both right and only no reading proves it', () => {
    // Up 1 in brings the rail to 30 in and the stub to 4 in; with 1/4 in of doubt neither is proven.
    expect(steps(read(29, rail, 1 / 4), read(3, stub, 1 / 4))).toEqual([{ kind: 'reset post', post: 9, because: null }])
  })

  it('is told of by its rail where that is too high as well', () => {
    const held: Dimension = { ...stub, low: 3 }
    expect(steps(read(33, rail), read(3, held))).toMatchObject([
      { kind: 'reset post', because: { brings: 'rail', move: -1, railThen: 32, stubThen: 2, stubLimit: 3 } },
    ])
    // The rail is right and the stub too low: raised to its limit the rail would be too high.
    expect(steps(read(31.5, rail), read(2, held))).toMatchObject([
      { kind: 'reset post', because: { brings: 'stub', move: 1, railThen: 32.5, stubThen: 3, stubLimit: 3 } },
    ])
  })

  it('has its proof named as well where readings like these could not prove it after all', () => {
    const both = ['post-9/rail-height', 'post-9/stub-height']
    const instruments = [tape('fine tape', 1 / 8), tape('rough tape', 2)]
    // 30 + 1 1/4 in is over 32 - 1 1/4 in; with 1 in each side there is one height left, and with 1/8 in there is room.
    expect(steps(read(28.5, rail, 1.25), read(3.5, stub, 1.25), null, instruments)[1]).toEqual({
      ...{ kind: 'not provable', requirements: both, would: [theirs('fine tape')] },
    })
    expect(steps(read(28.5, rail, 1), read(3.5, stub, 1), null, instruments)).toHaveLength(1)
  })
})

describe('a move that readings like these do not prove', () => {
  it('is told all the same, with the instruments that would prove it, for the heights that were read', () => {
    expect(steps(read(28, rail, 2), null, null, [tape('fine tape', 1 / 8)])[1]).toEqual({
      ...{ kind: 'not provable', requirements: ['post-9/rail-height'], would: [theirs('fine tape')] },
    })
    expect(steps(null, read(5, { ...stub, low: 3 }, 1), null, [])[1]).toEqual({
      ...{ kind: 'not provable', requirements: ['post-9/stub-height'], would: [] },
    })
  })

  it('is to be read more finely first only with an instrument that would prove it', () => {
    // Up 2 to 4 in is narrower than two steps of 2 in.
    const coarse = read(28, rail, 3, 2)
    expect(steps(coarse, null)).toMatchObject([
      { kind: 'raise post', by: 2, railThen: 30 },
      { kind: 'not provable', would: [] },
    ])
    expect(steps(coarse, null, null, [tape('fine tape', 1 / 8)])).toEqual([
      {
        ...{ kind: 'measure first', what: 'finely', requirements: ['post-9/rail-height'], from: 9, to: 9 },
        using: theirs('fine tape'),
      },
    ])
  })
})

it('reads metric limits in their own unit', () => {
  const unit: LengthUnit = 'mm'
  const metric: Dimension = { ...rail, nominal: 787, low: 762, high: 813, unit }
  const [step] = steps({ ...read(700, metric), step: exactLength(1, 'mm') }, null)
  expect(step).toMatchObject({ kind: 'raise post', by: 85, unit: 'mm', railThen: 785 })
})
