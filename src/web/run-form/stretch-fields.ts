import { type Draft, valueAt, withValue } from '../form/draft.ts'
import type { FormField } from '../form/form-field.ts'
import { railFieldMaker } from './rail-fields.ts'
import { words } from './words.ts'

/** A box that puts a part into the draft and takes it out: what stood in it is not kept. */
const whether = (draft: Draft, place: string, label: string, first: unknown): FormField =>
  railFieldMaker(draft).check(place, label, {
    value: isSaid(draft, place),
    put: (into, value) => withValue(into, place, value === true ? first : null),
  })

const isSaid = (draft: Draft, place: string): boolean => (valueAt(draft, place) ?? null) !== null

/** What has to be shielded. */
export function stretchFields(draft: Draft): readonly FormField[] {
  const { fields } = words()
  const { rail } = railFieldMaker(draft)
  return [
    whether(draft, 'need', fields.need, { from: 0 }),
    ...(isSaid(draft, 'need') ? [rail('need.from', fields.from), rail('need.to', fields.to)] : []),
  ]
}

/** How far rail may go beyond it, and where the run leaves its line. */
export function lineFields(draft: Draft): readonly FormField[] {
  const { fields } = words()
  const { rail, field } = railFieldMaker(draft)
  return [
    rail('mayExtend', fields.mayExtend),
    whether(draft, 'flare', fields.flare, { rate: 15, firstFrom: 0, secondFrom: null }),
    ...(isSaid(draft, 'flare')
      ? [
          field('flare.rate', fields.flareRate, { unit: words().units.rate }),
          rail('flare.firstFrom', fields.firstFrom, { isOptional: true }),
          rail('flare.secondFrom', fields.secondFrom, { isOptional: true }),
        ]
      : []),
  ]
}

/** What stands already, from the first end on. */
export function standingFields(draft: Draft, postOneAt: number): readonly FormField[] {
  const { fields } = words()
  const { rail, rails, number } = railFieldMaker(draft)
  return [
    whether(draft, 'standing', fields.standing, { postOneAt, panels: [], postsDriven: 0 }),
    ...(isSaid(draft, 'standing')
      ? [
          rail('standing.postOneAt', fields.postOneAt),
          number('standing.postsDriven', fields.postsDriven, ''),
          rails('standing.panels', fields.hung, {
            put: (into, value) => withValue(into, 'standing.panels', value ?? []),
          }),
          ...(['leftOut', 'moved', 'special'] as const).map((changed) =>
            rails(`standing.${changed}`, fields.changed[changed], {
              isOptional: true,
              put: (into, value) => withValue(into, `standing.${changed}`, value ?? undefined),
            }),
          ),
        ]
      : []),
  ]
}

/** What was counted where it stands. */
export function countedFields(draft: Draft): readonly FormField[] {
  const { fields, choices } = words()
  const { rails, number, choice } = railFieldMaker(draft)
  const posts = valueAt(draft, 'counted.posts')
  const isMeasured = Array.isArray(posts)
  return [
    rails('counted.panels', fields.countedPanels),
    choice('counted.posts.known', fields.postsKnown, choices.posts, {
      value: isMeasured ? 'measured' : 'counted',
      put: (into, value) =>
        withValue(into, 'counted.posts', value === 'measured' ? [0] : isMeasured ? posts.length : posts),
    }),
    isMeasured ? rails('counted.posts', fields.measuredPosts) : number('counted.posts', fields.countedPosts, ''),
  ]
}

/** How readings are judged near a limit. */
export function ruleFields(draft: Draft): readonly FormField[] {
  const { fields, choices } = words()
  const { choice, number } = railFieldMaker(draft)
  const isBand = valueAt(draft, 'decisionRule.kind') === 'guard band'
  return [
    choice('decisionRule.kind', fields.rule, choices.rule, {
      put: (into, value) =>
        withValue(into, 'decisionRule', value === 'simple' ? { kind: 'simple' } : { kind: 'guard band', multiple: 1 }),
    }),
    ...(isBand ? [number('decisionRule.multiple', fields.multiple, '')] : []),
  ]
}

export function obstructionFields(draft: Draft): readonly FormField[] {
  const { fields, choices } = words()
  const { choice, rail } = railFieldMaker(draft)
  return [
    rail('clearance', fields.clearance, {
      isOptional: true,
      put: (into, value) => withValue(into, 'clearance', value ?? undefined),
    }),
    choice('curb', fields.curb, choices.curb, {
      isOptional: true,
      put: (into, value) => withValue(into, 'curb', value ?? undefined),
    }),
  ]
}

/** Whether only what is at hand may be used. */
export const stockFields = (draft: Draft): readonly FormField[] => [
  whether(draft, 'stock', words().fields.stock, [150]),
]
