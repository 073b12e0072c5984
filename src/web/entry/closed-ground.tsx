import { useState } from 'preact/hooks'
import type { Reading } from '../../core/measurement/reading.ts'
import { seenVersion } from '../../core/record/version.ts'
import type { JudgedRun } from '../../operations/judge-readings.ts'
import { newId, nextId, now } from '../data/device.ts'
import type { KeptRun, RunSource, Trouble } from '../data/run-source.ts'
import { m } from '../messages.ts'
import { TroubleNote } from '../parts/trouble-note.tsx'
import { useWhoReads } from './who-reads.tsx'

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
  const { name, field } = useWhoReads()
  const [trouble, setTrouble] = useState<Pick<Trouble, 'message' | 'problems'> | null>(null)
  const answered = new Set(judged.readings.map(({ of }) => of))
  const open =
    judged.run.work === 'standing' ? judged.requirements.filter(({ id, hold }) => hold && !answered.has(id)) : []
  if (open.length === 0) return null

  const say = async (): Promise<void> => {
    const by = name()
    if (by === null) return
    const [together, seen, at] = [newId(), kept.readings.map(({ id }) => id), now()]
    const readings = open.map(
      ({ id }): Reading => ({
        ...{ id: nextId(kept.id, seen), of: id, answer: { kind: 'cannot see' }, by, at, together },
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
      {field}
      <button type="button" class="button" onClick={() => void say()}>
        {m.closed.say}
      </button>
      {trouble !== null && <TroubleNote title={m.entry.notSaved} trouble={trouble} again={() => void say()} />}
    </div>
  )
}
