import { type Draft, unitsOf, valueAt, withValue } from './draft.ts'
import { words } from './words.ts'

export interface Choice {
  readonly value: string
  readonly label: string
}

/** One field of the form; its place is the one that a problem of the site file would name. */
export interface FormField {
  readonly place: string
  readonly kind: 'number' | 'text' | 'choice' | 'check' | 'date'
  readonly label: string
  readonly unit: string | null
  readonly isOptional: boolean
  readonly choices: readonly Choice[]
  readonly value: unknown
  readonly put: (draft: Draft, value: unknown) => Draft
}

/** Makes the fields of one draft. */
export function fieldMaker(draft: Draft) {
  const field = (place: string, label: string, given: Partial<FormField>): FormField => ({
    place,
    label,
    kind: 'number',
    unit: null,
    isOptional: false,
    choices: [],
    value: valueAt(draft, place),
    put: (into, value) => withValue(into, place, value),
    ...given,
  })
  return {
    field,
    number: (place: string, label: string, unit: string): FormField => field(place, label, { unit }),
    /** A number that the site need not say. */
    optional: (place: string, label: string, unit: string): FormField =>
      field(place, label, { unit, isOptional: true }),
    check: (place: string, label: string, given: Partial<FormField> = {}): FormField =>
      field(place, label, { kind: 'check', ...given }),
    choice: (
      place: string,
      label: string,
      choices: Readonly<Record<string, string>>,
      given: Partial<FormField> = {},
    ): FormField => field(place, label, { kind: 'choice', choices: choicesOf(choices), ...given }),
  }
}

const choicesOf = (choices: Readonly<Record<string, string>>): readonly Choice[] =>
  Object.entries(choices).map(([value, label]) => ({ value, label }))

/** Name of the unit of lengths in the draft. */
export const longOf = (draft: Draft): string => (unitsOf(draft) === 'us' ? words().units.ft : words().units.m)
