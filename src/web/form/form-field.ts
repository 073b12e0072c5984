import { type Draft, valueAt, withValue } from './draft.ts'

export interface Choice {
  readonly value: string
  readonly label: string
  /** An SVG picture of it, where it is chosen by that. */
  readonly svg?: string
}

/** One field of the form; its place is the one that a problem of its file would name. */
export interface FormField {
  readonly place: string
  /** `words` are a text of some sentences or lines; an `own picture` is a file of the user's; `length` and `lengths` are along a rail, with their units, and are numbers of inches once they are read. */
  readonly kind:
    | 'number'
    | 'text'
    | 'words'
    | 'choice'
    | 'pictures'
    | 'check'
    | 'date'
    | 'length'
    | 'lengths'
    | 'own picture'
  readonly label: string
  readonly unit: string | null
  readonly isOptional: boolean
  /** Of a text, what it can be besides anything else. */
  readonly choices: readonly Choice[]
  readonly value: unknown
  /** Its value as a text, and what a typed text means; left out where these are the plain ones of its kind. */
  readonly text?: (value: unknown) => string
  readonly read?: (text: string) => unknown
  readonly put: (draft: Draft, value: unknown) => Draft
}

export interface ControlProps {
  readonly field: FormField
  /** Of the element that is brought into view and takes the focus. */
  readonly id: string
  readonly change: (field: FormField, value: unknown) => void
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
    /** A number that need not be said. */
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
