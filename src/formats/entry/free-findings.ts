import type { FreeFinding } from '../../core/verdicts/free-findings.ts'
import type { Entry, FreeFindingBody, FreeFindingEndBody } from './entry-kinds.ts'

/** Entries of the kinds that judging takes in besides versions and readings. */
export const freeFindingKinds = ['free-finding', 'free-finding-end'] as const

type FindingEntry = Pick<Entry, 'id' | 'author' | 'capturedAt' | 'body'> & { readonly kind: string }

/** The free findings among the entries of one run, each with the first entry that closes it. In the order given. */
export function freeFindings(entries: readonly FindingEntry[]): readonly FreeFinding[] {
  const ends = entries.filter(({ kind }) => kind === 'free-finding-end')
  return entries
    .filter(({ kind }) => kind === 'free-finding')
    .map(({ id, author, capturedAt, body }) => {
      const { what, of, severity, note, photos, version } = body as FreeFindingBody
      const end = ends.find((one) => (one.body as FreeFindingEndBody).finding === id)
      const said = { id, what, of, note, photos, by: author, at: capturedAt }
      return {
        ...said,
        ...(severity === undefined ? {} : { severity }),
        ...(version === undefined ? {} : { version }),
        closed: end === undefined ? null : endOf(end),
      }
    })
}

function endOf({ id, author, capturedAt, body }: FindingEntry): NonNullable<FreeFinding['closed']> {
  const { as, note, photos } = body as FreeFindingEndBody
  return { id, as, note, photos, by: author, at: capturedAt }
}
