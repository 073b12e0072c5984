import { describe, expect, it } from 'vitest'
import { shippedSheets } from '../../sheets/shipped-sheets.ts'
import type { EndSheet, LongitudinalSheet } from '../hardware/hardware-sheet.ts'
import type { Layout, LayoutRequest, RunEnd } from './layout.ts'
import type { Refusal } from './refusal.ts'
import { solveLayout } from './solve-layout.ts'

const sheetOf = <T>(id: string): T => shippedSheets.find((one) => one.id === id) as T
const unit = (id: string, atInches: number | null = null): RunEnd => ({
  kind: 'unit',
  sheet: sheetOf<EndSheet>(id),
  atInches,
})

/** The flared terminal's own panels are 150 and 150 in, its adapter 112.5 or 187.5 in; the run begins 412.5 or 487.5 in on. */
function solve(changes: Partial<LayoutRequest>): { layout: Layout | undefined; refused: readonly Refusal[] } {
  const solved = solveLayout({
    system: sheetOf<LongitudinalSheet>('w-beam-midspan-31'),
    first: unit('flared-terminal-31'),
    second: unit('trailing-anchor-31'),
    need: { fromInches: 300, toInches: 1200 },
    stock: null,
    obstructions: [],
    reduced: [],
    standing: null,
    mayExtendInches: 600,
    ...changes,
  })
  if (!solved.ok) throw new Error(solved.error.kind)
  const [layout] = solved.value.runs
  return { layout, refused: solved.value.refused() }
}

const hung = (...panels: number[]) => ({ postOneAtInches: 0, panels, postsDriven: 0 })
const lengths = (layout: Layout | undefined) => layout?.panels.map(({ inches }) => inches)

describe('panels that hang', () => {
  it('may end at a standing splice that is not where the system puts its own', () => {
    // 412.5 + 150 + 187.5 = 750: an odd panel comes down on the post at 750 in, where the standing run begins.
    const second: RunEnd = { kind: 'standing splice', atInches: 750, position: 'post' }
    const panels = [150, 150, 112.5, 150, 187.5]
    const { layout } = solve({ second, need: { fromInches: 300, toInches: 700 }, standing: hung(...panels) })
    expect(lengths(layout)).toEqual(panels)
  })

  it('are no longer taken from the stock, the adapter of the terminal included', () => {
    const stock = [
      { inches: 150, count: null },
      { inches: 112.5, count: 1 },
    ]
    expect(solve({ stock, standing: hung(150, 150) }).layout).toBeUndefined()
    expect(solve({ stock, standing: hung(150, 150, 112.5) }).layout?.panels.at(-1)?.inches).toBe(112.5)
    const used = [stock[0]!, { inches: 112.5, count: 0 }]
    expect(solve({ stock: used, standing: hung(150, 150, 112.5) }).layout).toBeUndefined()
  })

  it('may have an end-only length next to an end of the run, and nowhere else', () => {
    expect(lengths(solve({ standing: hung(150, 150, 112.5, 75, 300) }).layout)?.slice(3, 5)).toEqual([75, 300])
    const { layout, refused } = solve({ standing: hung(150, 150, 112.5, 300, 75) })
    // Only where the run ends after it: 412.5 + 375 = 787.5 is too short for the need.
    expect(layout).toBeUndefined()
    expect(refused).toContainEqual({ kind: 'hung length', panel: 5, hung: 75, endOnly: true })
    // With the anchor's 112.5 in the run is 900 in long, of which the last 450 in do not count.
    const last = solve({ need: { fromInches: 300, toInches: 450 }, standing: hung(150, 150, 112.5, 300, 75) })
    expect(lengths(last.layout)).toEqual([150, 150, 112.5, 300, 75, 112.5])
  })

  it('are followed by no end-only panel but the last of the run', () => {
    // A 112.5 in panel would put its splice on a post, so only 75 in ones could fill the run, and only one of them may.
    const stock = [75, 112.5].map((inches) => ({ inches, count: null }))
    const { layout } = solve({ stock, need: { fromInches: 300, toInches: 900 }, standing: hung(150, 150, 112.5, 150) })
    expect(layout).toBeUndefined()
  })

  it('reach no farther than to the second end', () => {
    const second: RunEnd = { kind: 'standing splice', atInches: 750, position: 'post' }
    const asked = { second, need: { fromInches: 300, toInches: 700 } }
    const { layout, refused } = solve({ ...asked, standing: hung(150, 150, 112.5, 300, 150) })
    expect(layout).toBeUndefined()
    expect(refused).toContainEqual({ kind: 'hung too long', by: 112.5 })
  })

  it('have a length of the system, though splices would fall right with another', () => {
    const { layout, refused } = solve({ standing: hung(150, 150, 112.5, 225) })
    expect(layout).toBeUndefined()
    expect(refused).toContainEqual({ kind: 'hung length', panel: 4, hung: 225, endOnly: false })
  })
})

describe('posts that are driven', () => {
  it('count through the second end unit, its innermost post first', () => {
    // 900 in long: the terminal's posts to 375 in, the run's to 750, the anchor's at 825 and 900, which are posts 12 and 13.
    const second = unit('trailing-anchor-31', 900)
    const asked = { second, need: { fromInches: 300, toInches: 450 } }
    const standing = (postsDriven: number) => ({ ...hung(), postsDriven })
    const pipe = (at: number) => [{ name: 'a pipe', fromInches: at - 1, toInches: at + 1 }]
    expect(solve({ ...asked, obstructions: pipe(825), standing: standing(12) }).layout).toBeDefined()
    expect(solve({ ...asked, obstructions: pipe(825), standing: standing(11) }).layout).toBeUndefined()
    expect(solve({ ...asked, obstructions: pipe(900), standing: standing(13) }).layout).toBeDefined()
    expect(solve({ ...asked, obstructions: pipe(900), standing: standing(12) }).layout).toBeUndefined()
  })
})

describe('post 1 that stands', () => {
  const first = unit('bridge-end-31', 0)
  const second = unit('flared-terminal-31')
  // The first post of the bridge end is 18.75 in from the connection.
  it.each([
    { postOneAtInches: 18.75, by: null },
    { postOneAtInches: 18.75 + 1 / 16, by: 1 / 16 },
    { postOneAtInches: 0, by: 18.75 },
  ])('at $postOneAtInches in belongs to a bridge at 0, or is refused', ({ postOneAtInches, by }) => {
    const { layout, refused } = solve({ first, second, standing: { postOneAtInches, panels: [], postsDriven: 0 } })
    if (by === null) expect(layout?.postOneAtInches).toBe(postOneAtInches)
    else {
      expect(layout).toBeUndefined()
      expect(refused).toContainEqual({ kind: 'stands elsewhere', by })
    }
  })
})
