import type { NearMark, TicketOnDay } from '../../documents/day-report.ts'
import { asWritten, m } from '../messages.ts'

/** Whether a utility-locate ticket covers the day. */
export function TicketNote({ day, on }: { readonly day: string; readonly on: TicketOnDay }) {
  if (on.kind === 'valid') return <p class="hint">{m.day.ticketValid(asWritten(on.ticket), on.through)}</p>
  return (
    <p class="warning" role="status">
      {on.kind === 'none' ? m.day.noTicket : m.day.ticketOutside(asWritten(on.ticket), on.from, on.through, day)}
    </p>
  )
}

/** Posts that stand within 2 ft of a mark. */
export const NearMarks = ({
  marks,
  units,
}: {
  readonly marks: readonly NearMark[]
  readonly units: 'us' | 'metric'
}) =>
  marks.length === 0 ? null : (
    <ul class="warning">
      {marks.map(({ post, markNumber, mark, ticket, apart }) => (
        <li key={`${post} ${markNumber}`}>
          {m.day.postNearMark(post, asWritten(mark), asWritten(ticket), apartWords(apart, units))}
        </li>
      ))}
    </ul>
  )

const apartWords = (apart: number, units: 'us' | 'metric'): string =>
  units === 'us' ? `${Math.abs(Math.round(apart))} in` : `${Math.abs(Math.round(apart * 25.4))} mm`
