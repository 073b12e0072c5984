import type { LayoutPanel } from '../layout/layout.ts'
import type { Barrier } from '../staking/barrier.ts'

/** What hangs as one panel of the layout. */
export interface PanelKind {
  readonly inches: number
  /** As its sheet calls it; null in the run. */
  readonly name: string | null
  readonly gauge: Gauge
  /** Layers of rail: 2 where it is nested. */
  readonly layers: 1 | 2
  /** Hangs already. */
  readonly hung: boolean
}

export type Gauge = '12 gauge' | '10 gauge'

/**
 * The kind of a panel. Rail is 12 gauge (0.105 in, class A of AASHTO M 180) unless the sheet's name for the panel says
 * 10 gauge; nested where the layout doubles it or its name says so.
 */
export function panelKind(panel: LayoutPanel, barrier: Barrier): PanelKind {
  const name = nameOf(panel, barrier)
  return {
    inches: panel.inches,
    name,
    gauge: /\b10 gauge\b/.test(name ?? '') ? '10 gauge' : '12 gauge',
    layers: panel.nested || /\bnested\b/.test(name ?? '') ? 2 : 1,
    hung: panel.role === 'hung',
  }
}

function nameOf(panel: LayoutPanel, { first, second }: Barrier): string | null {
  const end = panel.unit === 'first' ? first : panel.unit === 'second' ? second : null
  if (end?.kind !== 'unit' || panel.ownNumber === null) return null
  const { own, adapters } = end.sheet.panels
  const known = panel.role === 'adapter' ? adapters.find(({ inches }) => inches === panel.inches) : null
  return (known ?? own[panel.ownNumber - 1])?.name ?? null
}

/** Whether both ends of the splice are thrie beam, which has other bolts than W-beam. */
export const isThrieSplice = (before: PanelKind, after: PanelKind): boolean =>
  /\bthrie/.test(before.name ?? '') && /\bthrie/.test(after.name ?? '')
