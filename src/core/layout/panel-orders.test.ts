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
