import { type Draft, itemsAt, textOf, valueAt, withValue } from '../form/draft.ts'
import type { FormField } from '../form/form-field.ts'
import type { FormList, FormSection } from '../form/form-section.ts'
import { asWritten } from '../messages.ts'
import { judgingSections, withoutGoneRules, withRuleRenamed } from './judging-sections.ts'
import { figureFields } from './rule-figure.ts'
import { choicesText, readChoices, readNumbers } from './rule-texts.ts'
import { sheetFieldMaker } from './sheet-field-maker.ts'
import { freshCited, freshLimits, listAt, sectionOf } from './sheet-lists.ts'
import { endSections, systemSections } from './unit-sections.ts'
import { words } from './words.ts'

/** The form of a sheet's draft: what it is, its sources, what it states, its parts with their rules. */
export function sheetSections(
  draft: Draft,
  sheets: readonly { readonly id: string; readonly name: string }[],
): readonly FormSection[] {
  const { sections } = words().form
  const isSystem = valueAt(draft, 'kind') === 'longitudinal'
  const parts = itemsAt(draft, 'parts').map((part, i) =>
    sectionOf(`part-${i}`, sections.rulesOf(asWritten(textOf(valueAt(part, 'name')))), [], ruleList(draft, i)),
  )
  return [
    sectionOf('about', sections.about, aboutFields(draft, sheets), null, true),
    sectionOf('sources', sections.sources, [], sourceList(draft)),
    sectionOf('criteria', sections.criteria, [], criteriaList(draft)),
    sectionOf('heights', sections.heights, heightFields(draft), null, true),
    ...(isSystem ? systemSections(draft) : endSections(draft)),
    sectionOf('parts', sections.parts, [], partList(draft)),
    ...parts,
    ...judgingSections(draft),
  ]
}

function aboutFields(draft: Draft, sheets: Parameters<typeof sheetSections>[1]): readonly FormField[] {
  const make = sheetFieldMaker(draft)
  const isSystem = valueAt(draft, 'kind') === 'longitudinal'
  const joined = itemsAt(draft, 'joins')
  return [
    make.text('name', make.labelOf('name')),
    make.sentences('notice', make.labelOf('notice')),
    make.choice('category', 'category'),
    ...(isSystem
      ? []
      : [
          ...sheets.map(({ id, name }) =>
            make.maker.check(`joins[${id}]`, words().form.joins(name), {
              value: joined.includes(id),
              put: (into, value) =>
                withValue(into, 'joins', [
                  ...itemsAt(into, 'joins').filter((one) => one !== id),
                  ...(value === true ? [id] : []),
                ]),
            }),
          ),
          make.orAbsent(make.yesNo('gating', make.labelOf('gating')), 'notStated'),
          make.orAbsent(make.yesNo('energyAbsorbing', make.labelOf('energyAbsorbing')), 'notStated'),
          make.yesNo('crashworthy', make.labelOf('crashworthy')),
        ]),
  ]
}

/** Sources by their keys, which nobody sees. */
function sourceList(draft: Draft): FormList {
  const { form } = words()
  const make = sheetFieldMaker(draft)
  const sources = (valueAt(draft, 'sources') ?? {}) as Readonly<Record<string, unknown>>
  const keys = Object.keys(sources)
  return {
    ...{ place: 'sources', addWords: form.add.source, least: 1 },
    items: keys.map((key, i) => ({
      title: form.nth.source(i + 1),
      name: form.nth.source(i + 1),
      fields: [
        make.text(`sources.${key}.title`, form.documentTitle),
        make.text(`sources.${key}.edition`, form.documentEdition),
      ],
      remove: (into) => withValue(into, `sources.${key}`, undefined),
    })),
    add: (into) => withValue(into, `sources.document${freeNumber(keys)}`, { title: '', edition: '' }),
  }
}

const freeNumber = (keys: readonly string[]): number =>
  Array.from({ length: keys.length + 1 }, (_, i) => i + 1).find((n) => !keys.includes(`document${n}`))!

function criteriaList(draft: Draft): FormList {
  const { form } = words()
  const make = sheetFieldMaker(draft)
  return listAt(
    draft,
    'criteria',
    form.add.criteria,
    (at, i) => ({
      title: make.thing('criteria[]', i + 1),
      fields: [
        make.choice(`${at}.standard`, 'standard'),
        make.number(`${at}.edition`, make.labelOf('edition'), null),
        make.number(`${at}.testLevel`, make.labelOf('testLevel'), null),
        make.source(at, make.thing('criteria[]', i + 1)),
      ],
    }),
    () => freshCited(draft),
  )
}

