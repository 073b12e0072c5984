import { feetInchesText, lengthText } from '../hardware/dimension-text.ts'
import { type PanelSwap, swapPanels } from '../layout/swap-panels.ts'
import type { Reading } from '../measurement/reading.ts'
import { slotSentence } from '../requirements/measured-rules.ts'
import type { Requirement } from '../requirements/requirement.ts'
import type { RunModel } from '../requirements/run-model.ts'
import { exactLength, type LengthUnit, lengthIn } from '../units/exact-length.ts'
import { describeReason } from './describe-reason.ts'
import { flareRemedy } from './flare-remedy.ts'
import { type HeightReading, heightRemedy } from './height-remedy.ts'
import { currentReadings } from './judge-requirements.ts'
import type { Finding, Verdict } from './verdict.ts'

interface Judged {
  readonly requirement: Requirement
  readonly verdict: Verdict
}

/** A finding for every fault, with its remedy; what has one cause is one finding. In walking order. */
export function findFaults(
  model: RunModel,
  requirements: readonly Requirement[],
  verdicts: readonly Verdict[],
  readings: readonly Reading[],
): readonly Finding[] {
  const judged = requirements.map((requirement, i) => ({ requirement, verdict: verdicts[i]! }))
  const failed = judged.filter(({ verdict }) => verdict.verdict === 'fails')
  const of = (...topics: readonly string[]) => failed.filter(({ requirement }) => topics.includes(requirement.topic))
  const grouped = ['rail-height', 'stub-height', 'spacing', 'panel-length', 'splice-position']
  const findings = [
    ...heightFindings(of('rail-height', 'stub-height'), judged),
    ...spacingFindings(model, of('spacing'), judged),
    ...panelFindings(model, of('panel-length', 'splice-position'), readings),
    ...failed.filter(({ requirement }) => !grouped.includes(requirement.topic)).map(plainFinding),
  ]
  return findings.sort((a, b) => a.place.alongInches - b.place.alongInches)
}

function findingOf(failed: readonly Judged[], what: string, remedy: string): Finding {
  const first = failed[0]!.requirement
  return {
    id: first.id,
    place: first.place,
    what,
    remedy,
    requirements: failed.map(({ requirement }) => requirement.id),
  }
}

function plainFinding(one: Judged): Finding {
  const { requirement, verdict } = one
  const remedy = flareRemedyOf(one) ?? requirement.remedy
  return findingOf([one], `${describeReason(verdict.because)}. ${requirement.must}`, remedy)
}

const flareRemedyOf = ({ requirement: { topic, place, look }, verdict: { because } }: Judged): string | null =>
  topic === 'flare-offset' && look.kind === 'measure' && because.kind === 'measured'
    ? flareRemedy(`post ${place.number}`, because, look.limits)
    : null

/** Rail and stub of one post move together, so they share one finding and one remedy. */
function heightFindings(failed: readonly Judged[], judged: readonly Judged[]): Finding[] {
  const posts = [...new Set(failed.map(({ requirement }) => requirement.place.number))]
  return posts.map((post) => {
    const here = failed.filter(({ requirement }) => requirement.place.number === post)
    const topic = (name: string) => judged.find(({ requirement }) => requirement.id === `post-${post}/${name}`)
    const [rail, stub] = [heightReading(topic('rail-height')), heightReading(topic('stub-height'))]
    const stubUnread = topic('stub-height') !== undefined && stub === null
    const what = here
      .map(({ requirement, verdict }) => `${describeReason(verdict.because)}. ${requirement.must}`)
      .join(' ')
    return findingOf(
      here,
      what,
      heightRemedy(`post ${post}`, rail, rail === null ? stub : readingIn(rail.limits.unit, stub), stubUnread),
    )
  })
}

function heightReading(one: Judged | undefined): HeightReading | null {
  if (one === undefined || one.verdict.because.kind !== 'measured' || one.requirement.look.kind !== 'measure')
    return null
  return { value: one.verdict.because.value, limits: one.requirement.look.limits }
}

/** The same reading in another unit, so that rail and stub can be moved together. */
function readingIn(unit: LengthUnit, reading: HeightReading | null): HeightReading | null {
  if (reading === null || reading.limits.unit === unit) return reading
  const convert = (value: number): number => lengthIn(exactLength(value, reading.limits.unit), unit)
  const limit = (value: number | 'notStated') => (value === 'notStated' ? value : convert(value))
  const { nominal, low, high } = reading.limits
  return {
    value: convert(reading.value),
    limits: { ...reading.limits, unit, nominal: limit(nominal), low: limit(low), high: limit(high) },
  }
}

