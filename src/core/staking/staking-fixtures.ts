import { shippedSheets } from '../../sheets/shipped-sheets.ts'
import type { EndSheet, LongitudinalSheet } from '../hardware/hardware-sheet.ts'
import type { LayoutRequest } from '../layout/layout.ts'
import { solveLayout } from '../layout/solve-layout.ts'
import type { Barrier } from './barrier.ts'

export const shippedEnd = (id: string): EndSheet => shippedSheets.find((sheet) => sheet.id === id) as EndSheet

/** The best run of a shipped system between two end units, with the stretch to be shielded in inches. */
export function laidBarrier(
  system: string,
  first: EndSheet,
  second: EndSheet,
  need: readonly [number, number],
  more: Partial<LayoutRequest> = {},
): Barrier & { readonly system: LongitudinalSheet } {
  const sheet = shippedSheets.find(({ id }) => id === system) as LongitudinalSheet
  const ends = {
    first: { kind: 'unit', sheet: first, atInches: null },
    second: { kind: 'unit', sheet: second, atInches: null },
  } as const
  const solved = solveLayout({
    system: sheet,
    ...ends,
    need: { fromInches: need[0], toInches: need[1] },
    stock: null,
    obstructions: [],
    reduced: [],
    standing: null,
    mayExtendInches: 600,
    ...more,
  })
  const layout = solved.ok ? [...solved.value.runs][0] : undefined
  if (layout === undefined) throw new Error('the sample run cannot be laid out')
  return { layout, system: sheet, first: more.first ?? ends.first, second: more.second ?? ends.second, flare: null }
}
