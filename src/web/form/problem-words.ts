import type { InputProblem } from '../../formats/input-problem.ts'
import { m, say } from '../messages.ts'
import type { FormField } from './form-field.ts'

/** What is wrong, at the field that it is wrong with. */
export function problemWords({ expected, found }: InputProblem, { kind, value }: FormField): string {
  // What can be chosen stands in the field, in words; the problem has it as a file writes it.
  if (kind === 'choice' && (value === undefined || value === null)) return m.form.choose
  if (found?.kind === 'no lawful run') return m.form.noLayout(found.reasons.map((one) => say(one)).join('; '))
  return m.form.wrong(say(expected), found === null ? '' : say(found))
}
