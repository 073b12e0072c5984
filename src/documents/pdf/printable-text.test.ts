import { describe, expect, test } from 'vitest'
import { breakableText, printableData, printableText } from './printable-text.ts'

describe('printableText', () => {
  test('keeps what the trade writes and other alphabets', () => {
    const text = '27¾ ⅛ ⅜ ⅝ ⅞ ½ ¼ ≤ ≥ ± – — “”‘’ ° × µ ² Ääkköset Łódź Ωμέγα Привет שלום مرحبا'
    expect(printableText(text)).toBe(text)
  })

  test('shows by number what the fonts lack, so that nothing is lost', () => {
    expect(printableText('ok 😀 漢')).toBe('ok [U+1F600] [U+6F22]')
    expect(printableText('a\u0000b\ue000')).toBe('a[U+0000]b[U+E000]')
    expect(printableText('\ud800')).toBe('[U+D800]')
  })

  test('shows what would turn the reading order round', () => {
    expect(printableText('fails \u202Esteem')).toBe('fails [U+202E]steem')
  })

  test('makes one space of line breaks and tabs, and drops signs that only choose a look', () => {
    expect(printableText('a\r\n\tb\u2028c ✔\ufe0f')).toBe('a b c ✔')
  })
})

describe('breakableText', () => {
  test('gives a long word places to break, and leaves a short one and ids with hyphens alone', () => {
    expect(
      breakableText('x'.repeat(60))
        .split('\u200b')
        .map((part) => part.length),
    ).toEqual([18, 18, 18, 6])
    expect(breakableText('acknowledgement of post-12/rail-height')).toBe('acknowledgement of post-12/rail-height')
    expect(breakableText('0190a1b2-0094-7000-8000-00000000000f')).toBe(
      '0190a1b2-\u200b0094-\u200b7000-\u200b8000-\u200b00000000000f',
    )
  })
})

test('printableData reaches every text at any depth and nothing else', () => {
  expect(printableData({ a: ['😀', 1, null, true], b: { c: '\n' } })).toEqual({
    a: ['[U+1F600]', 1, null, true],
    b: { c: ' ' },
  })
})
