import fc from 'fast-check'
import { describe, expect, it, test } from 'vitest'
import { exactValue, otherUnits, type Unit, valueIn } from './quantity-kinds.ts'
import type { ValueProblem } from './value-problem.ts'
import { parseValue } from './value-text.ts'

/** Where it stands, characters counted from 1, what stands there, and why it is none. */
function refused(problem: ValueProblem): string {
  const { kind, at, found } = problem.kind === 'length' ? problem.problem : problem
  return `character ${at + 1}${found === '' ? '' : `, “${found}”`}: ${kind}`
}

const read = (text: string, bareUnit: Unit | null = null): string => {
  const parsed = parseValue(text, bareUnit)
  if (!parsed.ok) return refused(parsed.error)
  const { value, unit, resolution } = parsed.value
  return `${valueIn(value, unit)} ${unit}, to ${valueIn(resolution, unit)}`
}

describe('parseValue', () => {
  it.each([
    ['2.5 %', '2.5 %, to 0.1'],
    ['-1%', '-1 %, to 1'],
    ['2.50 percent', '2.5 %, to 0.01'],
    ['15°', '15 °, to 1'],
    ['−3.5 deg', '-3.5 °, to 0.1'],
    ['25 lbf·ft', '25 lbf·ft, to 1'],
    ['25.5 ft-lb', '25.5 lbf·ft, to 0.1'],
    ['34 N·m', '34 N·m, to 1'],
    ['34 Nm', '34 N·m, to 1'],
    ['500 lbf', '500 lbf, to 1'],
    ['2.2 kN', '2.2 kN, to 0.1'],
    ['8 count', '8 count, to 1'],
    ['27 3/4 in', '27.75 in, to 0.25'],
    ['3 ft', '3 ft, to 1'],
  ])('reads %s', (text, expected) => {
    expect(read(text)).toBe(expected)
  })

  it.each([
    ['12', '%', '12 %, to 1'],
    ['25', 'lbf·ft', '25 lbf·ft, to 1'],
    ['34 N·m', 'lbf·ft', '34 N·m, to 1'],
    ['8', 'count', '8 count, to 1'],
    ['30', 'in', '30 in, to 1'],
    ['30 in', '%', '30 in, to 1'],
  ] as const)('reads %s where %s is meant', (text, bareUnit, expected) => {
    expect(read(text, bareUnit)).toBe(expected)
  })

  it.each([
    ['', '%', 'character 1: empty'],
    ['1/2 %', null, 'character 1, “1”: fraction'],
    ['½°', null, 'character 1, “½”: fraction'],
    ['2,5 %', null, 'character 2, “,”: comma'],
    ['7.5', 'count', 'character 1, “7.5”: not whole'],
    ['-8', 'count', 'character 2, “8”: below zero'],
    ['-25 lbf·ft', null, 'character 2, “25”: below zero'],
    ['2.1234567 %', null, 'character 1, “2.1234567”: too fine'],
    ['25 in-lbf', null, 'character 3, “ in-lbf”: unknown unit'],
    ['25 nm', 'N·m', 'character 3, “ nm”: unknown unit'],
    ['twelve', '%', 'character 1, “twelve”: not-a-number'],
  ] as const)('refuses %s where %s is meant', (text, bareUnit, expected) => {
    expect(read(text, bareUnit)).toBe(expected)
  })
})

test('a decimal of up to six places comes back as it was published, in every unit but those of length', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 2_000_000_000 }), fc.constantFrom(...otherUnits), (millionths, unit) => {
      const value = unit === 'count' ? millionths : millionths / 1e6
      expect(valueIn(exactValue(value, unit), unit)).toBe(value)
    }),
    { seed: 811 },
  )
})

test('what is nearer to a limit than half a step in another unit lies on it, and nothing else does', () => {
  const limit = exactValue(25, 'lbf·ft')
  // 25 lbf·ft are 33.895448708285 N·m.
  expect(exactValue(33.895448708, 'N·m')).toBe(limit)
  expect(exactValue(33.895448709, 'N·m')).toBe(limit + 1)
  expect(exactValue(33.895448707, 'N·m')).toBe(limit - 1)
})
