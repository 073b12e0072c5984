import { useState } from 'preact/hooks'
import { assignmentOf } from '../../formats/entry/assignment-of.ts'
import type { RunSource, Trouble } from '../data/run-source.ts'
import { dayWords } from '../entry/reading-words.ts'
import { useWhoReads } from '../entry/who-reads.tsx'
import type { SideEntries } from '../fieldwork/use-side-entries.ts'
import { asWritten, m } from '../messages.ts'
import { TroubleNote } from '../parts/trouble-note.tsx'

interface Props {
  readonly source: RunSource
  readonly side: SideEntries
  readonly run: string
  /** Id of the finding. */
  readonly finding: string
  readonly again: () => Promise<void>
}

/** Who sees to a finding, and by when: one line that opens. */
export function Assigned({ source, side, run, finding, again }: Props) {
  const now = assignmentOf(side.assignments, finding)
  const [owner, setOwner] = useState(now?.owner ?? '')
  const [due, setDue] = useState(now?.due ?? '')
  const [trouble, setTrouble] = useState<Trouble | null>(null)
  const { name, field } = useWhoReads()
  const save = async (): Promise<void> => {
    const by = name()
    if (by === null) return
    const body = { finding, owner: owner.trim() === '' ? null : owner.trim(), due: due === '' ? null : due }
    const answer = await source.appendEntry(run, 'assignment', body, by, null)
    setTrouble(answer.ok ? null : answer.error)
    if (answer.ok) await again()
  }
  const said = [
    now?.owner == null ? null : asWritten(now.owner),
    ...(now?.due == null ? [] : [dayWords(now.due)]),
  ].filter((one) => one != null)
  return (
    <details class="assigned">
      <summary>
        <span class="label">{m.seen.owner}</span> {said.length === 0 ? m.seen.nobody : said.join(', ')}
      </summary>
      <div class="fields">
        <label>
          <span>{m.seen.owner}</span>
          <input value={owner} maxLength={200} onInput={({ currentTarget }) => setOwner(currentTarget.value)} />
        </label>
        <label>
          <span>{m.seen.due}</span>
          <input type="date" value={due} onInput={({ currentTarget }) => setDue(currentTarget.value)} />
        </label>
      </div>
      {field}
      <button type="button" class="button" onClick={() => void save()}>
        {m.seen.assign}
      </button>
      {trouble !== null && <TroubleNote title={m.entry.notSaved} trouble={trouble} />}
    </details>
  )
}
