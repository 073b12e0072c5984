import { m } from '../messages.ts'
import { ProblemList } from '../parts/trouble-note.tsx'
import { fieldId } from './field-view.tsx'
import type { FormField } from './form-field.ts'
import type { PlacedProblems } from './place-problems.ts'
import { problemWords } from './problem-words.ts'

interface Props {
  readonly problems: PlacedProblems
  readonly fields: readonly FormField[]
  /** What is not made until it is put right. */
  readonly meanwhile: string
}

/** What is wrong, for who does not look at the field: each with the way to its field, and what no field can show. */
export function Attention({ problems, fields, meanwhile }: Props) {
  const placed = fields.flatMap((field) => (problems.at.get(field.place) ?? []).map((problem) => ({ field, problem })))
  return (
    <div class="trouble form-attention">
      <p>
        <b>{m.form.attention(placed.length + problems.rest.length)}</b> {meanwhile}
      </p>
      <ul class="problems">
        {placed.map(({ field, problem }) => (
          <li key={`${field.place} ${problemWords(problem, field)}`}>
            <a
              href={`#${fieldId(field.place)}`}
              onClick={(event) => {
                event.preventDefault()
                document.getElementById(fieldId(field.place))?.focus()
              }}
            >
              {field.label}
            </a>
            : {problemWords(problem, field)}
          </li>
        ))}
      </ul>
      <ProblemList problems={problems.rest} />
    </div>
  )
}
