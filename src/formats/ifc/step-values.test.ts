import { describe, expect, it } from 'vitest'
import { globalId } from './global-id.ts'
import { exactReal, label, real, text } from './step-values.ts'

describe('a string', () => {
  it.each([
    // ISO 10303-21:2016, 6.4.3: quotes and backslashes twice, other characters by their code
    ["Don't", "'Don''t'"],
    ['a\\b', "'a\\\\b'"],
    ['αβγ', "'\\X2\\03B103B203B3\\X0\\'"],
    ['1½ in', "'1\\X2\\00BD\\X0\\ in'"],
    ['line\nbreak\u0000', "'line\\X2\\000A\\X0\\break\\X2\\0000\\X0\\'"],
    ['é🚧é', "'\\X2\\00E9\\X0\\\\X4\\0001F6A7\\X0\\\\X2\\00E9\\X0\\'"],
    ['\ud83d', "'\\X2\\FFFD\\X0\\'"],
  ])('%o is written %s', (words, written) => {
    expect(text(words)).toBe(written)
  })

  it('that is a label holds 255 characters', () => {
    expect(label('x'.repeat(255))).toBe(`'${'x'.repeat(255)}'`)
    expect(label('x'.repeat(256))).toBe(`'${'x'.repeat(254)}\\X2\\2026\\X0\\'`)
  })
})

describe('a real', () => {
  it.each([
    [1, '1.'],
    [-0, '0.'],
    [0.25, '0.25'],
    [1e-7, '1.E-7'],
    [-2.5e21, '-2.5E21'],
  ])('%f has a decimal point: %s', (number, written) => {
    expect(exactReal(number)).toBe(written)
  })

  it('is rounded to a thousand millionth', () => {
    expect(real(0.1 + 0.2)).toBe('0.3')
    expect(real(-1e-12)).toBe('0.')
  })

  it('has to be finite', () => {
    expect(() => exactReal(Number.NaN)).toThrow(RangeError)
  })
})

it('writes 128 bits as 2 and 21 times 6, worked by hand', () => {
  // all ones but for the version 1000 in octet 6 and the variant 10 in octet 8
  expect(globalId('any', () => 'f'.repeat(64))).toBe('3$$$$$$$_F$x$$$$$$$$$$')
})
