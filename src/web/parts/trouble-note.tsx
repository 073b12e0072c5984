import type { InputProblem } from '../../formats/input-problem.ts'
import type { Trouble } from '../data/run-source.ts'
import { m, say } from '../messages.ts'
import { useFetchedWords, useTrouble } from './use-trouble.ts'

interface Props {
  readonly title: string
  readonly trouble: Pick<Trouble, 'message' | 'problems'>
  readonly again?: (() => void) | undefined
}

/** What went wrong, every problem of it, and the way to try again. */
export function TroubleNote({ title, trouble: { message, problems }, again }: Props) {
  const why = useTrouble(message)
  return (
    <div class="trouble" role="alert">
      <p>
        <b>{title}</b> {why}
      </p>
      <ProblemList problems={problems} />
      {again !== undefined && (
        <button type="button" class="button" onClick={again}>
          {m.page.again}
        </button>
      )}
    </div>
  )
}

export function ProblemList({ problems }: { readonly problems: readonly InputProblem[] }) {
  const words = useFetchedWords(problems.length > 0)
  if (problems.length === 0 || words === 'to come') return null
  if (words === 'not to be had') return <p>{m.trouble.site}</p>
  return (
    <ul class="problems">
      {problems.map(({ place, expected, found }) => (
        <li key={`${place} ${say(expected)}`}>
          {m.trouble.problem(place, say(expected), found === null ? '' : say(found))}
        </li>
      ))}
    </ul>
  )
}
