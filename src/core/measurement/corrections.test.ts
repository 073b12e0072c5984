import { describe, expect, it } from 'vitest'
import { correctionsIn } from './corrections.ts'

const read = (id: string, of: string, corrects: string | null = null) => ({ id, of, corrects })
const corrections = (...readings: readonly ReturnType<typeof read>[]) => Object.fromEntries(correctionsIn(readings))

describe('correctionsIn', () => {
  it('has the readings that correct an earlier one of the same thing, in their order', () => {
    expect(corrections(read('a', 'x'), read('b', 'x', 'a'), read('c', 'x', 'a'), read('d', 'x', 'b'))).toEqual({
      a: ['b', 'c'],
      b: ['d'],
    })
  })

  it('has none that names a reading of something else, a later one, itself or one that is not there', () => {
    expect(corrections(read('a', 'x'), read('b', 'y', 'a'))).toEqual({})
    expect(corrections(read('a', 'x', 'b'), read('b', 'x'))).toEqual({})
    expect(corrections(read('a', 'x', 'a'))).toEqual({})
    expect(corrections(read('a', 'x', 'elsewhere'))).toEqual({})
  })
})
