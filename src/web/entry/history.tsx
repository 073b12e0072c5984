import { correctionsIn } from '../../core/measurement/corrections.ts'
import type { Reading } from '../../core/measurement/reading.ts'
import type { Requirement } from '../../core/requirements/requirement.ts'
import { theirs } from '../../core/theirs.ts'
import { currentReadings } from '../../core/verdicts/judge-requirements.ts'
import { instrumentsOf } from '../../operations/instruments-of.ts'
import type { JudgedRun } from '../../operations/judge-readings.ts'
import { asWritten, m, say } from '../messages.ts'
import { momentWords, readWords } from './reading-words.ts'

interface Props {
  readonly judged: JudgedRun
  readonly requirement: Requirement
  /** What was read. */
  readonly of: string
  /** Corrections of one and the same reading that both stand, by the reading. */
  readonly rivals: ReadonlyMap<string, readonly string[]>
  /** Opens it again with what was entered, to be corrected or taken back. */
  readonly reopen: (reading: Reading) => void
}

/** Every reading of one thing, the latest first; nothing is ever taken away. */
export function History({ judged, requirement, of, rivals, reopen }: Props) {
  const readings = judged.readings.filter((reading) => reading.of === of).toReversed()
  const corrected = correctionsIn(judged.readings)
  const nameOf = new Map(instrumentsOf(judged.run).map(({ id, name }) => [id, name]))
  const current = currentReadings(judged.readings).get(of)?.id
  return (
    <section class="history" aria-label={m.entry.history}>
      <h3>{m.entry.history}</h3>
      {readings.length === 0 && <p>{m.entry.noHistory}</p>}
      <ul class="plain">
        {readings.map((reading) => {
          const { id, at, by, instrument, where, together, corrects, photos, note } = reading
          const hasRivals = corrects !== null && (rivals.get(corrects)?.includes(id) ?? false)
          const vain = judged.judgement.withoutEffect.filter((one) => one.reading === id)
          return (
            <li key={id} class={corrected.has(id) ? 'past-reading struck' : 'past-reading'}>
              <p>
                <b>{readWords(reading, requirement, judged.run.units)}</b>
                {id === current && <span class="tag">{m.entry.governs}</span>}
                {corrected.has(id) && <span class="tag">{m.entry.corrected}</span>}
                {together !== null && <span class="tag">{m.entry.together}</span>}
                {photos.length > 0 && <span class="tag">{m.run.withCount(m.photo.title, photos.length)}</span>}
                {hasRivals && <span class="tag strong">{m.entry.rivals}</span>}
              </p>
              <p class="hint">
                {[
                  momentWords(at),
                  asWritten(by),
                  ...(instrument === null ? [] : [m.entry.with(say(nameOf.get(instrument) ?? theirs(instrument)))]),
                  ...(where === null ? [] : [asWritten(where)]),
                ].join(', ')}
              </p>
              {note !== undefined && <p class="note">{asWritten(note)}</p>}
              {vain.map((one) => (
                <p key={one.kind} class="warning">
                  {say(one, judged.run.units)}
                </p>
              ))}
              {!corrected.has(id) && (
                <button type="button" class="button small" onClick={() => reopen(reading)}>
                  {m.entry.correct}
                </button>
              )}
            </li>
          )
        })}
      </ul>
    </section>
  )
}
