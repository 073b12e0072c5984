import { describe, expect, test } from 'vitest'
import { entryId, entryIdAfter } from './entry-id.ts'

describe('entryId', () => {
  test('gives the example of RFC 9562, appendix A.6', () => {
    const random = Uint8Array.from([0x0c, 0xc3, 0x18, 0xc4, 0xdc, 0x0c, 0x0c, 0x07, 0x39, 0x8f])
    expect(entryId(0x017f22e279b0, random)).toBe('017f22e2-79b0-7cc3-98c4-dc0c0c07398f')
  })

  test('sorts by time, whatever the random bytes are', () => {
    const [high, low] = [new Uint8Array(10).fill(255), new Uint8Array(10)]
    expect(entryId(1000, high) < entryId(1001, low)).toBe(true)
  })

  test('refuses a time that is none and random bytes that are too few', () => {
    expect(() => entryId(-1, new Uint8Array(10))).toThrow(RangeError)
    expect(() => entryId(1000, new Uint8Array(9))).toThrow(RangeError)
  })
})

describe('entryIdAfter', () => {
  test('follows every id that was known, and passes over those of another make', () => {
    const [high, low] = [new Uint8Array(10).fill(255), new Uint8Array(10)]
    const [one, other] = [entryId(0x017f22e279b0, high), entryId(0x017f22e279b1, high)]
    const next = entryIdAfter([other, one, 'r12'], low)
    expect(next > other).toBe(true)
    expect(next.slice(0, 13)).toBe('017f22e2-79b2')
    expect(entryIdAfter(['r12'], low)).toBe('00000000-0001-7000-8000-000000000000')
  })
})
