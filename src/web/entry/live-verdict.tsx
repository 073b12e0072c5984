import type { Reading } from '../../core/measurement/reading.ts'
import type { Requirement } from '../../core/requirements/requirement.ts'
import { describeReason } from '../../core/verdicts/describe-reason.ts'
import { judgeRequirements } from '../../core/verdicts/judge-requirements.ts'
import { instrumentsOf, type JudgedRun } from '../../operations/judge-readings.ts'
import { m } from '../messages.ts'
import { VerdictMark } from '../parts/verdict-sign.tsx'

interface Props {
  readonly judged: JudgedRun
  readonly requirement: Requirement
  /** The reading that is being entered; null while it is none. */
  readonly reading: Reading | null
}

/** The verdict as it stands, or as it would be with the reading that is being entered. */
export function LiveVerdict({ judged, requirement, reading }: Props) {
  const { decisionRule, work, letting } = judged.run
  const readings = reading === null ? judged.readings : [...judged.readings, reading]
  const rules = { rule: decisionRule, instruments: instrumentsOf(judged.run), work, letting }
  const { verdict, because } = judgeRequirements([requirement], readings, rules)[0]!
  return (
    <div class="live" aria-live="polite">
      <span class="label">{reading === null ? m.entry.inForce : m.entry.withThis}</span>
      <VerdictMark word={verdict} />
      <span class="reason">{describeReason(because)}</span>
    </div>
  )
}
