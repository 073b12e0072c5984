import { useMemo, useState } from 'preact/hooks'
import { seenVersion } from '../../core/record/version.ts'
import { lengthIn } from '../../core/units/exact-length.ts'
import { parseLength } from '../../core/units/length-text.ts'
import type { PlacedTicket } from '../../documents/day-report.ts'
import type { LocateTicketBody } from '../../formats/entry/entry-kinds.ts'
import { entriesInForce } from '../../operations/entries-in-force.ts'
import type { JudgedRun } from '../../operations/judge-readings.ts'
import { postsNearMarks, ticketOn } from '../../operations/locate-warnings.ts'
import { placedTickets } from '../../operations/placed-tickets.ts'
import { rememberedVisit } from '../data/device.ts'
import type { KeptEntry, RunSource, Trouble } from '../data/run-source.ts'
import { alongWords } from '../entry/reading-words.ts'
import { asWritten, m, say } from '../messages.ts'
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
  const placed = useMemo(() => placedTickets(judged, inForce), [judged, inForce])
  const { units } = judged.run
  return (
    <section class="tickets" aria-label={m.day.tickets}>
      <h3>{m.run.withCount(m.day.tickets, inForce.length)}</h3>
      <TicketNote day={day} on={ticketOn(day, placed)} />
      <NearMarks marks={postsNearMarks(judged.model.layout.posts, placed)} units={units} />
      <ul class="plain">
        {inForce.map((ticket, i) => (
          <li key={ticket.id} class="ticket">
            <p>
              <b>{asWritten(ticket.body.number)}</b>:{' '}
              {m.day.ticketDates(ticket.body.validFrom, ticket.body.validThrough)}
            </p>
            <p class="hint">
              {placed[i]!.marks.map(
                ({ name, alongInches }) => `${asWritten(name)}: ${markWords(alongInches, units)}`,
              ).join('; ')}
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
          judged={judged}
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

const markWords = (alongInches: number | null, units: 'us' | 'metric'): string =>
  alongInches === null ? m.day.markUnplaced : alongWords(alongInches, units)

interface FormProps {
  readonly source: RunSource
  readonly run: string
  readonly judged: JudgedRun
  readonly day: string
  readonly before: KeptEntry<'locate-ticket'> | null
  readonly leave: () => void
  readonly saved: () => Promise<void>
}

interface TypedMark {
  readonly name: string
  readonly along: string
  /** The mark as it was entered, until another place is typed. */
  readonly before: Mark | null
}

type Mark = LocateTicketBody['marks'][number]

const emptyMark: TypedMark = { name: '', along: '', before: null }

/** The marks of a ticket as they would be typed now, from post 1 of the run as it stands. */
function typedMarks(judged: JudgedRun, ticket: KeptEntry<'locate-ticket'>): readonly TypedMark[] {
  const [{ marks }] = placedTickets(judged, [ticket]) as readonly [PlacedTicket]
  return marks.map(({ name, alongInches }, i) => ({
    name,
    along: alongInches === null ? '' : alongWords(alongInches, judged.run.units),
    before: ticket.body.marks[i]!,
  }))
}

function TicketForm({ source, run, judged, day, before, leave, saved }: FormProps) {
  const { units } = judged.run
  const [number, setNumber] = useState(before?.body.number ?? '')
  const [calledOn, setCalledOn] = useState(before?.body.calledOn ?? day)
  const [validFrom, setFrom] = useState(before?.body.validFrom ?? day)
  const [validThrough, setThrough] = useState(before?.body.validThrough ?? day)
  const [marks, setMarks] = useState<readonly TypedMark[]>(before === null ? [emptyMark] : typedMarks(judged, before))
  const [trouble, setTrouble] = useState<Pick<Trouble, 'message' | 'problems'> | null>(null)
  const complain = (message: string): void => setTrouble({ message, problems: [] })
  const change = (i: number, changes: Partial<TypedMark>): void =>
    setMarks(marks.map((mark, j) => (j === i ? { ...mark, ...changes } : mark)))

  const save = async (): Promise<void> => {
    if (number.trim() === '') return complain(m.day.numberMissing)
    if (calledOn === '' || validFrom === '' || validThrough === '' || validFrom > validThrough)
      return complain(m.day.datesWrong)
    const from = judged.model.layout.posts[0]!.id
    const read: Mark[] = []
    for (const { name, along, before } of marks) {
      if (name.trim() === '' && along.trim() === '') continue
      if (before !== null && name.trim() !== '') {
        read.push({ ...before, name: name.trim() })
        continue
      }
      const length = parseLength(along, units === 'us' ? 'ft' : 'm')
      if (name.trim() === '') return complain(m.day.markNameMissing)
      if (!length.ok) return complain(`${name}: ${say({ kind: 'no length', problem: length.error })}`)
      read.push({ name: name.trim(), from, alongInches: lengthIn(length.value.nanometres, 'in') })
    }
    const body: LocateTicketBody = {
      ...{ number: number.trim(), calledOn, validFrom, validThrough },
      ...seenVersion(judged.run.version),
      marks: read,
    }
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
        {date(m.day.validFrom, validFrom, setFrom)}
        {date(m.day.validThrough, validThrough, setThrough)}
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
              <input
                value={mark.along}
                onInput={({ currentTarget }) => change(i, { along: currentTarget.value, before: null })}
              />
            </label>
          </div>
        ))}
        <button type="button" class="button small" onClick={() => setMarks([...marks, emptyMark])}>
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
