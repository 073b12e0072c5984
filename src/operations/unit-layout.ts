import type { EndSheet, LongitudinalSheet, SheetPanel } from '../core/hardware/hardware-sheet.ts'
import { countedLayout } from '../core/layout/counted-layout.ts'
import type { Layout, RunEnd } from '../core/layout/layout.ts'

/** Nobody looked at the other end of a unit that is shown by itself. */
export const notLooked: RunEnd = { kind: 'unknown', because: 'not looked at', atInches: null, posts: 0, panels: 0 }

/**
 * One end unit as its sheet has it, with a panel of the run beyond it.
 * @param adapter  of several the one that it has; null where its sheet names none
 */
export function unitLayout(sheet: EndSheet, system: LongitudinalSheet, adapter: SheetPanel | null): Layout {
  const [{ inches: beyond } = { inches: 150 }] = system.panels.standard
  const panels = [...sheet.panels.own, ...(adapter === null ? [] : [adapter])]
    .map(({ inches }) => inches)
    .concat(beyond)
  const rail = panels.reduce((sum, inches) => sum + inches, 0)
  const full = system.spacings.full.inches
  const own = sheet.posts.map(({ along }) => along)
  const last = own.at(-1) ?? 0
  const more = Array.from({ length: Math.max(0, Math.floor((rail - last) / full)) }, (_, i) => last + (i + 1) * full)
  const zero = own[0] ?? 0
  const posts = [...own, ...more].map((along) => along - zero)
  return countedLayout({ system, first: { kind: 'unit', sheet, atInches: null }, second: notLooked }, { panels, posts })
}
