import { describe, expect, it } from 'vitest'
import { marksIn, partsOf, unmarked } from './marked-values.ts'
import { contentOf, sheetText } from './sheet-text.ts'

describe('a text of a sheet', () => {
  it.each([
    ['{27 3/4 in}', { written: '27 3/4 in', value: 27.75, unit: 'in' }],
    ['{5-in}', { written: '5-in', value: 5, unit: 'in' }],
    ['{9 ft 4 1/2 in}', { written: '9 ft 4 1/2 in', value: 112.5, unit: 'in' }],
    ['{2 ft}', { written: '2 ft', value: 2, unit: 'ft' }],
    ['{705 mm}', { written: '705 mm', value: 705, unit: 'mm' }],
    ['{25 lbf·ft}', { written: '25 lbf·ft', value: 25, unit: 'lbf·ft' }],
    ['{2.5 %}', { written: '2.5 %', value: 2.5, unit: '%' }],
  ])('marks %s as a value', (text, value) => {
    expect(partsOf(`At most ${text}, then.`)).toEqual(['At most ', value, ', then.'])
  })

  it.each(['1,250 ft of rail', '31 in', 'a {brace} that is none', '{31}', '{}', '5/8 x 1 1/4 in bolts'])(
    'has no value in %s, which stays as it is',
    (text) => {
      expect(partsOf(text).join('')).toBe(text)
      expect(marksIn(text)).toBe('')
    },
  )

  it('marks the same values in other words and another order', () => {
    expect(marksIn('{5-in} side up, {3-in} side down')).toBe(marksIn('lado de {3 in} abajo, el de {5 in} arriba'))
    expect(marksIn('{5-in} side up')).not.toBe(marksIn('lado de {3 in} arriba'))
  })

  it('is the same text before and after its values were marked', () => {
    const texts = ['The gap is 18 in or less.', 'The gap is {18 in} or less.', 'The gap is {17 in} or less.']
    const [before, after, other] = texts.map((own) => contentOf(sheetText({ id: 'one', version: '1.0.0' }, own)))
    expect(after).toBe(before)
    expect(other).not.toBe(before)
    expect(unmarked(texts[1]!)).toBe(texts[0])
  })
})
