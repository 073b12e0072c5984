import type { ThingRead } from '../core/record/thing-read.ts'
import type { Finding } from '../core/verdicts/verdict.ts'
import type { DayLogBody, EntryOf, LocateTicketBody } from '../formats/entry/entry-kinds.ts'

/**
 * Feet along the rail within which a post is near a mark, to either side.
 * @source common practice, from memory: locate marks are taken to lie up to 2 ft off the line; what the one-call law of the place says governs
 */
export const markFeet = 2

/** Everything that the entries of a run say of one day. */
export interface DayReport {
  readonly day: string
  /** Logs in force of this day; more than one where two people wrote one each. */
  readonly logs: readonly EntryOf<DayLogBody>[]
  readonly crew: readonly string[]
  readonly postsDriven: readonly number[]
  readonly panelsHung: readonly number[]
  /** Posts and panels that were driven or hung on this day and that the run no longer has. */
  readonly gone: readonly ThingRead[]
  /** Up to and with this day, of all the run has. */
  readonly progress: { readonly posts: Count; readonly panels: Count }
  /** Not asked for, and so not known, while the day has no log. */
  readonly openEnds: 'not said' | DayLogBody['openEnds']
  readonly ticket: TicketOnDay
  /** Posts driven on this day that stand near a mark. */
  readonly nearMarks: readonly NearMark[]
  readonly readings: readonly { readonly by: string; readonly count: number }[]
  readonly photos: number
  /** Findings as they stand now whose requirements were read on this day. */
  readonly findings: readonly Finding[]
}

interface Count {
  readonly done: number
  readonly of: number
}

/** A utility-locate ticket with its marks along the run in force. */
export interface PlacedTicket extends Omit<LocateTicketBody, 'version' | 'marks'> {
  readonly marks: readonly {
    readonly name: string
    /** Inches along the rail from post 1; null where no version at hand has the post that it was measured from. */
    readonly alongInches: number | null
  }[]
}

/** A post near a mark of a utility-locate ticket. */
export interface NearMark {
  readonly post: number
  /** Counts through the marks of all tickets: two may have one name. */
  readonly markNumber: number
  readonly mark: string
  readonly ticket: string
  /** Inches from post to mark along the rail, negative when the mark lies upstream of the post. */
  readonly apart: number
}

/** Whether `day` lies within the dates of a ticket; both are ISO dates. */
export type TicketOnDay =
  | { readonly kind: 'valid'; readonly ticket: string; readonly through: string }
  | { readonly kind: 'outside'; readonly ticket: string; readonly from: string; readonly through: string }
  | { readonly kind: 'none' }
