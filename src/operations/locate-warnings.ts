import type { NearMark, PlacedTicket, TicketOnDay } from '../documents/day-report.ts'

/**
 * Inches along the rail within which a post is near a mark: 2 ft to either side.
 * @source common practice, from memory: locate marks are taken to lie up to 2 ft off the line; what the one-call law of the place says governs
 */
const markWidth = 24

interface PostPlace {
  readonly number: number
  readonly alongInches: number
}

/** Posts within `markWidth` of a mark of any ticket whose place is known, in the order of the posts. */
export function postsNearMarks(posts: readonly PostPlace[], tickets: readonly PlacedTicket[]): readonly NearMark[] {
  const marks = tickets.flatMap((ticket) => ticket.marks.map((mark) => ({ ...mark, ticket: ticket.number })))
  return posts.flatMap(({ number: post, alongInches }) =>
    marks.flatMap(({ name: mark, alongInches: at, ticket }, i) => {
      const apart = at === null ? null : at - alongInches
      if (apart === null || Math.abs(apart) > markWidth) return []
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
