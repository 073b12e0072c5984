import {
  type MaySetAside,
  type Severity,
  type SeverityRule,
  type SheetRule,
  seenKinds,
} from '../../core/hardware/hardware-sheet.ts'
import { unmarked } from '../../core/hardware/marked-values.ts'
import { derivedTopics, recordTopics, reservedTopic } from '../../core/requirements/derived-topics.ts'
import { type Draft, itemsAt, valueAt, withValue } from '../form/draft.ts'
import type { FormField } from '../form/form-field.ts'
import type { FormSection } from '../form/form-section.ts'
import { asWritten, say } from '../messages.ts'
import { sheetFieldMaker } from './sheet-field-maker.ts'
import { freshCited, sectionOf } from './sheet-lists.ts'
import { unconfirmed } from './unconfirmed.ts'
import { words } from './words.ts'

const severities = ['lets it fail', 'weakens it', 'upkeep'] as const satisfies readonly Severity[]

/** How bad each fault is, and what may be set aside: asked of each requirement, whatever rules of the sheet say it together. */
export function judgingSections(draft: Draft): readonly FormSection[] {
  const { form } = words()
  return [
    { ...sectionOf('severities', form.sections.severities, severityFields(draft)), how: form.severityHow },
    { ...sectionOf('set-aside', form.sections.setAside, setAsideFields(draft)), how: form.setAsideHow },
  ]
}

function severityFields(draft: Draft): readonly FormField[] {
  const make = sheetFieldMaker(draft)
  const choices = Object.fromEntries(severities.map((one) => [one, say({ kind: 'how bad', severity: one })]))
  const rules = severityRules(draft)
  const field = (list: 'topics' | 'seen', name: string, label: string): FormField => {
    const now = rules.find((rule) => (rule[list] as readonly string[]).includes(name))?.severity ?? null
    return make.maker.choice(`severity of ${list} ${name}`, label, choices, {
      isOptional: true,
      value: now,
      put: (into, value) => (value === now ? into : judged(into, list, name, value as Severity | null)),
    })
  }
  return [
    ...[...derivedTopics, ...recordTopics, ...ruleIds(draft)].map((topic) =>
      field('topics', topic, label(draft, topic)),
    ),
    ...seenKinds.map((what) => field('seen', what, say({ kind: 'seen', what }))),
    ...rules.map((_, i) => make.source(`severities[${i}]`, make.thing('severities[]', i + 1))),
  ]
}

/** The draft with a fault as bad as is said; null takes away how bad it is. */
function judged(into: Draft, list: 'topics' | 'seen', name: string, severity: Severity | null): Draft {
  const rules = severityRules(into)
  const had = rules.findIndex((rule) => (rule[list] as readonly string[]).includes(name))
  const without = had < 0 ? into : changedAt(into, had, { [list]: rules[had]![list].filter((one) => one !== name) })
  if (severity === null) return withoutEmpty(without)
  const at = severityRules(without).findIndex((rule) => rule.severity === severity)
  const fresh = { severity, topics: [], seen: [], [list]: [name], ...freshCited(into) }
  const kept = severityRules(without)
  return withoutEmpty(
    at < 0
      ? withValue(without, 'severities', [...kept, fresh])
      : changedAt(without, at, { [list]: [...kept[at]![list], name] }),
  )
}

function changedAt(into: Draft, at: number, change: { readonly [list: string]: readonly string[] }): Draft {
  const place = `severities[${at}]`
  return unconfirmed(withValue(into, place, { ...severityRules(into)[at], ...change }), place)
}

const withoutEmpty = (into: Draft): Draft =>
  withValue(
    into,
    'severities',
    severityRules(into).filter(({ topics, seen }) => topics.length + seen.length > 0),
  )

function setAsideFields(draft: Draft): readonly FormField[] {
  const make = sheetFieldMaker(draft)
  const allowed = allowedIn(draft)
  return [
    ...[...derivedTopics, ...ruleIds(draft)].map((topic) => {
      const isAllowed = allowed.some((one) => one.topic === topic)
      return make.maker.check(`set aside ${topic}`, label(draft, topic), {
        value: isAllowed,
        put: (into, value) =>
          value === isAllowed
            ? into
            : withValue(
                into,
                'maySetAside',
                value === true
                  ? [...allowedIn(into), { topic, ...freshCited(into) }]
                  : allowedIn(into).filter((one) => one.topic !== topic),
              ),
      })
    }),
    ...allowed.map(({ topic }, i) => make.source(`maySetAside[${i}]`, label(draft, topic))),
  ]
}

/** The draft without anything said of rules that no longer stand in it. */
export function withoutGoneRules(into: Draft): Draft {
  const known: readonly string[] = [...derivedTopics, ...recordTopics, ...ruleIds(into)]
  const isKnown = (topic: string): boolean => known.includes(topic)
  const rules = severityRules(into)
  const judging = rules.reduce(
    (next, { topics }, i) => (topics.every(isKnown) ? next : changedAt(next, i, { topics: topics.filter(isKnown) })),
    into,
  )
  const allowed = allowedIn(into)
  const isSound = allowed.every(({ topic }) => isKnown(topic))
  const aside = isSound
    ? judging
    : withValue(
        judging,
        'maySetAside',
        allowed.filter(({ topic }) => isKnown(topic)),
      )
  return rules.length === 0 ? aside : withoutEmpty(aside)
}

/** The draft with what is said of a rule said of it under its new id. */
export function withRuleRenamed(into: Draft, id: string, next: string): Draft {
  const renamed = (topic: string): string => (topic === id ? next : topic)
  const rules = severityRules(into).map((rule) => ({ ...rule, topics: rule.topics.map(renamed) }))
  const allowed = allowedIn(into).map((one) => ({ ...one, topic: renamed(one.topic) }))
  const judging = rules.length === 0 ? into : withValue(into, 'severities', rules)
  return allowed.length === 0 ? judging : withValue(judging, 'maySetAside', allowed)
}

const severityRules = (draft: Draft) => itemsAt(draft, 'severities') as readonly SeverityRule[]
const allowedIn = (draft: Draft) => itemsAt(draft, 'maySetAside') as readonly MaySetAside[]
const rulesIn = (draft: Draft) =>
  itemsAt(draft, 'parts').flatMap((part) => (valueAt(part, 'rules') ?? []) as readonly SheetRule[])
const ruleIds = (draft: Draft): readonly string[] => rulesIn(draft).flatMap(({ id }) => (id === undefined ? [] : [id]))

/** What is required under a topic, in words. */
function label(draft: Draft, topic: string): string {
  const reserved = reservedTopic(topic)
  if (reserved !== null) return say({ kind: 'topic', topic: reserved })
  return asWritten(unmarked(rulesIn(draft).find(({ id }) => id === topic)?.must || topic))
}
