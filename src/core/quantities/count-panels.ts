import type { Beam, SheetPanel } from '../hardware/hardware-sheet.ts'
import { beamOf, railOfRun } from '../hardware/make.ts'
import { type SheetText, sheetText } from '../hardware/sheet-text.ts'
import type { LayoutPanel } from '../layout/layout.ts'
import { sheetOf } from '../layout/sheet-of.ts'
import type { Barrier } from '../staking/barrier.ts'

/** What hangs as one panel of the layout; layers are 2 where the layout doubles it too. */
export interface PanelKind extends Beam {
  readonly inches: number
  /** As its sheet calls it; null in the run. */
  readonly name: SheetText | null
  /** Hangs already. */
  readonly hung: boolean
}

/** The kind of a panel, as its end unit's sheet says; else rail of the run. */
export function panelKind(panel: LayoutPanel, barrier: Barrier): PanelKind {
  const known = sheetPanelOf(panel, barrier)
  const { profile, gauge, layers } = known === null ? railOfRun : beamOf(known)
  const sheet = sheetOf(barrier, panel.unit)
  return {
    inches: panel.inches,
    name: known === null ? null : sheetText(sheet, known.name),
    profile,
    gauge,
    layers: panel.nested ? 2 : layers,
    hung: panel.role === 'hung',
  }
}

function sheetPanelOf(panel: LayoutPanel, { first, second }: Barrier): SheetPanel | null {
  const end = panel.unit === 'first' ? first : panel.unit === 'second' ? second : null
  if (end?.kind !== 'unit' || panel.ownNumber === null) return null
  const { own, adapters } = end.sheet.panels
  const known = panel.role === 'adapter' ? adapters.find(({ inches }) => inches === panel.inches) : undefined
  return known ?? own[panel.ownNumber - 1] ?? null
}

/** Whether both panels of the splice have a thrie-beam end there, which has other bolts than W-beam. */
export const isThrieSplice = (before: PanelKind, after: PanelKind): boolean =>
  before.profile !== 'W' && after.profile !== 'W'
