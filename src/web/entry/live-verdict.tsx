import type { ComponentChildren } from 'preact'
import { useMemo } from 'preact/hooks'
import { doubt } from '../../core/measurement/doubt.ts'
import type { Instrument } from '../../core/measurement/instruments.ts'
import type { Reading } from '../../core/measurement/reading.ts'
import type { Requirement } from '../../core/requirements/requirement.ts'
import { inputsOf } from '../../core/requirements/rests-on.ts'
import { stepsPer } from '../../core/units/quantity-kinds.ts'
import { judgeRequirements } from '../../core/verdicts/judge-requirements.ts'
import { secondReading } from '../../core/verdicts/second-reading.ts'
import type { Decided } from '../../core/verdicts/verdict.ts'
import { instrumentsOf } from '../../operations/instruments-of.ts'
import type { JudgedRun } from '../../operations/judge-readings.ts'
import { m } from '../messages.ts'
import { VerdictMark } from '../parts/verdict-sign.tsx'
import { Gauge } from './gauge.tsx'
import { reasonWords } from './reading-words.ts'
import { secondWords } from './second-words.ts'

/**
 * The verdict as it stands, or as it would be with the reading that is being entered. Only the readings that bear on this
 * requirement are judged, however many the run has.
 */
export function useVerdict(judged: JudgedRun, requirement: Requirement, reading: Reading | null): Decided {
  const { rules, bearing } = useMemo(() => {
    const { decisionRule, work, letting } = judged.run
    const ids = new Set([requirement.id, ...inputsOf(requirement)])
    return {
      rules: { rule: decisionRule, instruments: instrumentsOf(judged.run), work, letting },
      bearing: judged.readings.filter(({ of }) => ids.has(of)),
    }
  }, [judged, requirement])
  return judgeRequirements([requirement], reading === null ? bearing : [...bearing, reading], rules)[0]!
}

interface Props {
  readonly judged: JudgedRun
  readonly requirement: Requirement
  readonly decided: Decided
  /** Whether it is that of what is being entered. */
  readonly isNew: boolean
  /** With which it would be measured. */
  readonly instrument: Instrument
  /** What is told in the place of the verdict; null for the verdict. */
  readonly instead: ComponentChildren | null
}

/**
 * The value against its limits, the verdict, and when it is too close what another reading would settle, which is shown
 * below the keypad, so that no key moves from under the thumb.
 */
export function LiveVerdict({ judged, requirement, decided, isNew, instrument, instead }: Props) {
  const { verdict, because } = decided
  const { look } = requirement
  const { units, decisionRule } = judged.run
  const measured = because.kind === 'measured' ? because : null
  const second =
    verdict === 'too close' && measured !== null && look.kind === 'measure'
      ? secondReading(measured, look.limits, decisionRule)
      : null
  const doubtful = (): ReturnType<typeof doubt> => {
    if (measured === null) return doubt(instrument, { uncertainty: null, resolution: null })
    const { fixed, relative } = measured.doubt ?? { fixed: measured.uncertainty, relative: 0 }
    return { fixed: fixed * stepsPer(measured.unit), relative }
  }
  return (
    <>
      {look.kind === 'measure' && (
        <Gauge
          limits={look.limits}
          units={units}
          doubt={doubtful()}
          rule={decisionRule}
          value={measured?.value ?? null}
        />
      )}
      {instead ?? (
        <div class="live" aria-live="polite">
          <span class="label">{isNew ? m.entry.withThis : m.entry.inForce}</span>
          <VerdictMark word={verdict} />
          <span class="reason">{reasonWords(because, units)}</span>
        </div>
      )}
      <ul class="second" aria-live="polite">
        {second !== null &&
          secondWords(second, instrumentsOf(judged.run), units).map((words) => <li key={words}>{words}</li>)}
      </ul>
    </>
  )
}
