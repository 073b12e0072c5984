import { units } from '../../core/units/quantity-kinds.ts'
import { type Draft, itemsAt, textOf, valueAt, withValue } from '../form/draft.ts'
import type { FormField } from '../form/form-field.ts'
import type { FormList } from '../form/form-section.ts'
import { withBlock } from './about-fields.ts'
import { railFieldMaker } from './rail-fields.ts'
import { words } from './words.ts'

interface Listed {
  readonly title: string
  readonly name?: string
  readonly fields: readonly FormField[]
}

function listAt(
  draft: Draft,
  place: string,
  {
    least = 0,
    addWords,
    itemOf,
    fresh,
  }: Pick<FormList, 'addWords'> & {
    readonly least?: number
    readonly itemOf: (at: (name: string) => string, i: number, item: unknown) => Listed
    readonly fresh: (items: readonly unknown[]) => unknown
  },
): FormList {
  return {
    ...{ place, least, addWords },
    items: itemsAt(draft, place).map((item, i) => {
      const { title, name = title, fields } = itemOf((name) => `${place}[${i}].${name}`, i, item)
      const remove = (into: Draft): Draft =>
        withValue(
          into,
          place,
          itemsAt(into, place).filter((_, at) => at !== i),
        )
      return { title, name, fields, remove }
    }),
    add: (into) => withValue(into, place, [...itemsAt(into, place), fresh(itemsAt(into, place))]),
  }
}

/** Panel lengths at hand; one of which there are as many as wanted is a bare length in the file. */
export function stockList(draft: Draft): FormList {
  const { fields, form } = words()
  const { rail, number } = railFieldMaker(draft)
  return listAt(draft, 'stock', {
    least: 1,
    addWords: form.addLength,
    itemOf: (at, i, item) => {
      const count = (valueAt(item, 'count') ?? null) as number | null
      const length = typeof item === 'object' ? valueAt(item, 'length') : item
      const put = (into: Draft, next: { readonly length: unknown; readonly count: unknown }): Draft =>
        withValue(into, `stock[${i}]`, next.count === null || next.count === undefined ? next.length : next)
      return {
        title: form.length(i + 1),
        fields: [
          rail(at('length'), fields.stockLength, {
            value: length,
            put: (into, value) => put(into, { length: value ?? '', count }),
          }),
          {
            ...number(at('count'), fields.stockCount, ''),
            ...{ isOptional: true, value: count, put: (into, value) => put(into, { length, count: value }) },
          },
        ],
      }
    },
    fresh: () => 150,
  })
}

export function obstructionList(draft: Draft): FormList {
  const { fields, form } = words()
  const { field, rail } = railFieldMaker(draft)
  return listAt(draft, 'obstructions', {
    addWords: form.addObstruction,
    itemOf: (at, i, item) => ({
      title: form.obstruction(i + 1),
      name: textOf(valueAt(item, 'name')) || form.obstruction(i + 1),
      fields: [
        field(at('name'), fields.obstructionName, { kind: 'text' }),
        rail(at('from'), fields.from),
        rail(at('to'), fields.to),
      ],
    }),
    fresh: (items) => ({ name: form.obstruction(items.length + 1) }),
  })
}

export function reducedList(draft: Draft): FormList {
  const { fields, choices, form } = words()
  const { choice, check, rail } = railFieldMaker(draft)
  return listAt(draft, 'reduced', {
    addWords: form.addReduced,
    itemOf: (at, i) => ({
      title: form.reduced(i + 1),
      fields: [
        rail(at('from'), fields.from),
        rail(at('to'), fields.to),
        choice(at('spacing'), fields.spacing, choices.spacing),
        check(at('nested'), fields.nested),
      ],
    }),
    fresh: () => ({ spacing: 'half', nested: false }),
  })
}

/** Issues after the first, with what each replaces. */
export function revisionList(draft: Draft): FormList {
  const { fields, form } = words()
  const { field } = railFieldMaker(draft)
  const list = listAt(draft, 'titleBlock.revisions', {
    addWords: form.addRevision,
    itemOf: (at, i) => ({
      title: form.revision(i + 1),
      fields: [
        field(at('date'), fields.revisionDate, { kind: 'date' }),
        field(at('what'), fields.revisionWhat, { kind: 'text' }),
        field(at('replacedDate'), fields.replacedDate, {
          ...{ kind: 'date', isOptional: true },
          put: (into, value) => withValue(into, at('replacedDate'), value ?? undefined),
        }),
        field(at('replacedHash'), fields.replacedHash, {
          ...{ kind: 'text', isOptional: true },
          put: (into, value) => withValue(into, at('replacedHash'), value ?? undefined),
        }),
      ],
    }),
    fresh: () => ({}),
  })
  const put = (into: Draft, items: readonly unknown[]): Draft =>
    withBlock(into, 'revisions', items.length === 0 ? undefined : items)
  return {
    ...list,
    items: list.items.map((item, i) => ({
      ...item,
      remove: (into) =>
        put(
          into,
          itemsAt(into, list.place).filter((_, at) => at !== i),
        ),
    })),
    add: (into) => put(into, [...itemsAt(into, list.place), {}]),
  }
}

export function instrumentList(draft: Draft): FormList {
  const { fields, choices, form } = words()
  const { field, number, optional, choice } = railFieldMaker(draft)
  return listAt(draft, 'instruments', {
    addWords: form.addInstrument,
    itemOf: (at, i, item) => {
      const unit = textOf(valueAt(item, 'unit'))
      return {
        title: form.instrument(i + 1),
        name: textOf(valueAt(item, 'name')) || form.instrument(i + 1),
        fields: [
          field(at('name'), fields.instrumentName, { kind: 'text' }),
          field(at('id'), fields.instrumentId, { kind: 'text' }),
          choice(at('unit'), fields.instrumentUnit, Object.fromEntries(units.map((one) => [one, one]))),
          number(at('readTo'), fields.readTo, unit),
          number(at('standardUncertainty'), fields.standardUncertainty, unit),
          {
            ...optional(at('relativeUncertainty'), fields.relativeUncertainty, ''),
            put: (into, value) => withValue(into, at('relativeUncertainty'), value ?? undefined),
          },
          field(at('source'), fields.source, { kind: 'text' }),
          choice(at('confirmation'), fields.confirmation, choices.confirmation),
        ],
      }
    },
    fresh: (items) => ({ id: `own-${items.length + 1}`, unit: 'in', confirmation: 'common practice' }),
  })
}
