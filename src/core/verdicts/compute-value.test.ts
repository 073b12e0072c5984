import { describe, expect, it } from 'vitest'
import { computeValue, type KnownReading } from './compute-value.ts'

const inch = 25_400_000
const known =
  (readings: Readonly<Record<string, number>>, u = 0.1) =>
  (of: string): KnownReading | null =>
    readings[of] === undefined ? null : { value: Math.round(readings[of] * inch), u: u * inch, id: of }
const points = (...along: readonly number[]) => along.map((alongInches, i) => ({ reading: `p${i}`, alongInches }))

function inches(result: ReturnType<typeof computeValue>) {
  if ('missing' in result) throw new Error(`missing ${result.missing}`)
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

  it('needs two posts of the run, and names what is missing', () => {
    const result = computeValue(
      { kind: 'offset from line', point: { reading: 'end', alongInches: 0 }, line: points(450, 525, 600) },
      known({ end: 48, p1: 0 }),
    )
    expect(result).toEqual({ missing: ['p0'] })
  })
})
