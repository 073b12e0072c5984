import { describe, expect, it } from 'vitest'
import { computeValue, type KnownReading } from './compute-value.ts'

const inch = 25_400_000
const known =
  (readings: Readonly<Record<string, number>>, u = 0.1, sides: 'said' | 'none' | readonly string[] = 'said') =>
  (of: string): KnownReading | null =>
    readings[of] === undefined
      ? null
      : {
          value: Math.round(readings[of] * inch),
          u: u * inch,
          id: of,
          hasSide: sides === 'said' || sides.includes(of),
        }
const points = (...along: readonly number[]) => along.map((alongInches, i) => ({ reading: `p${i}`, alongInches }))

function inches(result: ReturnType<typeof computeValue>) {
  if (!('value' in result)) throw new Error(JSON.stringify(result))
  return { value: result.value / inch, u: result.u / inch }
}

describe('computeValue', () => {
  it('takes spacing as a difference, uncertainties added in squares (JCGM 100:2008, 5.1.2)', () => {
    const { value, u } = inches(computeValue({ kind: 'difference', from: 'a', to: 'b' }, known({ a: 150, b: 224.5 })))
    expect(value).toBe(74.5)
    expect(u).toBeCloseTo(0.1 * Math.SQRT2, 12)
  })

  // Handbook, middle ordinate of a parabolic flare of 4 ft over 37.5 ft: y = E (x/L)^2, over 12.5 ft 1.333 in
  it('tells a parabola from a straight flare by the middle ordinate of a panel', () => {
    const line = points(0, 75, 150)
    const parabola = (along: number) => 48 * ((450 - along) / 450) ** 2
    const straight = (along: number) => 48 * (1 - along / 450)
    const read = (shape: (along: number) => number) => known({ p0: shape(0), p1: shape(75), p2: shape(150) })
    expect(inches(computeValue({ kind: 'middle ordinate', points: line }, read(parabola))).value).toBeCloseTo(1.3333, 4)
    expect(inches(computeValue({ kind: 'middle ordinate', points: line }, read(straight))).value).toBeCloseTo(0, 6)
  })

  // by hand
  it('carries the line of two posts on to the end post, with the uncertainty of an extrapolation', () => {
    const point = { reading: 'end', alongInches: 0 }
    const { value, u } = inches(
      computeValue({ kind: 'offset from line', point, line: points(450, 525) }, known({ end: 60, p0: 10, p1: 12 })),
    )
    // line: 10 + (12 - 10) (x - 450)/75, at 0: -2; offset 62. Weights at 0: 7 and -6, own 1: u = 0.1 sqrt(1 + 49 + 36)
    expect(value).toBeCloseTo(62, 9)
    expect(u).toBeCloseTo(0.1 * Math.sqrt(86), 9)
  })

  /** Away from traffic is positive: offsets of one string, whether the line of the run lies on it or not. */
  const flare = { kind: 'offset from line', point: { reading: 'end', alongInches: 0 }, line: points(450, 525) } as const

  it.each([
    ['away', { end: 48, p0: 0, p1: 0 }, 48],
    ['toward traffic', { end: -48, p0: 0, p1: 0 }, -48],
    ['away, the string toward traffic of every post', { end: 58, p0: 10, p1: 10 }, 48],
    ['away, the string away from every post', { end: -10, p0: -58, p1: -58 }, 48],
    ['toward traffic though both lie away from the string', { end: 6, p0: 18, p1: 18 }, -12],
    // by hand: the line goes from 7 at 450 to 8 at 525, so it is 1 at 0
    ['off a slanting string', { end: 13, p0: 7, p1: 8 }, 12],
  ])('tells an end %s by the sign', (_, readings, offset) => {
    const computed = computeValue(flare, known(readings))
    expect(computed).toMatchObject({ hasSide: true })
    expect(inches(computed).value).toBeCloseTo(offset, 9)
  })

  it('gives the same with the run turned end for end: away stays away', () => {
    const turned = { ...flare, point: { reading: 'end', alongInches: 1000 }, line: points(550, 475) }
    const readings = known({ end: -13, p0: -7, p1: -8 })
    expect(inches(computeValue(turned, readings)).value).toBeCloseTo(inches(computeValue(flare, readings)).value, 9)
    expect(inches(computeValue(turned, readings)).value).toBeCloseTo(-12, 9)
  })

  it('has no side where no reading says one, unless all are 0', () => {
    expect(computeValue(flare, known({ end: 48, p0: 0, p1: 1 }, 0.1, 'none'))).toMatchObject({ hasSide: false })
    expect(computeValue(flare, known({ end: 48, p0: 0, p1: 0 }, 0.1, ['end']))).toMatchObject({ hasSide: true })
    expect(computeValue(flare, known({ end: 0, p0: 0, p1: 0 }, 0.1, 'none'))).toMatchObject({ hasSide: true })
  })

  it('computes nothing from readings of which only some say their side', () => {
    const some = known({ end: 48, p0: 1, p1: 0 }, 0.1, ['end'])
    expect(computeValue(flare, some)).toEqual({ sidesMixed: ['end', 'p0', 'p1'] })
    const ordinate = { kind: 'middle ordinate', points: points(0, 75, 150) } as const
    expect(computeValue(ordinate, known({ p0: 2, p1: 2, p2: 2 }, 0.1, ['p1']))).toEqual({
      sidesMixed: ['p0', 'p1', 'p2'],
    })
  })

  it('takes a middle ordinate as the same on either side of the string, across it too', () => {
    const ordinate = { kind: 'middle ordinate', points: points(0, 75, 150) } as const
    for (const turn of [1, -1])
      for (const sides of ['said', 'none'] as const) {
        const read = (a: number, b: number, c: number) =>
          inches(computeValue(ordinate, known({ p0: turn * a, p1: turn * b, p2: turn * c }, 0.1, sides))).value
        expect(read(36, 24.25, 12)).toBeCloseTo(0.25, 9)
        expect(read(1, 0, -1)).toBeCloseTo(0, 9)
        expect(read(1, -0.9, 1)).toBeCloseTo(1.9, 9)
      }
  })

  // by hand: weights of the outer two are 1 - t and t, each reading's uncertainty 0.1
  it('has the uncertainty of the inner point that lies farthest off, together with the chord there', () => {
    const u = (readings: Readonly<Record<string, number>>, ...along: readonly number[]) =>
      inches(computeValue({ kind: 'middle ordinate', points: points(...along) }, known(readings))).u
    expect(u({ p0: 0, p1: 1, p2: 0 }, 0, 75, 150)).toBeCloseTo(0.1 * Math.sqrt(1.5), 9)
    expect(u({ p0: 0, p1: 0, p2: 0 }, 0, 75, 150)).toBeCloseTo(0.1 * Math.sqrt(1.5), 9)
    // t = 1/3 at 50 in, 2/3 at 100 in: sqrt(1 + 4/9 + 1/9) either way; t = 1/5 at 30 in: sqrt(1 + 16/25 + 1/25)
    expect(u({ p0: 0, p1: -2, p2: 1, p3: 0 }, 0, 50, 100, 150)).toBeCloseTo(0.1 * Math.sqrt(14 / 9), 9)
    expect(u({ p0: 0, p1: 1, p2: 2, p3: 0 }, 0, 75, 120, 150)).toBeCloseTo(0.1 * Math.sqrt(42 / 25), 9)
    expect(u({ p0: 0, p1: 2, p2: 1, p3: 0 }, 0, 75, 120, 150)).toBeCloseTo(0.1 * Math.sqrt(1.5), 9)
  })

  it('names the post that nobody read, of a space and of a string', () => {
    const space = { kind: 'difference', from: 'a', to: 'b' } as const
    expect(computeValue(space, known({ b: 75 }))).toEqual({ missing: ['a'] })
    expect(computeValue(space, known({ a: 0 }))).toEqual({ missing: ['b'] })
    expect(computeValue(space, known({}))).toEqual({ missing: ['a', 'b'] })
    const ordinate = { kind: 'middle ordinate', points: points(0, 75, 150) } as const
    expect(computeValue(ordinate, known({ p1: 0, p2: 0 }))).toEqual({ missing: ['p0'] })
    expect(computeValue(flare, known({ p0: 0, p1: 0 }))).toEqual({ missing: ['end'] })
    expect(computeValue(flare, known({}))).toEqual({ missing: ['end', 'p0', 'p1'] })
  })

  it('names the readings that it stands on, in the order of the posts', () => {
    const zeros = known({ a: 0, b: 75, end: 0, p0: 0, p1: 0, p2: 0 })
    expect(computeValue({ kind: 'difference', from: 'a', to: 'b' }, zeros)).toMatchObject({ readings: ['a', 'b'] })
    const ordinate = { kind: 'middle ordinate', points: points(0, 75, 150) } as const
    expect(computeValue(ordinate, zeros)).toMatchObject({ readings: ['p0', 'p1', 'p2'] })
    expect(computeValue(flare, zeros)).toMatchObject({ readings: ['end', 'p0', 'p1'] })
  })

  it('needs two posts of the run, and names what is missing', () => {
    const result = computeValue(
      { kind: 'offset from line', point: { reading: 'end', alongInches: 0 }, line: points(450, 525, 600) },
      known({ end: 48, p1: 0 }),
    )
    expect(result).toEqual({ missing: ['p0'] })
  })
})
