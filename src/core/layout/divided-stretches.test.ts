import { describe, expect, it } from 'vitest'
import { shippedSheets } from '../../sheets/shipped-sheets.ts'
import type { LongitudinalSheet } from '../hardware/hardware-sheet.ts'
import { nameOf } from '../hardware/sheet-text.ts'
import { type DividedStretch, dividedStretches, isDividedPost, refuseDivided } from './divided-stretches.ts'
import type { EndSide } from './end-side.ts'
import type { LayoutRequest, Obstruction, ReducedPart } from './layout.ts'
import { inchesOf, sixteenths } from './sixteenths.ts'

const system = shippedSheets.find(({ id }) => id === 'w-beam-midspan-31') as LongitudinalSheet
const nameOfSheet = (name: string) => nameOf({ ...system, name })
const side = (name: string): EndSide => ({
  end: { kind: 'unknown', because: 'not looked at', atInches: null, posts: 0, panels: 0 },
  ...{ name: nameOfSheet(name), own: [], adapter: null, joint: 0, posts: [], countsFrom: null },
})
/** The first origin lies 100 in from the datum; twenty full spaces of 75 in from 375 in after it. */
const frame = { first: side('first'), second: side('second'), origin: sixteenths(100), length: sixteenths(2000) }
const lattice = { from: sixteenths(375), to: sixteenths(1875), full: sixteenths(75) }
const asked = (reduced: readonly ReducedPart[], obstructions: readonly Obstruction[] = []): LayoutRequest => ({
  ...{ system, first: frame.first.end, second: frame.second.end, need: null, stock: null, obstructions, reduced },
  ...{ standing: null, mayExtendInches: 0 },
})
/** A part in inches from the first origin. */
const part = (from: number, to: number, spacing: ReducedPart['spacing']): ReducedPart => ({
  ...{ fromInches: from + 100, toInches: to + 100, spacing, nested: false },
})
const inInches = (stretches: readonly DividedStretch[]) =>
  stretches.map(({ from, to, into }) => [inchesOf(from), inchesOf(to), into])
const stretchesOf = (...parts: readonly ReducedPart[]) => inInches(dividedStretches(asked(parts), frame, lattice))

/** Worked by hand: space k lies from 375 + 75k to 450 + 75k in; quarter spacing has two spaces at half on each side. */
describe('the spaces that parts at reduced spacing divide', () => {
  it('are those that a part lies in, even with a sixteenth of an inch', () => {
    expect(stretchesOf(part(450, 525, 'half'))).toEqual([[450, 525, 2]])
    expect(stretchesOf(part(450, 525.0625, 'half'))).toEqual([[450, 600, 2]])
    expect(stretchesOf(part(449.9375, 525, 'half'))).toEqual([[375, 525, 2]])
    expect(stretchesOf(part(450, 525, 'full'))).toEqual([])
  })

  it('lie in order and joined, however the parts were named', () => {
    expect(stretchesOf(part(1000, 1040, 'half'), part(460, 470, 'half'))).toEqual([
      [450, 525, 2],
      [975, 1050, 2],
    ])
    expect(stretchesOf(part(525, 600, 'half'), part(450, 525, 'half'))).toEqual([[450, 600, 2]])
  })

  it('go from full to quarter spacing by half, and the finest holds where parts meet', () => {
    const eased = [
      [975, 1125, 2],
      [1125, 1200, 4],
      [1200, 1350, 2],
    ]
    expect(stretchesOf(part(1130, 1190, 'quarter'))).toEqual(eased)
    expect(stretchesOf(part(1125, 1200, 'half'), part(1130, 1190, 'quarter'))).toEqual(eased)
    expect(stretchesOf(part(1130, 1190, 'quarter'), part(1500, 1575, 'half'))).toEqual([...eased, [1500, 1575, 2]])
  })

  it('reach one space past the run where a part does, however far it goes on', () => {
    expect(stretchesOf(part(-5000, 450, 'half'))).toEqual([[300, 450, 2]])
    expect(stretchesOf(part(1800, 9000, 'half'))).toEqual([[1800, 1950, 2]])
    expect(stretchesOf(part(-5000, 100, 'half'))).toEqual([[300, 375, 2]])
  })
})