/** Two neighbouring spaces that are wrong by opposite amounts mean one post in the wrong place. */
function spacingFindings(model: RunModel, failed: readonly Judged[], judged: readonly Judged[]): Finding[] {
  const { posts } = model.layout
  const findings: Finding[] = []
  const taken = new Set<Judged>()
  for (const one of failed) {
    if (taken.has(one)) continue
    taken.add(one)
    const post = one.requirement.place.number + 1
    const next = failed.find(({ requirement }) => requirement.place.number === post)
    const [here, there] = [excess(one), next === undefined ? 0 : excess(next)]
    const apart = lengthText(Math.abs(here), unitOf(one))
    if (next !== undefined && here * there < 0 && isWithin(here + there, one)) {
      taken.add(next)
      const move = here > 0 ? `upstream by ${apart}` : `downstream by ${apart}`
      const what = `Post ${post} stands ${apart} out of place: ${describeReason(one.verdict.because)}, then ${describeReason(next.verdict.because)}.`
      findings.push(
        findingOf(
          [one, next],
          what,
          `Move post ${post} ${move}; both spaces then come right. ${slotSentence(posts.filter(({ number }) => number === post))}`,
        ),
      )
    } else {
      findings.push(
        findingOf(
          [one],
          `${describeReason(one.verdict.because)}. ${one.requirement.must}`,
          spacingRemedy(model, one, judged),
        ),
      )
    }
  }
  return findings
}

const unitOf = ({ requirement }: Judged): LengthUnit =>
  requirement.look.kind === 'measure' ? requirement.look.limits.unit : 'in'

function excess({ requirement, verdict }: Judged): number {
  const { because } = verdict
  if (
    because.kind !== 'measured' ||
    requirement.look.kind !== 'measure' ||
    requirement.look.limits.nominal === 'notStated'
  )
    return 0
  return because.value - requirement.look.limits.nominal
}

function isWithin(difference: number, { requirement }: Judged): boolean {
  if (requirement.look.kind !== 'measure') return false
  const { nominal, low, high } = requirement.look.limits
  if (nominal === 'notStated' || low === 'notStated' || high === 'notStated') return false
  return difference >= low - nominal && difference <= high - nominal
}

function spacingRemedy({ layout }: RunModel, one: Judged, judged: readonly Judged[]): string {
  const over = excess(one)
  const before = one.requirement.place.number
  const away = over > 0 ? 'closer to' : 'away from'
  const later = judged.filter(
    ({ requirement, verdict }) =>
      requirement.topic === 'spacing' && requirement.place.number > before && verdict.verdict === 'unread',
  )
  const rest =
    later.length === 0
      ? ''
      : ` ${later.length} of the spaces beyond ${later.length === 1 ? 'is' : 'are'} unread: measure first whether every post beyond is out by the same amount.`
  return `Move post ${before + 1} and every post beyond that is out by the same amount ${lengthText(Math.abs(over), unitOf(one))} ${away} post ${before}.${rest} ${slotSentence(layout.posts.filter(({ number }) => number > before))}`
}

/** Wrong splices follow from wrong panels: one finding, with the fewest panels to exchange. */
function panelFindings(model: RunModel, failed: readonly Judged[], readings: readonly Reading[]): Finding[] {
  if (failed.length === 0) return []
  const inOrder = [...failed].sort((a, b) => a.requirement.place.alongInches - b.requirement.place.alongInches)
  const panels = inOrder.filter(({ requirement }) => requirement.topic === 'panel-length')
  const splices = inOrder
    .filter(({ requirement }) => requirement.topic === 'splice-position')
    .map(({ requirement }) => requirement.place.number)
  const lead = [...panels, ...inOrder.filter((one) => !panels.includes(one))]
  const said = panels.map(({ requirement, verdict }) => `${requirement.place.name}: ${describeReason(verdict.because)}`)
  if (splices.length > 0) said.push(`splice${splices.length > 1 ? 's' : ''} ${splices.join(', ')} out of place`)
  return [findingOf(lead, `${said.join('; ')}.`, panelRemedy(model, panels, splices, readings))]
}

function panelRemedy(
  model: RunModel,
  panels: readonly Judged[],
  splices: readonly number[],
  readings: readonly Reading[],
): string {
  if (panels.length === 0) {
    return `Measure panels 1 to ${splices[0]!} splice to splice: one of them is not of the length that the layout gives, and moves every splice beyond it.`
  }
  const hanging = hangingLengths(model, readings)
  if (hanging === null)
    return 'Measure the panel of another length splice to splice; until its length is known no exchange can be worked out.'
  const swaps = swapPanels(model.layout, model.system, model.first, model.second, hanging)
  if (swaps === null || swaps.length === 0)
    return 'No exchange of panels brings the splices right on the posts as they stand: lay the run out again from the last post that is right.'
  return `${swaps.map(swapText).join('; ')}. Every splice then lies where it belongs.`
}

function hangingLengths(model: RunModel, readings: readonly Reading[]): number[] | null {
  const current = currentReadings(readings)
  const lengths: number[] = []
  for (const panel of model.layout.panels) {
    const answer = current.get(`panel-${panel.number}/panel-length`)?.answer
    const inches = answer?.kind === 'choice' ? Number(answer.choice.replace('in-', '')) : panel.inches
    if (!Number.isFinite(inches)) return null
    lengths.push(inches)
  }
  return lengths
}

function swapText(swap: PanelSwap): string {
  switch (swap.kind) {
    case 'exchange':
      return `exchange panel ${swap.panel} (${feetInchesText(swap.from)}) for a ${feetInchesText(swap.to)} panel`
    case 'take out':
      return `take out panel ${swap.panel} (${feetInchesText(swap.from)})`
    case 'put in':
      return `put in a ${feetInchesText(swap.to)} panel ${swap.after === 0 ? 'at the first end' : `after panel ${swap.after}`}`
  }
}
