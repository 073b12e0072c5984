import type { Requirement } from '../../core/requirements/requirement.ts'
import { currentReadings } from '../../core/verdicts/judge-requirements.ts'
import type { JudgedRun } from '../../operations/judge-readings.ts'
import { m } from '../messages.ts'
import { requirementPath } from '../route.ts'
import { answerWords, measurableWords } from './reading-words.ts'

interface Props {
  readonly judged: JudgedRun
  readonly requirement: Requirement
  readonly of: string
  readonly run: string
}

/** The ids of what is read to compute the value of `requirement`, in the order of the posts. */
export function readingsFor({ look }: Requirement): readonly string[] {
  const from = look.kind === 'measure' ? look.orFrom : null
  switch (from?.kind) {
    case undefined:
      return []
    case 'difference':
      return [from.from, from.to]
    case 'middle ordinate':
      return from.points.map(({ reading }) => reading)
    case 'offset from line':
      return [from.point, ...from.line].map(({ reading }) => reading)
  }
}

/** Whether the value itself is read or what it is computed from, with what is known of each. */
export function ComputedFrom({ judged, requirement, of, run }: Props) {
  const ids = readingsFor(requirement)
  if (ids.length === 0) return null
  const current = currentReadings(judged.readings)
  const wordsOf = (id: string): string => {
    const reading = current.get(id)
    return reading === undefined ? m.entry.missing : answerWords(reading.answer, requirement)
  }
  return (
    <details class="computed-from" open={of !== requirement.id}>
      <summary>{m.entry.what}</summary>
      <ul class="plain">
        {[requirement.id, ...ids].map((id) => (
          <li key={id}>
            <a
              class="row-link"
              href={requirementPath(run, requirement.id, id === requirement.id ? null : id)}
              aria-current={id === of ? 'true' : undefined}
            >
              <span>{id === requirement.id ? m.entry.direct : measurableWords(id)}</span>
              <b>{wordsOf(id)}</b>
            </a>
          </li>
        ))}
      </ul>
    </details>
  )
}
