import { useMemo } from 'preact/hooks'
import type { Reading } from '../../core/measurement/reading.ts'
import type { Requirement } from '../../core/requirements/requirement.ts'
import { inputsOf } from '../../core/requirements/rests-on.ts'
import { judgeRequirements } from '../../core/verdicts/judge-requirements.ts'
import { secondReading } from '../../core/verdicts/second-reading.ts'
import { instrumentsOf } from '../../operations/instruments-of.ts'
import type { JudgedRun } from '../../operations/judge-readings.ts'
import { m } from '../messages.ts'
import { VerdictMark } from '../parts/verdict-sign.tsx'
import { reasonWords } from './reading-words.ts'
import { secondWords } from './second-words.ts'

interface Props {
  readonly judged: JudgedRun
  readonly requirement: Requirement
  /** The reading that is being entered; null while it is none. */
  readonly reading: Reading | null
}

/**
 * The verdict as it stands, or as it would be with the reading that is being entered; when it is too close, what
 * another reading would settle, which is shown below the keypad, so that no key moves from under the thumb. Only the
 * readings that bear on this requirement are judged, however many the run has.
 */
export function LiveVerdict({ judged, requirement, reading }: Props) {
  const { rules, bearing } = useMemo(() => {
    const { decisionRule, work, letting } = judged.run
    const ids = new Set([requirement.id, ...inputsOf(requirement)])
    return {
      rules: { rule: decisionRule, instruments: instrumentsOf(judged.run), work, letting },
      bearing: judged.readings.filter(({ of }) => ids.has(of)),
    }
  }, [judged, requirement])
  const readings = reading === null ? bearing : [...bearing, reading]
  const { verdict, because } = judgeRequirements([requirement], readings, rules)[0]!
  const { look } = requirement
  const second =
    verdict === 'too close' && because.kind === 'measured' && look.kind === 'measure'
      ? secondReading(because, look.limits, rules.rule)
      : null
  return (
    <>
      <div class="live" aria-live="polite">
        <span class="label">{reading === null ? m.entry.inForce : m.entry.withThis}</span>
        <VerdictMark word={verdict} />
        <span class="reason">{reasonWords(because, judged.run.units)}</span>
      </div>
      <ul class="second" aria-live="polite">
        {second !== null &&
          secondWords(second, rules.instruments, judged.run.units).map((words) => <li key={words}>{words}</li>)}
      </ul>
    </>
  )
}
