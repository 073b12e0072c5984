import type { RunFile } from '../formats/run/run-file.ts'
import type { Print } from '../words/print.ts'
import { markFeet, type NearMark, type PlacedTicket, type TicketOnDay } from './day-report.ts'
import { groupBy } from './group-by.ts'
import { alongText, numberedText } from './places-text.ts'
import { documentWords } from './words/document-words.ts'

/** The utility-locate tickets with their dates and marks, and the posts near a mark, for the crew; null for none. */
export function ticketsText(
  run: Pick<RunFile, 'units'>,
  tickets: readonly PlacedTicket[],
  near: readonly NearMark[],
  print: Print,
): string | null {
  if (tickets.length === 0) return null
  const words = documentWords(print).crewSheet
  const { theirs } = print
  const each = tickets.map(({ number, calledOn, validFrom, validThrough, marks }) => {
    const places = marks.map(({ name, alongInches }) =>
      alongInches === null ? words.markUnplaced(theirs(name)) : words.mark(theirs(name), alongText(run, alongInches)),
    )
    return words.ticket(theirs(number), calledOn, validFrom, validThrough, places)
  })
  const warned = groupBy(near, ({ markNumber }) => markNumber).map((group) => {
    const posts = numberedText(
      'post',
      group.map(({ post }) => post),
      print,
    )
    return words.nearMark(theirs(group[0].mark), print.written(`${markFeet} ft`, markFeet, 'ft'), posts)
  })
  return [...each, ...warned].join(' ')
}

/** Whether work on `day` lies within the dates of a ticket. */
export function ticketOnDayText(day: string, on: TicketOnDay, print: Print): string {
  const words = documentWords(print).dailyReport
  switch (on.kind) {
    case 'valid':
      return words.ticketValid(print.theirs(on.ticket), on.through)
    case 'outside':
      return words.ticketOutside(day, print.theirs(on.ticket), on.from, on.through)
    case 'none':
      return words.noTicket
    default:
      return on satisfies never
  }
}
