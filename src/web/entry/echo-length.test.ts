import { describe, expect, test } from 'vitest'
import { parseLength } from '../../core/units/length-text.ts'
import { echoLength } from './echo-length.ts'

const echo = (text: string): string => {
  const parsed = parseLength(text, null)
  return parsed.ok ? echoLength(parsed.value.nanometres, parsed.value.unit) : 'refused'
}

describe('echoLength', () => {
  test('gives feet and inches, inches and metric of the same length', () => {
    expect(echo('6\'-3"')).toBe('6 ft 3 in = 75 in = 1.9050 m')
    expect(echo('27 3/4 in')).toBe('2 ft 3 3/4 in = 27 3/4 in = 704.85 mm')
    expect(echo('4¾ in')).toBe('4 3/4 in = 120.65 mm')
  })

  test('says when the other unit only comes near', () => {
    expect(echo('1/16 in')).toBe('1/16 in ≈ 1.59 mm')
    expect(echo('787 mm')).toBe('787.00 mm ≈ 30.984 in')
  })
})
