import { type RunModel, sheetOf } from '../requirements/run-model.ts'
import { describeReason } from './describe-reason.ts'
import { findingOf, type Judged, type JudgedById } from './judged.ts'
import type { ExchangePanel, RemedyStep } from './remedy.ts'
import type { Finding } from './verdict.ts'

/** Panels of another length that belong together, and the splices that lie wrong because of them. */
interface Stretch {
  readonly panels: Judged[]
  readonly splices: Judged[]
  /** How far the splices beyond it are shifted, inches; null when a panel's length is not known. */
  shift: number | null
  /** The first panel that may have shifted them. */
  readonly from: number
}

/**
 * Wrong panels, each stretch of them by itself: from the first panel of another length to where the splices come right
 * again. Each panel is exchanged for the one that the layout gives there, so that a unit keeps its own panels and every
 * splice comes right. Wrong splices without a wrong panel before them are found apart.
 */
export function panelFaults(model: RunModel, byId: JudgedById): readonly Finding[] {
  const { panels } = model.layout
  const full = model.system.spacings.full.inches
  const findings: Finding[] = []
  let open: Stretch | null = null
  let afterRight = 1
  const close = (): void => {
    if (open !== null) findings.push(stretchFinding(open, model, byId))
    open = null
  }
  for (const { number, inches } of panels) {
    const panel = byId.get(`panel-${number}/panel-length`)!
    const splice = byId.get(`splice-${number}/splice-position`)
    if (panel.verdict.verdict === 'fails') {
      if (open?.panels.length === 0) close()
      open ??= { panels: [], splices: [], shift: 0, from: number }
      open.panels.push(panel)
      const hangs = hangingInches(panel)
      open.shift = open.shift === null || hangs === null ? null : open.shift + hangs - inches
    }
    const isWrong = splice?.verdict.verdict === 'fails'
    if (isWrong) {
      open ??= { panels: [], splices: [], shift: null, from: afterRight }
      open.splices.push(splice)
    }
    const isRight = splice === undefined || splice.verdict.verdict === 'meets'
    if (isRight) afterRight = number + 1
    if (!isWrong && (isRight || isWhole(open?.shift ?? null, full))) close()
  }
  close()
  return findings
}

const isWhole = (shift: number | null, spaces: number): boolean => shift !== null && shift % spaces === 0

/** The length that was chosen for the panel; null for another than those on offer. */
function hangingInches({ requirement, verdict }: Judged): number | null {
  const { look } = requirement
  const { because } = verdict
  if (look.kind !== 'choose' || because.kind !== 'chosen') return null
  const inches = Number(look.choices.find(({ label }) => label === because.label)!.id.replace('in-', ''))
  return Number.isFinite(inches) ? inches : null
}

function stretchFinding({ panels, splices, from }: Stretch, model: RunModel, byId: JudgedById): Finding {
  const numbers = splices.map(({ requirement }) => requirement.place.number)
  const said = panels.map(({ requirement, verdict }) => `${requirement.place.name}: ${describeReason(verdict.because)}`)
  if (numbers.length > 0) said.push(`splice${numbers.length > 1 ? 's' : ''} ${numbers.join(', ')} out of place`)
  const what = `${said.join('; ')}.`
  if (panels.length === 0) return findingOf(splices, what, [measureStep(from, splices[0]!, byId)])
  // A panel that is exchanged is exchanged for the right kind as well.
  const slotted = panels.flatMap(({ requirement }) => {
    const one = byId.get(`panel-${requirement.place.number}/slotted-panel`)
    return one?.verdict.verdict === 'fails' ? [one] : []
  })
  const steps = panels.map((panel) => exchangeStep(panel, model))
  return findingOf([...panels, ...slotted, ...splices], what, steps)
}

function exchangeStep(panel: Judged, model: RunModel): ExchangePanel {
  const { number } = panel.requirement.place
  const { inches, unit, role, ownNumber } = model.layout.panels[number - 1]!
  const sheet = sheetOf(model, unit)
  const own = sheet.kind === 'longitudinal' || role !== 'own' ? null : sheet.panels.own[ownNumber! - 1]!
  const name = own?.slotted ? own.name : null
  return { kind: 'exchange panel', panel: number, from: hangingInches(panel), to: inches, name }
}

/** The panels before the splice are measured; where all are, something was read wrongly. */
function measureStep(from: number, splice: Judged, byId: JudgedById): RemedyStep {
  const { id, place } = splice.requirement
  const to = place.number
  const before = Array.from({ length: to - from + 1 }, (_, i) => `panel-${from + i}/panel-length`)
  const unread = before.filter((of) => byId.get(of)!.verdict.verdict === 'unread')
  return unread.length > 0
    ? { kind: 'measure first', what: 'panels', requirements: unread, from, to }
    : { kind: 'measure first', what: 'splice again', requirements: [id], from, to }
}
