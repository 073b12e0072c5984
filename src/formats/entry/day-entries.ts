import type { DayLogBody, FirstDayLogBody, FirstLocateTicketBody, LocateTicketBody } from './entry-kinds.ts'

/**
 * The log of a day, whichever version its entry was written in. The first named posts and panels by their numbers in the
 * run's first version, whose places have these numbers in their ids.
 */
export function dayLogOf(schemaVersion: number, body: unknown): DayLogBody {
  if (schemaVersion > 1) return body as DayLogBody
  const { postsDriven, panelsHung, ...same } = body as FirstDayLogBody
  return {
    ...same,
    postsDriven: postsDriven.map((number) => `post-${number}`),
    panelsHung: panelsHung.map((number) => `panel-${number}`),
  }
}

/** The same of a utility-locate ticket, whose first version measured every mark from post 1 of the run's first version. */
export function locateTicketOf(schemaVersion: number, body: unknown): LocateTicketBody {
  if (schemaVersion > 1) return body as LocateTicketBody
  const { marks, ...same } = body as FirstLocateTicketBody
  return { ...same, marks: marks.map((mark) => ({ ...mark, from: 'post-1' })) }
}
