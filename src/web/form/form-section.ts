import type { Draft } from './draft.ts'
import type { FormField } from './form-field.ts'

/** A part of a form: fields, or a list of things with fields of their own. */
export interface FormSection {
  readonly id: string
  readonly title: string
  /** What it is about and what follows from it, for who does not know. */
  readonly how: string | null
  readonly fields: readonly FormField[]
  readonly list: FormList | null
  /** Whether it stands open when the form is first seen and there is room. */
  readonly isMain: boolean
  /** Whether it stands open on a phone too. */
  readonly isHandiest: boolean
}

export interface FormList {
  /** Of the list, as a problem would name it. */
  readonly place: string
  readonly items: readonly FormItem[]
  readonly least: number
  readonly addWords: string
  readonly add: (draft: Draft) => Draft
}

export interface FormItem {
  readonly title: string
  readonly name: string
  readonly fields: readonly FormField[]
  readonly remove: (draft: Draft) => Draft
}

/** Every field of the form, in order. */
export const fieldsOf = (sections: readonly FormSection[]): readonly FormField[] => sections.flatMap(fieldsIn)

export const fieldsIn = ({ fields, list }: FormSection): readonly FormField[] => [
  ...fields,
  ...(list?.items ?? []).flatMap((item) => item.fields),
]
