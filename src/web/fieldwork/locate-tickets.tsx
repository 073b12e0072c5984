import { useMemo, useState } from 'preact/hooks'
import { lengthIn } from '../../core/units/exact-length.ts'
import { parseLength } from '../../core/units/length-text.ts'
import type { LocateTicketBody } from '../../formats/entry/entry-kinds.ts'
import { entriesInForce } from '../../operations/entries-in-force.ts'
import type { JudgedRun } from '../../operations/judge-readings.ts'
import { postsNearMarks, ticketOn } from '../../operations/locate-warnings.ts'
import { rememberedVisit } from '../data/device.ts'
import type { KeptEntry, RunSource, Trouble } from '../data/run-source.ts'
import { alongWords } from '../entry/reading-words.ts'
import { m, say } from '../messages.ts'
import { TroubleNote } from '../parts/trouble-note.tsx'
import { NearMarks, TicketNote } from './locate-notes.tsx'

interface Props {
  readonly source: RunSource
  readonly judged: JudgedRun
  readonly tickets: readonly KeptEntry<'locate-ticket'>[]
  readonly run: string
  readonly day: string
  readonly saved: () => Promise<void>
}

/** The utility-locate tickets of a run, the marks on the ground and the posts near them. */
export function LocateTickets({ source, judged, tickets, run, day, saved }: Props) {
  const [editing, setEditing] = useState<KeptEntry<'locate-ticket'> | 'new' | null>(null)
  const inForce = useMemo(() => entriesInForce(tickets) as readonly KeptEntry<'locate-ticket'>[], [tickets])
  const bodies = inForce.map(({ body }) => body)
  const { units } = judged.run
  return (
    <section class="tickets" aria-label={m.day.tickets}>
      <h3>{m.run.withCount(m.day.tickets, inForce.length)}</h3>
      <TicketNote day={day} on={ticketOn(day, bodies)} />
      <NearMarks marks={postsNearMarks(judged.model.layout.posts, bodies)} units={units} />
      <ul class="plain">
        {inForce.map((ticket) => (
          <li key={ticket.id} class="ticket">
            <p>
              <b>{ticket.body.number}</b>: {m.day.ticketDates(ticket.body.validFrom, ticket.body.validThrough)}
            </p>
            <p class="hint">
              {ticket.body.marks
                .map(({ name, alongInches }) => `${name}: ${alongWords(alongInches, units)}`)
                .join('; ')}
            </p>
            <button type="button" class="button small" onClick={() => setEditing(ticket)}>
              {m.day.changeTicket}
            </button>
          </li>
        ))}
      </ul>
      {editing === null ? (
        <button type="button" class="button" onClick={() => setEditing('new')}>
          {m.day.addTicket}
        </button>
      ) : (
        <TicketForm
          key={editing === 'new' ? 'new' : editing.id}
          source={source}
          run={run}
          units={units}
          day={day}
          before={editing === 'new' ? null : editing}
          leave={() => setEditing(null)}
          saved={async () => {
            setEditing(null)
            await saved()
          }}
        />
      )}
    </section>
  )
}

interface FormProps {
  readonly source: RunSource
  readonly run: string
  readonly units: 'us' | 'metric'
  readonly day: string
  readonly before: KeptEntry<'locate-ticket'> | null
  readonly leave: () => void
  readonly saved: () => Promise<void>
}

interface TypedMark {
  readonly name: string
  readonly along: string
}

function TicketForm({ source, run, units, day, before, leave, saved }: FormProps) {
  const [number, setNumber] = useState(before?.body.number ?? '')
  const [calledOn, setCalledOn] = useState(before?.body.calledOn ?? day)
  const [from, setFrom] = useState(before?.body.validFrom ?? day)
  const [through, setThrough] = useState(before?.body.validThrough ?? day)
  const [marks, setMarks] = useState<readonly TypedMark[]>(
    before?.body.marks.map(({ name, alongInches }) => ({ name, along: alongWords(alongInches, units) })) ?? [
      { name: '', along: '' },
    ],
  )
  const [trouble, setTrouble] = useState<Pick<Trouble, 'message' | 'problems'> | null>(null)
  const complain = (message: string): void => setTrouble({ message, problems: [] })
  const change = (i: number, changes: Partial<TypedMark>): void =>
    setMarks(marks.map((mark, j) => (j === i ? { ...mark, ...changes } : mark)))

  const save = async (): Promise<void> => {
    if (number.trim() === '') return complain(m.day.numberMissing)
    if (calledOn === '' || from === '' || through === '' || from > through) return complain(m.day.datesWrong)
    const read: LocateTicketBody['marks'] = []
    for (const { name, along } of marks) {
      if (name.trim() === '' && along.trim() === '') continue
      const length = parseLength(along, units === 'us' ? 'ft' : 'm')
      if (name.trim() === '') return complain(m.day.markNameMissing)
      if (!length.ok) return complain(`${name}: ${say({ kind: 'no length', problem: length.error })}`)
      read.push({ name: name.trim(), alongInches: lengthIn(length.value.nanometres, 'in') })
    }
    const body = { number: number.trim(), calledOn, validFrom: from, validThrough: through, marks: read }
    const by = rememberedVisit().by.trim()
    const answer = await source.appendEntry(run, 'locate-ticket', body, by, before?.id ?? null)
    if (!answer.ok) return setTrouble(answer.error)
    await saved()
  }
  const date = (words: string, value: string, set: (value: string) => void) => (
    <label>
      <span>{words}</span>
      <input type="date" value={value} onInput={({ currentTarget }) => set(currentTarget.value)} />
    </label>
  )
  return (
    <form
      class="ticket-form"
      onSubmit={(event) => {
        event.preventDefault()
        void save()
      }}
    >
      <div class="fields">
        <label>
          <span>{m.day.number}</span>
          <input value={number} onInput={({ currentTarget }) => setNumber(currentTarget.value)} />
        </label>
        {date(m.day.calledOn, calledOn, setCalledOn)}
        {date(m.day.validFrom, from, setFrom)}
        {date(m.day.validThrough, through, setThrough)}
      </div>
      <fieldset>
        <legend>{m.day.marks}</legend>
        {marks.map((mark, i) => (
          <div key={i} class="fields">
            <label>
              <span>{m.day.markName}</span>
              <input value={mark.name} onInput={({ currentTarget }) => change(i, { name: currentTarget.value })} />
            </label>
            <label>
              <span>{m.day.markAlong[units]}</span>
              <input value={mark.along} onInput={({ currentTarget }) => change(i, { along: currentTarget.value })} />
            </label>
          </div>
        ))}
        <button type="button" class="button small" onClick={() => setMarks([...marks, { name: '', along: '' }])}>
          {m.day.addMark}
        </button>
      </fieldset>
      {trouble !== null && <TroubleNote title={m.day.notSaved} trouble={trouble} />}
      <div class="photo-buttons">
        <button type="button" class="button" onClick={leave}>
          {m.day.leave}
        </button>
        <button type="submit" class="button main">
          {m.day.saveTicket}
        </button>
      </div>
    </form>
  )
}
