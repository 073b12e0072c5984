import fc from 'fast-check'
import { expect, it } from 'vitest'
import { spreadRows } from './spread.ts'

const spans = fc.array(
  fc
    .tuple(fc.integer({ min: 0, max: 500 }), fc.integer({ min: 1, max: 60 }))
    .map(([from, width]) => ({ from, to: from + width })),
)

it('spreadRows never lets two spans of one row overlap, and uses a row only when it must', () => {
  fc.assert(
    fc.property(spans, (list) => {
      const rows = spreadRows(list)
      list.forEach((a, i) => {
        list.forEach((b, j) => {
          if (i < j && rows[i] === rows[j]) expect(a.to <= b.from || b.to <= a.from).toBe(true)
        })
      })
      const most = Math.max(0, ...list.map((a) => list.filter((b) => b.from <= a.from && a.from < b.to).length))
      expect(Math.max(-1, ...rows) + 1).toBe(most)
    }),
    { seed: 1 },
  )
})
