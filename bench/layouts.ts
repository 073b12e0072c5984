import type { EndSheet, LongitudinalSheet } from '../src/core/hardware/hardware-sheet.ts'
import type { Layout, LayoutRequest } from '../src/core/layout/layout.ts'
import { solveLayout } from '../src/core/layout/solve-layout.ts'
import { shippedSheets } from '../src/sheets/shipped-sheets.ts'
import { type BenchRow, figure, medianMilliseconds } from './measure.ts'

const sheetOf = <T>(id: string): T => shippedSheets.find((sheet) => sheet.id === id) as T

/**
 * A 31 in run with both ends free that shields `feet`, with three obstructions: a pipe, a culvert in which one post or
 * two cannot stand, and an inlet.
 */
export function benchRequest(feet: number): LayoutRequest {
  const need = { fromInches: 0, toInches: feet * 12 }
  const obstruction = (name: string, part: number, width: number) => {
    const fromInches = Math.round(part * need.toInches)
    return { name, fromInches, toInches: fromInches + width }
  }
  return {
    system: sheetOf<LongitudinalSheet>('w-beam-midspan-31'),
    first: { kind: 'unit', sheet: sheetOf<EndSheet>('flared-terminal-31'), atInches: null },
    second: { kind: 'unit', sheet: sheetOf<EndSheet>('trailing-anchor-31'), atInches: null },
    need,
    stock: null,
    obstructions: [obstruction('pipe', 0.26, 24), obstruction('culvert', 0.5, 90), obstruction('inlet', 0.77, 36)],
    reduced: [],
    standing: null,
    mayExtendInches: 600,
  }
}

export function bestLayout(request: LayoutRequest): Layout {
  const search = solveLayout(request)
  if (!search.ok) throw new Error(`not a request: ${search.error.kind}`)
  for (const layout of search.value.runs) return layout
  throw new Error('no lawful run')
}

const lengths = [
  { feet: 100, name: '100 ft', times: 200, aim: '' },
  { feet: 1000, name: '1,000 ft', times: 100, aim: 'under 5 ms' },
  { feet: 5000, name: '5,000 ft', times: 30, aim: '' },
  { feet: 26_400, name: '5 miles', times: 9, aim: 'under 1,000 ms' },
] as const

/** The time to the best layout of a run, and how it grows. */
export function benchLayouts(): readonly BenchRow[] {
  const rows: BenchRow[] = []
  let before: { readonly feet: number; readonly ms: number } | null = null
  for (const { feet, name, times, aim } of lengths) {
    const request = benchRequest(feet)
    const ms = medianMilliseconds(() => bestLayout(request), Math.ceil(times / 3), times)
    rows.push({ what: `layout of ${name}`, figure: `${figure(ms)} ms (${figure(1000 / ms)} a second)`, aim })
    if (before !== null) {
      const [longer, slower] = [feet / before.feet, ms / before.ms]
      rows.push({
        what: `  ${figure(longer)} times as long as the one before`,
        figure: `${figure(slower)} times the time`,
        aim: `no more than about ${figure(longer)}`,
      })
    }
    before = { feet, ms }
  }
  return rows
}