describe('reduced spacing that cannot be had', () => {
  const refusal = (of: readonly ReducedPart[], obstructions: readonly Obstruction[] = [], standing = 0) => {
    const request = asked(of, obstructions)
    const divided = dividedStretches(request, frame, lattice)
    return refuseDivided(request, frame, lattice, divided, sixteenths(standing))
  }

  it('reaches into the posts of an end unit, at the end where it does', () => {
    expect(refusal([part(375, 450, 'half')])).toBe(null)
    expect(refusal([part(374.9375, 450, 'half')])).toEqual({
      ...{ kind: 'reduced part in unit', unit: nameOfSheet('first'), spacing: 'half' },
    })
    expect(refusal([part(1800, 1875, 'half')])).toBe(null)
    expect(refusal([part(1800, 1875.0625, 'half')])).toEqual({
      ...{ kind: 'reduced part in unit', unit: nameOfSheet('second'), spacing: 'half' },
    })
    // The half spaces before the quarter ones are what does not fit.
    expect(refusal([part(525, 600, 'quarter')])).toBe(null)
    expect(refusal([part(450, 525, 'quarter')])).toMatchObject({ unit: nameOfSheet('first'), spacing: 'half' })
    expect(refusal([part(375, 450, 'full')])).toBe(null)
  })

  it('has a post in something that is in the way, of what is divided from its first post to its last', () => {
    // Half spacing from 450 to 600 in: posts at 450, 487.5, 525, 562.5 and 600 in.
    const blocked = (from: number, to: number, standing = 0) =>
      refusal([part(450, 600, 'half')], [{ name: 'the pipe', fromInches: from + 100, toInches: to + 100 }], standing)
    const found = { kind: 'post at reduced spacing obstructed', obstructions: ['the pipe'], spacing: 'half' }
    // Between two posts, up to their very centres, nothing stands in it.
    for (const [from, to] of [
      [487.5, 525],
      [562.5, 600],
      [430, 450],
      [600, 630],
      [300, 449],
    ] as const)
      expect(blocked(from, to), `${from} to ${to}`).toBe(null)
    for (const [from, to] of [
      [487.4375, 500],
      [500, 525.0625],
      [430, 450.0625],
      [449.9375, 460],
      [599.9375, 610],
      [300, 900],
    ] as const)
      expect(blocked(from, to), `${from} to ${to}`).toEqual(found)
    // A post that stands already is nobody's to place.
    expect(blocked(480, 500, 487.5)).toBe(null)
    expect(blocked(480, 500, 487.4375)).toEqual(found)
  })

  it('names the spacing at which the post would stand', () => {
    const quarter = [part(1125, 1200, 'quarter')]
    const pipe = (from: number, to: number) => [{ name: 'the pipe', fromInches: from + 100, toInches: to + 100 }]
    // Quarter spacing has a post at 1143.75 in; the half spacing before it at 1087.5 in.
    expect(refusal(quarter, pipe(1140, 1150))).toMatchObject({ spacing: 'quarter' })
    expect(refusal(quarter, pipe(1080, 1090))).toMatchObject({ spacing: 'half' })
    expect(refusal(quarter, pipe(1126, 1143.75))).toBe(null)
  })
})

describe('a post within what is divided', () => {
  const divided: readonly DividedStretch[] = [
    { from: 0, to: 400, into: 2 },
    { from: 400, to: 600, into: 4 },
    { from: 1000, to: 1200, into: 2 },
  ]
  const lattice = { from: -200, to: 2000, full: 100 }
  it.each([
    [50, true],
    [100, true],
    [350, true],
    [425, true],
    [575, true],
    [1050, true],
    // Where two stretches meet there is one; at their outer ends the spaces beyond are full.
    [400, true],
    [0, false],
    [600, false],
    [1000, false],
    [1200, false],
    // Off the divided lattice, or beyond it.
    [25, false],
    [410, false],
    [-50, false],
    [650, false],
  ])('%d: %s', (at, stands) => {
    expect(isDividedPost(divided, lattice, at)).toBe(stands)
  })
})
