import { describe, expect, it } from 'vitest'
import { storableJson } from './storable-json.ts'

describe('storableJson', () => {
  // RFC 8785, section 3.2.3: names are ordered by UTF-16 code units; this is its own example, less one name.
  it('orders names as the example of RFC 8785 does', () => {
    const printed = storableJson({
      '\u20ac': 'Euro Sign',
      '\r': 'Carriage Return',
      '\ufb33': 'Hebrew Letter Dalet With Dagesh',
      '1': 'One',
      '\ud83d\ude00': 'Emoji: Grinning Face',
      '\u00f6': 'Latin Small Letter O With Diaeresis',
    })
    expect(printed.ok && namesIn(printed.value)).toEqual(['\r', '1', '\u00f6', '\u20ac', '\ud83d\ude00', '\ufb33'])
  })

  it('prints equal values alike, whatever order their fields were written in', () => {
    expect(storableJson({ b: 1, a: [true, null] })).toEqual({ ok: true, value: '{"a":[true,null],"b":1}' })
    expect(storableJson({ a: [true, null], b: 1 })).toEqual({ ok: true, value: '{"a":[true,null],"b":1}' })
  })

  it('leaves out a field that is undefined', () => {
    expect(storableJson({ a: undefined, b: 1 })).toEqual({ ok: true, value: '{"b":1}' })
  })

  it.each([
    ['a number that JSON has no form for', { height: Number.NaN }, '.height'],
    ['a hole in a list', { list: [1, undefined] }, '.list[1]'],
    ['a date', { at: new Date(0) }, '.at'],
    ['a function', { f: () => 1 }, '.f'],
    ['U+0000, which jsonb cannot hold', { note: 'a\u0000b' }, '.note'],
    ['half of a surrogate pair', { note: '\ud83d' }, '.note'],
  ])('refuses %s and says where it stands', (_, value, place) => {
    const printed = storableJson(value)
    expect(printed.ok ? null : printed.error.place).toBe(place)
  })

  it('takes 64 levels of nesting and refuses 65', () => {
    expect(storableJson(nested(64)).ok).toBe(true)
    expect(storableJson(nested(65)).ok).toBe(false)
  })
})

function nested(levels: number): unknown {
  return levels === 0 ? 1 : [nested(levels - 1)]
}

/** The names of a flat object's fields, as they stand in its text. */
function namesIn(text: string): readonly string[] {
  return [...text.matchAll(/("(?:[^"\\]|\\.)*"):/g)].map(([, name]) => JSON.parse(name!) as string)
}
