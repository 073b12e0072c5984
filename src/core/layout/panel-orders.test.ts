import { describe, expect, it } from 'vitest'
import { panelOrders } from './panel-orders.ts'

const kind = (length: number, odd = false) => ({ length, odd, endOnly: false, count: null })

describe('panelOrders', () => {
  it('meets every order exactly once: orders of ones and twos are counted by the Fibonacci numbers', () => {
    // OEIS A000045: compositions of n into 1s and 2s number F(n + 1)
    const fibonacci = [1, 2, 3, 5, 8, 13, 21, 34, 55, 89]
    for (const [i, count] of fibonacci.entries()) {
      const orders = [
        ...panelOrders({
          length: i + 1,
          step: 1,
          kinds: [kind(1), kind(2)],
          isRunStart: true,
          spliceAllowed: () => true,
        }),
      ]
      expect(orders).toHaveLength(count)
      expect(new Set(orders.map(({ panels }) => panels.join())).size).toBe(count)
    }
  })

  it('yields fewest odd panels first, then fewest pieces', () => {
    const orders = [
      ...panelOrders({
        length: 8,
        step: 1,
        kinds: [kind(1, true), kind(2), kind(4)],
        isRunStart: true,
        spliceAllowed: () => true,
      }),
    ]
    const keys = orders.map(({ panels, oddPanels }) => oddPanels * 100 + panels.length)
    expect(keys).toEqual([...keys].sort((a, b) => a - b))
    expect(orders[0]!.panels).toEqual([4, 4])
  })

  it('never splices where it may not, and keeps to what is in stock', () => {
    const orders = [
      ...panelOrders({
        length: 6,
        step: 1,
        kinds: [{ ...kind(2), count: 1 }, kind(1)],
        isRunStart: true,
        spliceAllowed: (at) => at !== 3,
      }),
    ]
    expect(orders.length).toBeGreaterThan(0)
    for (const { panels } of orders) {
      expect(panels.filter((panel) => panel === 2)).toHaveLength(1)
      let at = 0
      for (const panel of panels) {
        at += panel
        expect(at).not.toBe(3)
      }
    }
  })
})

describe('which panels may lie where', () => {
  const orders = (length: number, kinds: Parameters<typeof panelOrders>[0]['kinds'], isRunStart = true) => {
    const spliceAllowed = (at: number) => {
      if (at <= 0 || at >= length) throw new Error('the two ends are not asked')
      return true
    }
    return [...panelOrders({ length, step: 1, kinds, isRunStart, spliceAllowed })].map(({ panels }) => panels)
  }
  const forEnds = { ...kind(1, true), endOnly: true }

  it('is first or last for one that is for an end, and last alone where panels hang before', () => {
    expect(orders(5, [forEnds, kind(2)]).sort()).toEqual([
      [1, 2, 2],
      [2, 2, 1],
    ])
    expect(orders(5, [forEnds, kind(2)], false)).toEqual([[2, 2, 1]])
    expect(orders(6, [forEnds, kind(2)]).sort()).toEqual([
      [1, 2, 2, 1],
      [2, 2, 2],
    ])
    expect(orders(1, [forEnds])).toEqual([[1]])
    expect(orders(5, [kind(2)])).toEqual([])
  })

  // by hand: of ones alone 1; one two among five 5; one three among four 4; both and a one 3! = 6
  it('keeps to what is in stock of two lengths at once', () => {
    const stock = [kind(1), { ...kind(2), count: 1 }, { ...kind(3), count: 1 }]
    expect(orders(6, stock)).toHaveLength(1 + 5 + 4 + 6)
    // of twos at most two among sixes: 1 + 5 + 6
    expect(orders(6, [kind(1), { ...kind(2), count: 2 }])).toHaveLength(12)
  })

  it('has the longer panel first among orders that cost the same', () => {
    expect(orders(4, [kind(1), kind(3)])).toEqual([
      [3, 1],
      [1, 3],
      [1, 1, 1, 1],
    ])
  })
})
