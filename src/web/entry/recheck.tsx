import type { Requirement } from '../../core/requirements/requirement.ts'
import type { PunchItem } from '../../operations/punch-list.ts'
import { asWritten, m } from '../messages.ts'
import { VerdictMark } from '../parts/verdict-sign.tsx'
import { momentWords, readWords } from './reading-words.ts'

interface Props {
  readonly item: PunchItem
  readonly requirement: Requirement
  readonly units: 'us' | 'metric'
}

/** What was read when it failed, beside what was read since. */
export function OldAndNew({ item, requirement, units }: Props) {
  const change = item.readings.find((one) => one.requirement === requirement.id)
  if (change === undefined || change.old === null) return null
  return (
    <dl class="old-new">
      {(
        [
          [m.findings.old, change.old],
          [m.findings.new, change.new],
        ] as const
      ).map(([label, judged]) => (
        <div key={label}>
          <dt>{label}</dt>
          <dd>
            {judged === null ? (
              m.findings.notYet
            ) : (
              <>
                <b>{readWords(judged.reading, requirement, units)}</b>
                <VerdictMark word={judged.verdict.verdict} />
                <span class="hint">
                  {momentWords(judged.reading.at)}, {asWritten(judged.reading.by)}
                </span>
              </>
            )}
          </dd>
        </div>
      ))}
    </dl>
  )
}
