import type { EndSide } from './end-side.ts'
import type { LayoutRequest, StockPanel } from './layout.ts'
import type { PanelKind } from './panel-orders.ts'
import type { Refusal } from './refusal.ts'
import { inchesOf, type Sixteenths, sixteenths } from './sixteenths.ts'

/** The panel lengths of the run; null when the adapters needed are not in stock. */
export function panelKinds(
  request: LayoutRequest,
  adapters: readonly (Sixteenths | null)[],
  refuse: (refusal: Refusal) => void,
): PanelKind[] | null {
  const { panels } = request.system
  const left = (length: Sixteenths): number | null => {
    if (request.stock === null) return null
    const have: StockPanel | undefined = request.stock.find((panel) => sixteenths(panel.inches) === length)
    if (have === undefined) return 0
    return have.count === null ? null : have.count - adapters.filter((adapter) => adapter === length).length
  }
  for (const adapter of adapters) {
    if (adapter === null) continue
    const have = left(adapter)
    const listed = request.stock === null || request.stock.some((panel) => sixteenths(panel.inches) === adapter)
    if (!listed || (have !== null && have < 0)) {
      refuse({ kind: 'not in stock', panel: inchesOf(adapter) })
      return null
    }
  }
  const kindsOf = (list: readonly { readonly inches: number }[], odd: boolean, endOnly: boolean): PanelKind[] =>
    list.map(({ inches }) => ({ length: sixteenths(inches), odd, endOnly, count: left(sixteenths(inches)) }))
  return [
    ...kindsOf(panels.standard, false, false),
    ...kindsOf(panels.converting, true, false),
    ...kindsOf(panels.endOnly, true, true),
  ]
    .filter((kind) => kind.count !== 0)
    .sort((a, b) => b.length - a.length)
}

/** The run's panels that already hang beyond the first end unit; null when what hangs is not this unit. */
export function hungPrefix(
  request: LayoutRequest,
  side: EndSide,
  refuse: (refusal: Refusal) => void,
): Sixteenths[] | null {
  const hung = (request.standing?.panels ?? []).map(sixteenths)
  const unit = [...side.own, ...(side.adapter === null ? [] : [side.adapter])]
  const differs = unit.findIndex((panel, i) => i < hung.length && hung[i] !== panel)
  if (differs >= 0) {
    refuse({
      kind: 'hung panel differs',
      panel: differs + 1,
      hung: inchesOf(hung[differs]!),
      expected: inchesOf(unit[differs]!),
      unit: side.name,
    })
    return null
  }
  return hung.slice(unit.length)
}

/** The adapter of the first unit that has yet to be hung; what hangs is no longer taken from the stock. */
export const adapterToHang = (request: LayoutRequest, side: EndSide): Sixteenths | null =>
  (request.standing?.panels.length ?? 0) > side.own.length ? null : side.adapter

/** The first of the run's hung panels whose length the run cannot have there; null when none is. @param run  its whole length */
export function misplacedLength(
  { system }: LayoutRequest,
  prefix: readonly Sixteenths[],
  run: Sixteenths,
): { readonly index: number; readonly endOnly: boolean } | null {
  const lengths = (list: readonly { readonly inches: number }[]) => list.map(({ inches }) => sixteenths(inches))
  const anywhere = [...lengths(system.panels.standard), ...lengths(system.panels.converting)]
  const endOnly = lengths(system.panels.endOnly)
  let at = 0
  for (const [index, panel] of prefix.entries()) {
    at += panel
    if (anywhere.includes(panel)) continue
    if (!endOnly.includes(panel)) return { index, endOnly: false }
    if (index > 0 && at !== run) return { index, endOnly: true }
  }
  return null
}
