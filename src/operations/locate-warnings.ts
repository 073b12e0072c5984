import { markFeet, type NearMark, type PlacedTicket, type TicketOnDay } from '../documents/day-report.ts'

interface PostPlace {
  readonly number: number
  readonly alongInches: number
}

/** Posts within `markFeet` of a mark of any ticket whose place is known, in the order of the posts. */
export function postsNearMarks(posts: readonly PostPlace[], tickets: readonly PlacedTicket[]): readonly NearMark[] {
  const marks = tickets.flatMap((ticket) => ticket.marks.map((mark) => ({ ...mark, ticket: ticket.number })))
  return posts.flatMap(({ number: post, alongInches }) =>
    marks.flatMap(({ name: mark, alongInches: at, ticket }, i) => {
      const apart = at === null ? null : at - alongInches
      if (apart === null || Math.abs(apart) > markFeet * 12) return []
      return [{ post, markNumber: i + 1, mark, ticket, apart }]
    }),
  )
}

/** The ticket that covers `day` longest; or the nearest that does not; or that there is none. */
export function ticketOn(day: string, tickets: readonly PlacedTicket[]): TicketOnDay {
  const byEnd = [...tickets].sort((a, b) => (a.validThrough < b.validThrough ? 1 : -1))
  const valid = byEnd.find(({ validFrom, validThrough }) => validFrom <= day && day <= validThrough)
  if (valid !== undefined) return { kind: 'valid', ticket: valid.number, through: valid.validThrough }
  const other = byEnd[0]
  if (other === undefined) return { kind: 'none' }
  return { kind: 'outside', ticket: other.number, from: other.validFrom, through: other.validThrough }
}
