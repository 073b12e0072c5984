import { describe, expect, test } from 'vitest'
import { entryId, entryIdAfter, isRunIdTooLate, isTooFarAhead } from './entry-id.ts'

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

  test('passes over an id that counts beyond all counting, and is an id still', () => {
    const [most, one] = ['ffffffff-ffff-7fff-bfff-ffffffffffff', entryId(0x017f22e279b0, new Uint8Array(10))]
    expect(entryIdAfter([one, most], new Uint8Array(10)).slice(0, 13)).toBe('017f22e2-79b1')
  })
})

describe('isTooFarAhead', () => {
  const id = (count: number): string => entryId(count, new Uint8Array(10))

  test('is said of an id just further ahead than devices count, and not of one just as far', () => {
    const known = [id(1_700_000_000_000), id(1_700_000_000_005)]
    expect(isTooFarAhead(id(1_800_000_000_005), known)).toBe(false)
    expect(isTooFarAhead(id(1_800_000_000_006), known)).toBe(true)
    expect(isTooFarAhead('ffffffff-ffff-7fff-bfff-ffffffffffff', known)).toBe(true)
  })

  test('is never said of what an honest device made, whatever its clock said', () => {
    const run = id(Date.UTC(1970, 0, 2))
    let known = [run]
    for (let i = 0; i < 2000; i++) {
      const next = entryIdAfter(known, new Uint8Array(10))
      expect(isTooFarAhead(next, known)).toBe(false)
      known = [run, next]
    }
  })
})

describe('isRunIdTooLate', () => {
  test('is said from the year 2101 on', () => {
    expect(isRunIdTooLate(entryId(Date.UTC(2101, 0, 1) - 1, new Uint8Array(10)))).toBe(false)
    expect(isRunIdTooLate(entryId(Date.UTC(2101, 0, 1), new Uint8Array(10)))).toBe(true)
  })
})
