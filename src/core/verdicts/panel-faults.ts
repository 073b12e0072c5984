import { sheetText } from '../hardware/sheet-text.ts'
import { sheetOf } from '../layout/sheet-of.ts'
import { wantedLength } from '../requirements/as-counted.ts'
import type { RunModel } from '../requirements/run-model.ts'
import { findingOf, type Judged, type JudgedById } from './judged.ts'
import type { ExchangePanel, RemedyStep } from './remedy.ts'
import type { Finding } from './verdict.ts'

/** Panels of another length that belong together, and the splices that lie wrong because of them. */
interface Stretch {
  readonly panels: Judged[]
  readonly splices: Judged[]
  /** The first panel that may have shifted them. */
  readonly from: number
}

/**
 * Wrong panels, each stretch of them by itself: from the first panel of another length to the one after which what hangs
 * beyond is shifted by whole post spaces or not at all. That is reckoned from the panels alone, so that a stretch stays
 * what it is while others are mended. Each panel is exchanged for the one that the layout gives there, so that a unit
 * keeps its own panels and every splice comes right. A splice that is wrong follows from the nearest wrong panel before
 * it, as long as what hangs is shifted; else wrong splices are found apart.
 */
export function panelFaults(model: RunModel, byId: JudgedById): readonly Finding[] {
  return wrongStretches(model, byId).map((stretch) => stretchFinding(stretch, model, byId))
}

function wrongStretches(model: RunModel, byId: JudgedById): readonly Stretch[] {
  const full = model.system.spacings.full.inches
  const stretches: Stretch[] = []
  const begin = (from: number): Stretch => {
    const stretch = { panels: [], splices: [], from }
    stretches.push(stretch)
    return stretch
  }
  let open: { readonly stretch: Stretch; shift: number | null } | null = null
  let last: Stretch | null = null
  let shift: number | null = 0
  let apart: Stretch | null = null
  let afterRight = 1
  let lastUnread = Number.POSITIVE_INFINITY
  const { panels, splices } = model.layout
  for (const [i, { id, number }] of panels.entries()) {
    const panel = byId.get(`${id}/panel-length`)
    if (panel?.verdict.verdict === 'unread') lastUnread = number
    if (panel?.verdict.verdict === 'fails') {
      const hangs = hangingInches(panel)
      const { wanted: inches } = wantedLength(model, panels[i]!)
      open ??= { stretch: begin(number), shift: 0 }
      open.stretch.panels.push(panel)
      open.shift = plus(open.shift, hangs, -inches)
      last = open.stretch
      shift = plus(shift, hangs, -inches)
      if (open.shift === null || open.shift % full === 0) open = null
    }
    const after = splices[i]
    const splice = after && byId.get(`${after.id}/splice-position`)
    if (splice?.verdict.verdict === 'fails') {
      if (last !== null && shift !== 0) last.splices.push(splice)
      else {
        apart ??= begin(Math.min(afterRight, lastUnread))
        apart.splices.push(splice)
      }
    } else if (splice?.verdict.verdict === 'meets') {
      apart = null
      afterRight = number + 1
    }
  }
  return stretches
}

const plus = (...lengths: readonly (number | null)[]): number | null =>
  lengths.reduce((sum, length) => (sum === null || length === null ? null : sum + length), 0)

/** The length that was chosen for the panel, or counted; null for another than those on offer. */
function hangingInches({ verdict }: Judged): number | null {
  const { because } = verdict
  const choice = because.kind === 'chosen' ? because.choice : because.kind === 'counted' ? because.id : null
  const inches = Number(choice?.replace('in-', ''))
  return Number.isFinite(inches) ? inches : null
}

function stretchFinding({ panels, splices, from }: Stretch, model: RunModel, byId: JudgedById): Finding {
  const numbers = splices.map(({ requirement }) => requirement.place.number)
  const wrong = panels.map(({ requirement, verdict }) => ({ place: requirement.place, because: verdict.because }))
  const what = [{ kind: 'panels and splices', panels: wrong, splices: numbers }] as const
  if (panels.length === 0) return findingOf(splices, what, [measureStep(from, splices[0]!, model, byId)])
  // A panel that is exchanged is exchanged for the right kind as well.
  const slotted = panels.flatMap(({ requirement }) => {
    const one = byId.get(`${requirement.place.id}/slotted-panel`)
    return one?.verdict.verdict === 'fails' ? [one] : []
  })
  const steps = panels.map((panel) => exchangeStep(panel, model))
  return findingOf([...panels, ...slotted, ...splices], what, steps)
}

function exchangeStep(panel: Judged, model: RunModel): ExchangePanel {
  const { number } = panel.requirement.place
  const hung = model.layout.panels[number - 1]!
  const { unit, role, ownNumber } = hung
  const sheet = sheetOf(model, unit)
  const own = sheet.kind === 'longitudinal' || role !== 'own' ? null : sheet.panels.own[ownNumber! - 1]!
  const name = own?.slotted ? sheetText(sheet, own.name) : null
  return {
    kind: 'exchange panel',
    panel: number,
    from: hangingInches(panel),
    to: wantedLength(model, hung).wanted,
    name,
  }
}

/**
 * The panels before the splice are measured; where all are, something was read wrongly, or no lawful layout has what was
 * counted.
 */
function measureStep(from: number, splice: Judged, { layout }: RunModel, byId: JudgedById): RemedyStep {
  const { id, place } = splice.requirement
  const to = place.number
  const before = layout.panels.slice(from - 1, to).map((panel) => `${panel.id}/panel-length`)
  const unread = before.filter((of) => byId.get(of)?.verdict.verdict === 'unread')
  if (unread.length === 0 && layout.asCounted !== undefined) return { kind: 'lay out again' }
  return unread.length > 0
    ? { kind: 'measure first', what: 'panels', requirements: unread, from, to, using: null }
    : { kind: 'measure first', what: 'splice again', requirements: [id], from, to, using: null }
}
