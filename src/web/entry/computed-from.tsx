import type { Requirement } from '../../core/requirements/requirement.ts'
import { inputsOf } from '../../core/requirements/rests-on.ts'
import { currentReadings } from '../../core/verdicts/judge-requirements.ts'
import type { JudgedRun } from '../../operations/judge-readings.ts'
import { m } from '../messages.ts'
import { requirementPath } from '../route.ts'
import { measurableWords, readWords } from './reading-words.ts'

interface Props {
  readonly judged: JudgedRun
  readonly requirement: Requirement
  readonly of: string
  readonly run: string
}

/** Whether the value itself is read or what it is computed from, with what is known of each. */
export function ComputedFrom({ judged, requirement, of, run }: Props) {
  const ids = inputsOf(requirement)
  if (ids.length === 0) return null
  const current = currentReadings(judged.readings)
  const wordsOf = (id: string): string => {
    const reading = current.get(id)
    return reading === undefined ? m.entry.missing : readWords(reading, requirement, judged.run.units)
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
              <span>{id === requirement.id ? m.entry.direct : measurableWords(id, judged.model.layout)}</span>
              <b>{wordsOf(id)}</b>
            </a>
          </li>
        ))}
      </ul>
    </details>
  )
}
