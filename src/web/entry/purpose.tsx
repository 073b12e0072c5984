import type { Reading } from '../../core/measurement/reading.ts'
import type { Requirement } from '../../core/requirements/requirement.ts'
import type { PunchItem } from '../../operations/punch-list.ts'
import { asWritten, m } from '../messages.ts'
import { VerdictMark } from '../parts/verdict-sign.tsx'
import { momentWords, readWords } from './reading-words.ts'

interface RecheckProps {
  readonly item: PunchItem
  readonly requirement: Requirement
  readonly units: 'us' | 'metric'
}

/** That the reading rechecks a finding, and what was found: one line above the question. */
export function Rechecking({ item, requirement, units }: RecheckProps) {
  const found = item.readings.find((one) => one.requirement === requirement.id)?.old ?? null
  return (
    <p class="purpose purpose-recheck">
      <b>{m.findings.rechecking}</b>
      {found !== null && (
        <>
          {' '}
          {m.findings.old}: {readWords(found.reading, requirement, units)}, <VerdictMark word={found.verdict.verdict} />{' '}
          <span class="hint">
            {momentWords(found.reading.at)}, {asWritten(found.reading.by)}
          </span>
        </>
      )}
    </p>
  )
}

interface CorrectingProps {
  readonly old: Reading
  readonly requirement: Requirement
  readonly units: 'us' | 'metric'
  /** Takes it back whole; null where it is not what is in force. */
  readonly takeBack: (() => void) | null
  readonly stop: () => void
}

/** That the reading corrects an earlier one, which can be taken back whole by one touch. */
export const Correcting = ({ old, requirement, units, takeBack, stop }: CorrectingProps) => (
  <div class="purpose purpose-correct">
    <p>
      <b>{m.entry.correcting(readWords(old, requirement, units))}</b>
    </p>
    <div class="purpose-buttons">
      {takeBack !== null && (
        <button type="button" class="button" onClick={takeBack}>
          {m.entry.takeBack}
        </button>
      )}
      <button type="button" class="button" onClick={stop}>
        {m.entry.correctStop}
      </button>
    </div>
  </div>
)
