import type { RunFile } from '../formats/run/run-file.ts'
import type { NearMark, PlacedTicket, TicketOnDay } from './day-report.ts'
import { groupBy } from './group-by.ts'
import { alongText, numberedText } from './places-text.ts'

/** The utility-locate tickets with their dates and marks, and the posts near a mark, for the crew; null for none. */
export function ticketsText(
  run: Pick<RunFile, 'units'>,
  tickets: readonly PlacedTicket[],
  near: readonly NearMark[],
): string | null {
  if (tickets.length === 0) return null
  const each = tickets.map(({ number, calledOn, validFrom, validThrough, marks }) => {
    const places = marks.map(({ name, alongInches }) =>
      alongInches === null
        ? `${name} WHERE IS NOT KNOWN (it was measured from a post of an earlier version)`
        : `${name} ${alongText(run, alongInches)} from post 1`,
    )
    const marked = places.length === 0 ? 'no marks entered' : `marks: ${places.join(', ')}`
    return `${number}, called on ${calledOn}, valid ${validFrom} through ${validThrough}; ${marked}.`
  })
  const warned = groupBy(near, ({ mark, ticket }) => `${mark}\n${ticket}`).map((group) => {
    const posts = numberedText(
      'post',
      'posts',
      group.map(({ post }) => post),
    )
    return `Within 2 ft of ${group[0].mark}: ${posts}. Dig by hand, or have the layout moved.`
  })
  return [...each, ...warned].join(' ')
}

/** Whether work on `day` lies within the dates of a ticket. */
export function ticketOnDayText(day: string, on: TicketOnDay): string {
  switch (on.kind) {
    case 'valid':
      return `Utility-locate ticket ${on.ticket} is valid through ${on.through}.`
    case 'outside':
      return `${day} lies OUTSIDE the dates of utility-locate ticket ${on.ticket} (${on.from} to ${on.through}): no post is driven or pulled on it.`
    case 'none':
      return 'There is NO utility-locate ticket.'
    default:
      return on satisfies never
  }
}
