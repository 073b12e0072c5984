import { useState } from 'preact/hooks'
import type { Reading } from '../../core/measurement/reading.ts'
import { seenVersion } from '../../core/record/version.ts'
import type { JudgedRun } from '../../operations/judge-readings.ts'
import { newId, nextId, now, rememberedVisit, rememberVisit } from '../data/device.ts'
import type { KeptRun, RunSource, Trouble } from '../data/run-source.ts'
import { m } from '../messages.ts'
import { TroubleNote } from '../parts/trouble-note.tsx'

interface Props {
  readonly source: RunSource
  readonly kept: KeptRun
  readonly judged: JudgedRun
  readonly took: (readings: readonly Reading[], words: string) => void
}

/**
 * For work that stood before anybody could look: one touch says of every hold point that nobody answered that it could
 * not be seen. Each is a reading of its own, stands among what is not proven, and is corrected where the ground is opened.
 */
export function ClosedGround({ source, kept, judged, took }: Props) {
  const [by, setBy] = useState(() => rememberedVisit().by)
  const [isAsked, setAsked] = useState(false)
  const [trouble, setTrouble] = useState<Pick<Trouble, 'message' | 'problems'> | null>(null)
  const answered = new Set(judged.readings.map(({ of }) => of))
  const open =
    judged.run.work === 'standing' ? judged.requirements.filter(({ id, hold }) => hold && !answered.has(id)) : []
  if (open.length === 0) return null

  const say = async (): Promise<void> => {
    if (by.trim() === '') {
      setAsked(true)
      return
    }
    const [together, seen, at] = [newId(), kept.readings.map(({ id }) => id), now()]
    const readings = open.map(
      ({ id }): Reading => ({
        ...{ id: nextId(kept.id, seen), of: id, answer: { kind: 'cannot see' }, by: by.trim(), at, together },
        ...{ instrument: null, uncertainty: null, where: null, photos: [], corrects: null, rechecks: null },
        ...seenVersion(kept.run.version),
      }),
    )
    const answer = await source.append(kept.id, readings)
    setTrouble(answer.ok ? null : answer.error)
    if (answer.ok) took(readings, m.closed.said(readings.length))
  }

  return (
    <div class="begun">
      <p>{m.closed.why(open.length)}</p>
      {isAsked && (
        <label>
          <span>{m.entry.by}</span>
          <input
            autocomplete="name"
            maxLength={200}
            value={by}
            onInput={({ currentTarget }) => {
              setBy(currentTarget.value)
              rememberVisit({ ...rememberedVisit(), by: currentTarget.value })
            }}
          />
        </label>
      )}
      <button type="button" class="button" onClick={() => void say()}>
        {m.closed.say}
      </button>
      {isAsked && by.trim() === '' && (
        <p class="trouble" role="alert">
          {m.entry.byMissing}
        </p>
      )}
      {trouble !== null && <TroubleNote title={m.entry.notSaved} trouble={trouble} again={() => void say()} />}
    </div>
  )
}
