import { type Draft, itemsAt, valueAt, withValue } from '../form/draft.ts'
import type { FormField } from '../form/form-field.ts'
import type { FormItem, FormList, FormSection } from '../form/form-section.ts'

export const sectionOf = (
  id: string,
  title: string,
  fields: readonly FormField[],
  list: FormList | null = null,
  isMain = false,
): FormSection => ({ id, title, how: null, fields, list, isMain, isHandiest: isMain && id === 'about' })

/** What a new statement names until somebody says more. */
export function freshCited(draft: Draft): { readonly source: string; readonly confirmation: 'from memory' } {
  const [first = 'own'] = Object.keys((valueAt(draft, 'sources') ?? {}) as object)
  return { source: first, confirmation: 'from memory' }
}

/**
 * Limits of which nothing is stated yet: the form asks for the number that their role needs. What is added by form never begins
 * with a number that nobody gave, as one that stands there is taken for one that was read.
 */
export const freshLimits = (draft: Draft) => ({
  ...{ nominal: 'notStated', low: 'notStated', high: 'notStated', unit: 'in' },
  ...freshCited(draft),
})

/** A list of things at `place`, each taken out and a fresh one put in. */
export function listAt(
  draft: Draft,
  place: string,
  addWords: string,
  itemOf: (at: string, i: number) => { readonly title: string; readonly fields: readonly FormField[] },
  fresh: (items: readonly unknown[]) => unknown,
  least = 0,
): FormList {
  const without =
    (i: number) =>
    (into: Draft): Draft =>
      withValue(
        into,
        place,
        itemsAt(into, place)
          .filter((_, at) => at !== i)
          .map((item, at) => renumbered(item, at)),
      )
  return {
    ...{ place, addWords, least },
    items: itemsAt(draft, place).map((_, i): FormItem => {
      const { title, fields } = itemOf(`${place}[${i}]`, i)
      return { title, name: title, fields, remove: without(i) }
    }),
    add: (into) => withValue(into, place, [...itemsAt(into, place), fresh(itemsAt(into, place))]),
  }
}

/** Posts are numbered in order. */
const renumbered = (item: unknown, i: number): unknown =>
  typeof item === 'object' && item !== null && 'number' in item ? { ...item, number: i + 1 } : item
