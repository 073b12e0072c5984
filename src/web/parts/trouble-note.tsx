import type { InputProblem } from '../../formats/input-problem.ts'
import type { Trouble } from '../data/run-source.ts'
import { m, say, troubleWords } from '../messages.ts'

interface Props {
  readonly title: string
  readonly trouble: Pick<Trouble, 'message' | 'problems'>
  readonly again?: (() => void) | undefined
}

/** What went wrong, every problem of it, and the way to try again. */
export const TroubleNote = ({ title, trouble, again }: Props) => (
  <div class="trouble" role="alert">
    <p>
      <b>{title}</b> {troubleWords(trouble.message)}
    </p>
    <ProblemList problems={trouble.problems} />
    {again !== undefined && (
      <button type="button" class="button" onClick={again}>
        {m.page.again}
      </button>
    )}
  </div>
)

export const ProblemList = ({ problems }: { readonly problems: readonly InputProblem[] }) =>
  problems.length === 0 ? null : (
    <ul class="problems">
      {problems.map(({ place, expected, found }) => (
        <li key={`${place} ${say(expected)}`}>
          {m.trouble.problem(place, say(expected), found === null ? '' : say(found))}
        </li>
      ))}
    </ul>
  )
