import type { Reading } from '../../core/measurement/reading.ts'
import type { Requirement } from '../../core/requirements/requirement.ts'
import { currentReadings } from '../../core/verdicts/judge-requirements.ts'
import type { NearMark } from '../../documents/day-report.ts'
import type { JudgedRun } from '../../operations/judge-readings.ts'
import type { PunchItem } from '../../operations/punch-list.ts'
import { m, say } from '../messages.ts'
import { Correcting, Rechecking } from './purpose.tsx'
import { limitsWords, measurableWords } from './reading-words.ts'

interface Props {
  readonly judged: JudgedRun
  readonly requirement: Requirement
  /** What is read: the requirement itself, or a value it is computed from. */
  readonly of: string
  /** Marks on the ground near the place. */
  readonly nearMarks: readonly NearMark[]
  /** The finding that is rechecked; null where there is none. */
  readonly item: PunchItem | null
  /** The reading that is corrected; null where there is none. */
  readonly corrected: Reading | null
  readonly takeBack: (wrong: Reading) => void
  readonly stop: () => void
}

/** What is asked, why it is asked again, and what to beware of there. */
export function Asked({ judged, requirement, of, nearMarks, item, corrected, takeBack, stop }: Props) {
  const { units } = judged.run
  const { must, look } = requirement
  const limits = look.kind === 'measure' ? limitsWords(look.limits, units) : null
  const isLatest = corrected !== null && currentReadings(judged.readings).get(of)?.id === corrected.id
  return (
    <>
      {corrected !== null ? (
        <Correcting
          old={corrected}
          requirement={requirement}
          units={units}
          takeBack={isLatest ? () => takeBack(corrected) : null}
          stop={stop}
        />
      ) : (
        item !== null && <Rechecking item={item} requirement={requirement} units={units} />
      )}
      <h2 id="must">{say(must, units)}</h2>
      {limits !== null && !('limits' in must) && (
        <p class="limits">
          <span class="label">{m.entry.limits}</span> <b>{limits}</b>
        </p>
      )}
      {nearMarks.map(({ markNumber, mark, ticket, apart }) => (
        <p key={markNumber} class="warning">
          {m.day.nearMark(mark, ticket, Math.abs(Math.round(apart)))}
        </p>
      ))}
      {of !== requirement.id && <p class="entry-of">{measurableWords(of, judged.model.layout)}</p>}
    </>
  )
}