function heightFields(draft: Draft): readonly FormField[] {
  const make = sheetFieldMaker(draft)
  const straight = make.thing('straightness')
  const fresh = { ...freshLimits(draft), role: 'ceiling' }
  return [
    ...make.limits('railHeight', make.thing('railHeight')),
    ...make.limits('postSpacing', make.thing('postSpacing')),
    ...make.optional('straightness', straight, 'notStated', fresh, () => make.limits('straightness', straight)),
    make.choice('lap.rule', 'lapRule'),
    make.source('lap', make.thing('lap')),
  ]
}

function partList(draft: Draft): FormList {
  const { form } = words()
  const make = sheetFieldMaker(draft)
  const list = listAt(
    draft,
    'parts',
    form.add.part,
    (at, i) => ({
      title: form.nth.part(i + 1),
      fields: [make.text(`${at}.name`, form.partName), make.text(`${at}.id`, form.shortName)],
    }),
    (parts) => ({ id: `part-${parts.length + 1}`, name: '', rules: [] }),
  )
  return withoutJudging(list)
}

/** What is said of rules goes with them. */
const withoutJudging = (list: FormList): FormList => ({
  ...list,
  items: list.items.map((item) => ({ ...item, remove: (into) => withoutGoneRules(item.remove(into)) })),
})

function ruleIdField(draft: Draft, at: string): FormField {
  const field = sheetFieldMaker(draft).text(`${at}.id`, words().form.shortName)
  return {
    ...field,
    put: (into, value) => {
      const next = field.put(into, value)
      return typeof value === 'string' ? withRuleRenamed(next, String(field.value), value) : next
    },
  }
}

function ruleList(draft: Draft, part: number): FormList {
  const { form } = words()
  const list = listAt(
    draft,
    `parts[${part}].rules`,
    form.add.rule,
    (at, i) => ({ title: form.nth.rule(i + 1), fields: ruleFields(draft, at) }),
    (rules) => ({
      ...{ id: `rule-${part + 1}-${rules.length + 1}`, at: { kind: 'unit' }, must: '', look: { kind: 'confirm' } },
      ...{ how: '', why: '', remedy: '', hold: false, figure: null, ...freshCited(draft) },
    }),
  )
  return withoutJudging(list)
}

function ruleFields(draft: Draft, at: string): readonly FormField[] {
  const { form } = words()
  const make = sheetFieldMaker(draft)
  const kind = valueAt(draft, `${at}.look.kind`)
  const where = valueAt(draft, `${at}.at.kind`)
  const hasNumbers = where === 'posts' || where === 'panels'
  const freshLook = (look: unknown): unknown => {
    if (look === kind) return valueAt(draft, `${at}.look`)
    if (look === 'choose') return { kind: 'choose', choices: readChoices(form.freshChoices, []) }
    return look === 'measure' ? { kind: 'measure', limits: freshLimits(draft) } : { kind: 'confirm' }
  }
  return [
    make.sentences(`${at}.must`, make.labelOf('must')),
    make.sentences(`${at}.how`, form.howToLook),
    make.sentences(`${at}.why`, form.why),
    make.sentences(`${at}.remedy`, form.remedy),
    make.changing(
      make.maker.choice(`${at}.at.kind`, form.where, form.places, {
        put: (into, value) =>
          withValue(into, `${at}.at`, value === where ? valueAt(draft, `${at}.at`) : { kind: value }),
      }),
    ),
    ...(hasNumbers
      ? [
          make.changing(
            make.maker.field(`${at}.at.numbers`, form.numbers, {
              kind: 'text',
              text: (value) => (Array.isArray(value) ? value.join(', ') : ''),
              read: readNumbers,
            }),
          ),
        ]
      : []),
    make.changing(
      make.maker.choice(`${at}.look.kind`, form.look, form.looks, {
        put: (into, value) => withValue(into, `${at}.look`, freshLook(value)),
      }),
    ),
    ...(kind === 'measure' ? make.limits(`${at}.look.limits`, make.thing('parts[].rules[].look.limits'), true) : []),
    ...(kind === 'choose'
      ? [
          make.changing(
            make.maker.field(`${at}.look.choices`, form.choices, {
              kind: 'words',
              text: choicesText,
              read: (text) => readChoices(text, itemsAt(draft, `${at}.look.choices`)),
            }),
          ),
        ]
      : []),
    ...figureFields(draft, at),
    make.changing(make.maker.check(`${at}.hold`, form.hold)),
    ruleIdField(draft, at),
    make.source(at, form.rule),
  ]
}
