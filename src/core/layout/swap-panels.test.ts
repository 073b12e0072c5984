import { describe, expect, it } from 'vitest'
import type { EndSheet, LongitudinalSheet } from '../hardware/hardware-sheet.ts'
import { shippedSheets } from '../hardware/shipped-sheets.ts'
import type { RunEnd } from './layout.ts'
import { solveLayout } from './solve-layout.ts'
import { swapPanels } from './swap-panels.ts'

const sheet = (id: string) => shippedSheets.find((one) => one.id === id)!
const system = sheet('w-beam-midspan-31') as LongitudinalSheet
const first: RunEnd = { kind: 'unit', sheet: sheet('flared-terminal-31') as EndSheet, atInches: null }
const second: RunEnd = { kind: 'unit', sheet: sheet('trailing-anchor-31') as EndSheet, atInches: null }
const solved = solveLayout({
  system,
  first,
  second,
  need: { fromInches: 0, toInches: 1000 },
  stock: null,
  obstructions: [],
  reduced: [],
  standing: null,
  mayExtendInches: 600,
})
if (!solved.ok) throw new Error('not solved')
const [layout] = solved.value.runs as Iterable<import('./layout.ts').Layout>
const hangs = layout!.panels.map(({ inches }) => inches)

describe('swapPanels', () => {
  it('has nothing to exchange when the panels hang as laid out', () => {
    expect(swapPanels(layout!, system, first, second, hangs)).toEqual([])
  })

  it('exchanges two standard panels for the two odd ones that bring the splices midway between posts', () => {
    expect(hangs).toEqual([150, 150, 112.5, 300, 300, 300, 150, 187.5])
    const wrong = [150, 150, 150, 300, 300, 300, 150, 150]
    expect(swapPanels(layout!, system, first, second, wrong)).toEqual([
      { kind: 'exchange', panel: 3, from: 150, to: 112.5 },
      { kind: 'exchange', panel: 8, from: 150, to: 187.5 },
    ])
  })

  it('puts in a panel where one is missing', () => {
    const short = hangs.filter((_, i) => i !== 3)
    expect(swapPanels(layout!, system, first, second, short)).toHaveLength(1)
  })
})
