import { atHeight, sourceIn, sourceSaying } from '../hardware/hardware-saying.ts'
import type { Cited, EndSheet, HardwareSheet } from '../hardware/hardware-sheet.ts'
import { panelsOfUnit } from '../layout/counted-layout.ts'
import type { LayoutRequest } from '../layout/layout.ts'
import type { recordTopics } from './derived-topics.ts'
import { runPlace } from './places.ts'
import { fromRecord } from './record-requirements.ts'
import type { RecordRule, Requirement } from './requirement.ts'
import { type CountedRun, endSheetOf, isUnknown, type RunModel } from './run-model.ts'

type CountedTopic = Exclude<(typeof recordTopics)[number], 'criteria' | 'crashworthy' | 'site-check'>

/**
 * What else has to be true of a run that was counted where it stands: that it shields what it has to, that it is known
 * from end to end, and that no piece is missing. What nobody said or looked at is asked for all the same, so that it
 * stands among what is not proven; a terminal alone proves nothing about shielding.
 */
export function countedRequirements(model: RunModel, counted: CountedRun): readonly Requirement[] {
  const { system, first, second } = model
  const { need, isLocated } = counted
  const because = [first, second].map((end) => (end.kind === 'unknown' ? end.because : null))
  const ruleless = sourceSaying({
    title: 'Rule of our own for a run that was counted',
    edition: 'common practice; no document',
  })
  const asked = (topic: CountedTopic, rule: RecordRule, from: Partial<Pick<Requirement, 'source' | 'confirmation'>>) =>
    fromCount(topic, rule, system, { source: ruleless, confirmation: 'common practice', ...from })
  return [
    ...(because.includes('no sheet fits')
      ? [asked('end-hardware', { kind: 'not said', what: 'end hardware' }, {})]
      : []),
    ...(because.includes('not looked at') ? [asked('rest-of-run', { kind: 'not said', what: 'rest of run' }, {})] : []),
    asked('need', needRule(model, need), { source: lengthOfNeed, confirmation: 'published' }),
    ...(isLocated ? [] : [asked('location', { kind: 'not said', what: 'location' }, {})]),
    ...[first, second].flatMap((end) =>
      end.kind === 'unit' && !end.sheet.joins.includes(system.id)
        ? [
            asked(
              'end-joins',
              { kind: 'unit joins another system', unit: atHeight(end.sheet), system: atHeight(system) },
              {},
            ),
          ]
        : [],
    ),
    ...missing(model).map(([topic, rule, cited]) => asked(topic, rule, citedBy(system, cited))),
  ]
}

/** @source AASHTO Roadside Design Guide, 2011, sec. 5.6.4, as in core/need */
const lengthOfNeed = sourceSaying({ title: 'AASHTO Roadside Design Guide, length of need', edition: '2011, 5.6.4' })

function needRule(model: RunModel, need: LayoutRequest['need']): RecordRule {
  const { layout } = model
  const isSeen = [model.first, model.second].every(({ kind }) => kind === 'unit')
  if (need === null || !isSeen) return { kind: 'not said', what: 'need' }
  const { postOneAtInches: zero, countsFromInches: from, countsToInches: to } = layout
  return {
    kind: 'need of run',
    shortAtFirst: from === null ? null : Math.max(0, zero + from - need.fromInches),
    shortAtSecond: to === null ? null : Math.max(0, need.toInches - zero - to),
  }
}

type Missing = readonly [CountedTopic, RecordRule, Cited]

/** Posts and panels that the sheets ask for and the count has not. */
function missing(model: RunModel): readonly Missing[] {
  const { layout, system } = model
  if (layout.asCounted === undefined) return []
  const ends = (['first', 'second'] as const).flatMap((unit) => {
    const sheet = endSheetOf(model, unit)
    return sheet === null ? [] : [{ unit, sheet }]
  })
  const panels = layout.panels.filter(({ unit }) => unit !== 'run' && !isUnknown(model, unit)).length
  const wantedPanels = ends.reduce((sum, { sheet }) => sum + panelsOfUnit(sheet), 0)
  const wantedPosts = Math.max(
    ends.reduce((sum, { sheet }) => sum + sheet.posts.length, 0),
    leastPosts(model, ends),
  )
  return [
    ...(layout.posts.length < wantedPosts
      ? [['post-count', tooFew('posts', layout.posts.length, wantedPosts), system.postSpacing] as const]
      : []),
    ...(panels < wantedPanels ? [['panel-count', tooFew('panels', panels, wantedPanels), system.splice] as const] : []),
  ]
}

const tooFew = (of: 'posts' | 'panels', counted: number, wanted: number): RecordRule => ({
  kind: 'too few pieces',
  ...{ of, counted, wanted },
})

/** How many posts the rail needs between its outermost two at full spacing, those of the units where their sheets put them. */
function leastPosts(
  { layout, system, first, second }: RunModel,
  ends: readonly { readonly unit: 'first' | 'second'; readonly sheet: EndSheet }[],
): number {
  const full = system.spacings.full.inches
  const rail = layout.panels.reduce((sum, { inches }) => sum + inches, 0)
  const inner = (unit: 'first' | 'second') => ends.find((one) => one.unit === unit)?.sheet.posts.at(-1)?.along
  const [from, to] = [inner('first'), inner('second')]
  const posts = ends.reduce((sum, { sheet }) => sum + sheet.posts.length, 0)
  if (from !== undefined && to !== undefined) return posts + Math.max(0, Math.ceil((rail - to - from) / full) - 1)
  const unknown = [first, second].reduce((sum, end) => sum + (end.kind === 'unknown' ? end.posts : 0), 0)
  const reach = (from ?? to ?? 0) + Math.max(0, unknown - 1) * full
  return posts + unknown + Math.max(0, Math.ceil((rail - reach) / full) - 1)
}

const citedBy = (sheet: HardwareSheet, cited: Cited) => ({
  source: sourceIn(sheet, cited),
  confirmation: cited.confirmation,
})

const fromCount = (
  topic: CountedTopic,
  rule: RecordRule,
  sheet: HardwareSheet,
  from: Pick<Requirement, 'source' | 'confirmation'>,
): Requirement => ({
  ...fromRecord(sheet, runPlace(), topic),
  ...from,
  must: { kind: 'must', of: topic },
  look: { kind: 'record', rule },
  how: { kind: 'how to look', of: topic },
  why: { kind: 'why it matters', of: topic },
  remedy: { kind: 'if it fails', of: topic },
})
