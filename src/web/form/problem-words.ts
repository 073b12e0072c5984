import type { InputProblem } from '../../formats/input-problem.ts'
import { m, say } from '../messages.ts'

/** What is wrong, at the field that it is wrong with. */
export function problemWords({ expected, found }: InputProblem): string {
  if (found?.kind === 'no lawful run') return m.form.noLayout(found.reasons.map((one) => say(one)).join('; '))
  return m.form.wrong(say(expected), found === null ? '' : say(found))
}
