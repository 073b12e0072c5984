import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { inLogOrder } from './log-order.ts'

const entry = (id: string, supersedes: string | null = null, of = 'post-1/stub-height') => ({
  ...{ id, kind: 'reading', supersedes, body: { of } },
})
const ids = (entries: readonly ReturnType<typeof entry>[]): readonly string[] => inLogOrder(entries).map(({ id }) => id)

describe('inLogOrder', () => {
  test('is by id', () => {
    expect(ids([entry('c'), entry('a'), entry('b')])).toEqual(['a', 'b', 'c'])
  })

  test('has a correction after what it corrects, also where ids were made by a clock that was behind', () => {
    expect(ids([entry('a', 'c'), entry('b'), entry('c', 'd'), entry('d')])).toEqual(['d', 'c', 'a', 'b'])
  })

  test('keeps a correction whose reading is not here', () => {
    expect(ids([entry('b', 'elsewhere'), entry('a')])).toEqual(['a', 'b'])
  })

  test('moves nothing for a correction that names a reading of something else', () => {
    const other = entry('a', 'c', 'post-2/stub-height')
    expect(ids([other, entry('b'), entry('c')])).toEqual(['a', 'b', 'c'])
  })

  test('is the same for the same entries, however they are held', () => {
    const log = fc.uniqueArray(fc.record({ id: fc.string({ maxLength: 3 }), on: fc.option(fc.nat(20)) }), {
      selector: ({ id }) => id,
      maxLength: 20,
    })
    const held = log.chain((made) => {
      // What an entry supersedes was made before it, so nothing supersedes itself.
      const entries = made.map(({ id, on }, i) => entry(id, on === null || on >= i ? null : made[on]!.id))
      const shuffled = fc.shuffledSubarray(entries, { minLength: entries.length })
      return fc.record({ entries: fc.constant(entries), shuffled })
    })
    fc.assert(
      fc.property(held, ({ entries, shuffled }) => {
        const order = ids(entries)
        expect(ids(shuffled)).toEqual(order)
        expect([...order].sort()).toEqual(entries.map(({ id }) => id).sort())
        for (const { id, supersedes } of entries)
          if (supersedes !== null) expect(order.indexOf(supersedes)).toBeLessThan(order.indexOf(id))
      }),
      { seed: 20261125, numRuns: 500 },
    )
  })
})
