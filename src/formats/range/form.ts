import type { ProblemSaying } from '../../words/problems/problem-saying.ts'
import type { Form, ShapeProblem } from '../../words/problems/shape.ts'
import { years } from './ranges.ts'

type FormSaying = Extract<ShapeProblem, { readonly kind: Form | 'day in years' | 'moment in years' }>

/** What the check of a form expects: the message of a shape's issue is the name of the form. */
const forms: { readonly [Name in FormSaying['kind']]: Extract<FormSaying, { readonly kind: Name }> } = {
  slug: { kind: 'slug' },
  UUID: { kind: 'UUID' },
  sha256: { kind: 'sha256' },
  base64: { kind: 'base64' },
  'name without controls': { kind: 'name without controls' },
  day: { kind: 'day' },
  'day in years': { kind: 'day in years', ...years },
  moment: { kind: 'moment' },
  'moment in years': { kind: 'moment in years', ...years },
  'whole sixteenths': { kind: 'whole sixteenths' },
  'sheet or standing splice': { kind: 'sheet or standing splice' },
  'time zone': { kind: 'time zone' },
  'storable text': { kind: 'storable text' },
  'moment with zone': { kind: 'moment with zone' },
}

/** For a check whose failing says that another form was expected. */
export const form = (name: FormSaying['kind']): { readonly error: string } => ({ error: name })

/** The same for an id as `plain`, or as `plain` with the mark of a later version after a tilde. */
export const placeIdForm = (plain: string): { readonly error: string } => ({ error: `${placeIdAs}${plain}` })

const placeIdAs = 'id of a place as '

/** What the check that gave `message` expects; null for a message that names no form. */
export function formNamed(message: string): ProblemSaying | null {
  if (Object.hasOwn(forms, message)) return forms[message as FormSaying['kind']]
  if (!message.startsWith(placeIdAs)) return null
  const plain = message.slice(placeIdAs.length)
  return { kind: 'id of form', forms: [plain, `${plain}~0a1b2c`] }
}
