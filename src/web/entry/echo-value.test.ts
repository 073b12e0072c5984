import { describe, expect, test } from 'vitest'
import { parseValue } from '../../core/units/value-text.ts'
import { echoValue } from './echo-value.ts'

const echo = (text: string): string => {
  const parsed = parseValue(text, null)
  return parsed.ok ? echoValue(parsed.value.value, parsed.value.unit) : 'refused'
}

describe('echoValue', () => {
  test('gives feet and inches, inches and metric of the same length', () => {
    expect(echo('6\'-3"')).toBe('6 ft 3 in = 75 in = 1.9050 m')
    expect(echo('27 3/4 in')).toBe('2 ft 3 3/4 in = 27 3/4 in = 704.85 mm')
    expect(echo('4¾ in')).toBe('4 3/4 in = 120.65 mm')
  })

  test('gives torque and force in both units, and what has one unit in that', () => {
    expect(echo('25 lbf·ft')).toBe('25 lbf·ft ≈ 33.895 N·m')
    expect(echo('2.2 kN')).toBe('2.2 kN ≈ 494.58 lbf')
    expect(echo('0 lbf')).toBe('0 lbf = 0 kN')
    expect(echo('-2.5 %')).toBe('-2.5 %')
    expect(echo('3 deg')).toBe('3°')
    expect(echo('8 count')).toBe('8')
  })

  test('says when the other unit only comes near', () => {
    expect(echo('1/16 in')).toBe('1/16 in ≈ 1.59 mm')
    expect(echo('787 mm')).toBe('787.00 mm ≈ 30.984 in')
  })
})
