import type { PlacedTicket } from '../documents/day-report.ts'
import type { LocateTicketBody } from '../formats/entry/entry-kinds.ts'
import type { JudgedRun } from './judge-readings.ts'

/**
 * The tickets with their marks where they lie along the run in force. A mark stays where it is on the ground: one that was
 * measured from a post which the run no longer has is placed by the version that had it.
 */
export function placedTickets(
  { model: { layout }, versions }: Pick<JudgedRun, 'model' | 'versions'>,
  tickets: readonly { readonly body: LocateTicketBody }[],
): readonly PlacedTicket[] {
  // An id is never used again, so that any version that has the post says where it stood.
  const layouts = [layout, ...[...versions.values()].map((version) => version.layout)]
  const alongOf = (id: string): number | null => {
    for (const { posts, postOneAtInches } of layouts) {
      const post = posts.find((one) => one.id === id)
      if (post !== undefined) return postOneAtInches + post.alongInches - layout.postOneAtInches
    }
    return null
  }
  return tickets.map(({ body: { version: _, marks, ...ticket } }) => ({
    ...ticket,
    marks: marks.map(({ name, from, alongInches }) => {
      const at = alongOf(from)
      return { name, alongInches: at === null ? null : at + alongInches }
    }),
  }))
}
